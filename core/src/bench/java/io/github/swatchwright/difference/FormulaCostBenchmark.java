package io.github.swatchwright.difference;

import io.github.swatchwright.colour.Lab;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.function.ToDoubleBiFunction;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.CompilerControl;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What each formula costs for one pair of colour objects: the choosing table's figures. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FormulaCostBenchmark {
  private static final int PAIRS = 1024;

  private final Lab[] first = new Lab[PAIRS];
  private final Lab[] second = new Lab[PAIRS];

  /** Draws the pairs. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < PAIRS; i++) {
      double[] p = PairKind.ANY.next(random);
      first[i] = Lab.ofD65(p[0], p[1], p[2]);
      second[i] = Lab.ofD65(p[3], p[4], p[5]);
    }
  }

  /** CIE76. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double cie76() {
    return sum(Cie76::deltaE);
  }

  /** CIE94. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double cie94() {
    return sum(Cie94.GRAPHIC_ARTS::deltaE);
  }

  /** CMC(2:1). */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double cmc() {
    return sum(Cmc.ACCEPTABILITY::deltaE);
  }

  /** CIEDE2000. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double ciede2000() {
    return sum(Ciede2000::deltaE);
  }

  @CompilerControl(CompilerControl.Mode.INLINE)
  private double sum(ToDoubleBiFunction<Lab, Lab> formula) {
    double sum = 0;
    for (int i = 0; i < PAIRS; i++) {
      sum += formula.applyAsDouble(first[i], second[i]);
    }
    return sum;
  }
}
