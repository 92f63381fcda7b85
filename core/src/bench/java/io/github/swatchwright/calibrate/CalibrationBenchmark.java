package io.github.swatchwright.calibrate;

import java.util.OptionalDouble;
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

/** How long a large shelf takes to learn from its cards, from a cold start, in 512 MB. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 3, jvmArgs = "-Xmx512m")
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class CalibrationBenchmark {
  /** Paints and cards. */
  @Param({"60/360", "300/1000"})
  public String paintsAndCards = "";

  private LargeShelf large = LargeShelf.of(2, 1);

  /** Paints the cards. */
  @Setup
  public void paint() {
    String[] counts = paintsAndCards.split("/", -1);
    large = LargeShelf.of(Integer.parseInt(counts[0]), Integer.parseInt(counts[1]));
  }

  /** All cards at once. */
  @Benchmark
  public Calibration calibrate() {
    return Calibration.of(
        large.shelf(), large.cards(), new CardErrors(0.05, OptionalDouble.of(0.5)));
  }
}
