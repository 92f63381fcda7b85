package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Control;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The best ten recipes of up to three paints in ten drops, by the plain search, the one with
 * kernels alone, and the engine: a single search on a shelf just compiled, and one more on a shelf
 * that has been searched for the same targets before. The median of the samples counts, over
 * targets in turn.
 *
 * <p>The plain and the tuned search look at every {@code every}-th set of paints only: multiply.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx512m")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class RecipeSearchBenchmark {
  private static final int BEST = 10;
  private static final int DROPS = 10;
  private static final int TARGETS = 15;
  private static final int THOUSAND = 1000;

  /** Paints, paints in a recipe, and one in how many sets the comparisons look at. */
  @Param({"60/3/1", "120/3/16", "300/3/256", "40/3/1", "40/4/16"})
  public String size = "";

  /** ΔE00 of the best recipe; 0 for colours of random mixes of the paints. */
  @Param({"0", "3", "5", "12"})
  public double outOfReach;

  private final List<Lab> targets = new ArrayList<>();
  private final List<Lab> many = new ArrayList<>();
  private SearchSpace space = new RandomShelf(1, 1).space(1, 1);
  private CompiledShelf used = CompiledShelf.of(space);
  private int every;
  private int turn;

  /** Paints the shelf and draws the targets. */
  @Setup
  public void draw() {
    String[] numbers = size.split("/", -1);
    RandomShelf shelf = new RandomShelf(Integer.parseInt(numbers[0]), 1);
    space = shelf.space(Integer.parseInt(numbers[1]), DROPS);
    every = Integer.parseInt(numbers[2]);
    used = CompiledShelf.of(space);
    for (int i = 0; i < TARGETS; i++) {
      Lab within = shelf.mixedTarget();
      targets.add(outOfReach == 0 ? within : beyond(within));
    }
    for (int i = 0; i < THOUSAND; i++) {
      many.add(shelf.mixedTarget());
    }
    targets.forEach(target -> used.nearest(target, BEST));
  }

  /** A colour on the way from a grey through this one whose best recipe is so far off. */
  private Lab beyond(Lab within) {
    double near = 0;
    double far = 6;
    for (int i = 0; i < 14; i++) {
      double middle = (near + far) / 2;
      if (used.nearest(along(within, middle), 1).get(0).deltaE00() < outOfReach) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return along(within, far);
  }

  private static Lab along(Lab colour, double factor) {
    double l = Math.max(0, Math.min(100, 50 + factor * (colour.l() - 50)));
    return new Lab(l, factor * colour.a(), factor * colour.b(), colour.white());
  }

  private Lab next() {
    turn++;
    return targets.get(turn % TARGETS);
  }

  /** Every recipe in full, of one set in {@link #every}. */
  @Benchmark
  public List<Candidate> plain() {
    return new PlainSearch(space, every).nearest(next(), BEST);
  }

  /** Every recipe by the kernels, of one set in {@link #every}. */
  @Benchmark
  public List<Candidate> tuned() {
    return new TunedSearch(space, every).nearest(next(), BEST);
  }

  /** The engine, compiling included. */
  @Benchmark
  public List<Candidate> single() {
    return CompiledShelf.of(space).nearest(next(), BEST);
  }

  /** The engine, compiling included, on two threads. */
  @Benchmark
  public List<Candidate> singleOnTwo() {
    return CompiledShelf.of(space)
        .search(new Sought(next(), BEST), Control.PLAIN.withThreads(2))
        .candidates();
  }

  /** The engine on a shelf that has been searched before. */
  @Benchmark
  public List<Candidate> again() {
    return used.nearest(next(), BEST);
  }

  /** The same on two threads. */
  @Benchmark
  public List<Candidate> againOnTwo() {
    return used.search(new Sought(next(), BEST), Control.PLAIN.withThreads(2)).candidates();
  }

  /** A thousand targets on a shelf just compiled, per target. */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @OperationsPerInvocation(THOUSAND)
  public List<SearchOutcome> thousand() {
    CompiledShelf shelf = CompiledShelf.of(space);
    return Batch.run(
        many.size(),
        (target, control) -> shelf.search(new Sought(many.get(target), BEST), control),
        Control.PLAIN,
        outcome -> {});
  }
}
