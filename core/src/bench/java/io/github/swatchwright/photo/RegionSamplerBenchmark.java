package io.github.swatchwright.photo;

import io.github.swatchwright.colour.RgbSpace;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Pixels a second through the sampler, on one core: a noisy photo of rust in memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class RegionSamplerBenchmark {
  private static final int SIDE = 2048;
  private static final Region ALL = new Region(0, 0, SIDE, SIDE);

  private final ArgbPhoto photo = photo();

  private static ArgbPhoto photo() {
    Random random = new Random(1);
    int[] argb = new int[SIDE * SIDE];
    for (int i = 0; i < argb.length; i++) {
      int r = 120 + (int) (20 * random.nextGaussian());
      int g = 75 + (int) (12 * random.nextGaussian());
      int b = 50 + (int) (10 * random.nextGaussian());
      argb[i] = 0xFF000000 | (r & 0xFF) << 16 | (g & 0xFF) << 8 | b & 0xFF;
    }
    return new ArgbPhoto(SIDE, SIDE, argb, RgbSpace.SRGB);
  }

  /** Megapixels a second, result included. */
  @Benchmark
  @OperationsPerInvocation(SIDE * SIDE)
  public RegionSample sample() {
    return RegionSampler.sample(photo, ALL);
  }
}
