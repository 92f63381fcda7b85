package io.github.swatchwright.colour;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** CIELAB of one 8-bit sRGB pixel: by table, by the plain arithmetic, and by colour objects. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SrgbLabBenchmark {
  private static final int PIXELS = 1024;

  private final int[] rgb = new int[PIXELS];
  private final double[] l = new double[PIXELS];
  private final double[] a = new double[PIXELS];
  private final double[] b = new double[PIXELS];

  /** Draws the pixels. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < PIXELS; i++) {
      rgb[i] = random.nextInt(0x1000000);
    }
  }

  /** The table. */
  @Benchmark
  @OperationsPerInvocation(PIXELS)
  public double[] table() {
    SrgbLabTable.toLab(rgb, l, a, b);
    return a;
  }

  /** The curve, the matrix of CSS Color 4 and the cube roots, without objects. */
  @Benchmark
  @OperationsPerInvocation(PIXELS)
  public double[] plainArithmetic() {
    WhitePoint white = WhitePoint.D65;
    for (int i = 0; i < PIXELS; i++) {
      double red = SrgbCurve.decode((rgb[i] >> 16 & 0xFF) / 255.0);
      double green = SrgbCurve.decode((rgb[i] >> 8 & 0xFF) / 255.0);
      double blue = SrgbCurve.decode((rgb[i] & 0xFF) / 255.0);
      double x = 41.239079926595948 * red + 35.758433938387796 * green + 18.048078840183429 * blue;
      double y = 21.263900587151036 * red + 71.516867876775593 * green + 7.219231536073371 * blue;
      double z = 1.933081871559182 * red + 11.919477979462598 * green + 95.053215224966058 * blue;
      double fx = CielabCurve.encode(x / white.xn());
      double fy = CielabCurve.encode(y / white.yn());
      double fz = CielabCurve.encode(z / white.zn());
      l[i] = 116 * fy - 16;
      a[i] = 500 * (fx - fy);
      b[i] = 200 * (fy - fz);
    }
    return a;
  }

  /** Srgb.ofPacked(rgb).toLab(). */
  @Benchmark
  @OperationsPerInvocation(PIXELS)
  public double[] colourObjects() {
    for (int i = 0; i < PIXELS; i++) {
      Lab lab = Srgb.ofPacked(rgb[i]).toLab();
      l[i] = lab.l();
      a[i] = lab.a();
      b[i] = lab.b();
    }
    return a;
  }
}
