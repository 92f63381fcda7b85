package io.github.swatchwright.spectrum;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.optics.Saunderson;
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

/** The time to recover a reflectance from one colour, over random sRGB colours; read the median. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 10, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class RecoveryBenchmark {
  private static final int COLOURS = 1024;

  /** Without a surface, and under a paint's. */
  @Param({"false", "true"})
  public boolean underSurface;

  private final Xyz[] colours = new Xyz[COLOURS];
  private ReflectanceRecovery recovery;
  private int next;

  /** Draws the colours. */
  @Setup
  public void draw() {
    Random random = new Random(33);
    for (int i = 0; i < COLOURS; i++) {
      colours[i] = Srgb.ofPacked(random.nextInt(1 << 24)).toXyz();
    }
    SurfaceMap surface = underSurface ? new Saunderson(0.01, 0.4) : SurfaceMap.NONE;
    recovery = new ReflectanceRecovery(TristimulusWeights.D65, surface);
  }

  /** One colour. */
  @Benchmark
  public RecoveredReflectance recover() {
    next = (next + 1) % COLOURS;
    return recovery.recover(colours[next]);
  }
}
