package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a program waits for: {@link Matcher#match(MatchRequest)} with the default request, warm. The
 * median of the samples counts.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx512m")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class MatcherBenchmark {
  private static final int TARGETS = 200;

  /** How many paints are nearly the same. */
  private static final int CLUSTER = 6;

  /** Colours alone, every third paint of a single pigment; ready-mixed with hiding; clusters. */
  @Param({"COLOURS", "HIDING", "CLUSTERS"})
  public Kind kind = Kind.COLOURS;

  /** How many paints there are. */
  @Param({"28", "60", "120", "300"})
  public int paints;

  /** How many times as colourful as a mix of the paints the targets are. */
  @Param({"1", "2.5"})
  public double chroma;

  private final Random random = new Random(1);
  private final List<MatchRequest> requests = new ArrayList<>();
  private ShelfOptics optics =
      ShelfOptics.estimate(Shelf.of("before", List.of(paint(0, colour()))));
  private Matcher used = Matcher.of(optics, TristimulusWeights.D65);
  private int turn;

  /** The kinds of shelves. */
  public enum Kind {
    COLOURS,
    HIDING,
    CLUSTERS
  }

  /** Invents the paints and the targets. */
  @Setup
  public void invent() {
    List<Paint> shelf = new ArrayList<>();
    Lab centre = colour();
    for (int i = 0; i < paints; i++) {
      centre = kind == Kind.CLUSTERS && i % CLUSTER != 0 ? centre : colour();
      shelf.add(paint(i, centre));
    }
    optics = ShelfOptics.estimate(Shelf.of("invented", shelf));
    used = Matcher.of(optics, TristimulusWeights.D65);
    MixPredictor predictor = MixPredictor.of(optics, TristimulusWeights.D65);
    for (int i = 0; i < TARGETS; i++) {
      Lab mixed = predictor.predict(threePaints()).lab();
      requests.add(
          MatchRequest.of(
              new Swatch.OfLab(
                  new Lab(mixed.l(), chroma * mixed.a(), chroma * mixed.b(), mixed.white()))));
    }
    used.match(requests.get(0));
  }

  private Paint paint(int number, Lab centre) {
    Lab lab =
        Lab.ofD65(centre.l() + random.nextDouble(), centre.a() + random.nextDouble(), centre.b());
    Paint paint = Paint.of("paint " + number, Medium.ACRYLIC, new Swatch.OfLab(lab));
    return kind == Kind.HIDING
        ? paint
            .withMake(Make.READY_MIXED)
            .withHiding(new Hiding.ContrastRatio(0.88 + 0.11 * random.nextDouble()))
        : paint.withMake(number % 3 == 0 ? Make.SINGLE_PIGMENT : Make.READY_MIXED);
  }

  /** A colour that sRGB can show, with L* from 8 to 95. */
  private Lab colour() {
    while (true) {
      Lab lab =
          Lab.ofD65(
              8 + 87 * random.nextDouble(),
              -80 + 160 * random.nextDouble(),
              -80 + 170 * random.nextDouble());
      if (lab.toSrgb().isDisplayable()) {
        return lab;
      }
    }
  }

  private Mix threePaints() {
    return new Mix(
        random
            .ints(0, paints)
            .distinct()
            .limit(3)
            .mapToObj(i -> new Mix.Part(optics.paints().get(i).paint(), 1 + random.nextInt(5)))
            .toList());
  }

  private MatchRequest next() {
    turn++;
    return requests.get(turn % TARGETS);
  }

  /** The first target of a shelf. */
  @Benchmark
  public MatchResult first() {
    return Matcher.of(optics, TristimulusWeights.D65).match(next());
  }

  /** Another target on a shelf that was searched before. */
  @Benchmark
  public MatchResult newTarget() {
    return used.match(next());
  }

  /** The same target once more. */
  @Benchmark
  public MatchResult again() {
    return used.match(requests.get(0));
  }
}
