package io.github.swatchwright.difference;

import com.github.ajalt.colormath.calculate.DifferenceKt;
import com.github.ajalt.colormath.model.LAB;
import com.github.ajalt.colormath.model.LABColorSpace;
import com.github.ajalt.colormath.model.LABColorSpaces;
import io.github.swatchwright.colour.Lab;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openimaj.image.analysis.colour.CIEDE2000;
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

/** CIEDE2000 for one pair: this library's forms, the textbook's, and other JVM libraries'. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class Ciede2000Benchmark {
  private static final int PAIRS = 1024;

  /** What colours meet: far apart, or close as when recipes are compared. */
  @Param({"ANY", "CLOSE_TOGETHER"})
  public String pairs;

  private final double[] l1 = new double[PAIRS];
  private final double[] a1 = new double[PAIRS];
  private final double[] b1 = new double[PAIRS];
  private final double[] l2 = new double[PAIRS];
  private final double[] a2 = new double[PAIRS];
  private final double[] b2 = new double[PAIRS];
  private final double[] into = new double[PAIRS];
  private final Lab[] lab1 = new Lab[PAIRS];
  private final Lab[] lab2 = new Lab[PAIRS];
  private final LAB[] colormath1 = new LAB[PAIRS];
  private final LAB[] colormath2 = new LAB[PAIRS];

  /** Draws the pairs. */
  @Setup
  public void draw() {
    PairKind kind = PairKind.valueOf(pairs);
    LABColorSpace d65 = LABColorSpaces.INSTANCE.getLAB65();
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < PAIRS; i++) {
      double[] p = kind.next(random);
      l1[i] = p[0];
      a1[i] = p[1];
      b1[i] = p[2];
      l2[i] = p[3];
      a2[i] = p[4];
      b2[i] = p[5];
      lab1[i] = Lab.ofD65(p[0], p[1], p[2]);
      lab2[i] = Lab.ofD65(p[3], p[4], p[5]);
      colormath1[i] = new LAB((float) p[0], (float) p[1], (float) p[2], 1, d65);
      colormath2[i] = new LAB((float) p[3], (float) p[4], (float) p[5], 1, d65);
    }
  }

  /** The textbook form, as in the tests. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double textbook() {
    double sum = 0;
    for (int i = 0; i < PAIRS; i++) {
      sum += TextbookCiede2000.deltaE(l1[i], a1[i], b1[i], l2[i], a2[i], b2[i]);
    }
    return sum;
  }

  /** Bare coordinates. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double scalar() {
    double sum = 0;
    for (int i = 0; i < PAIRS; i++) {
      sum += Ciede2000.deltaE(l1[i], a1[i], b1[i], l2[i], a2[i], b2[i]);
    }
    return sum;
  }

  /** Colour objects. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double objects() {
    double sum = 0;
    for (int i = 0; i < PAIRS; i++) {
      sum += Ciede2000.deltaE(lab1[i], lab2[i]);
    }
    return sum;
  }

  /** The form for arrays, pair by pair. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double[] arrays() {
    Ciede2000.STANDARD.differences(l1, a1, b1, l2, a2, b2, into);
    return into;
  }

  /** The form for arrays, all against one reference. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double[] arrayFromOneReference() {
    Ciede2000.STANDARD.differences(lab1[0], l2, a2, b2, into);
    return into;
  }

  /** The textbook form, all against one reference. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double[] textbookFromOneReference() {
    for (int i = 0; i < PAIRS; i++) {
      into[i] = TextbookCiede2000.deltaE(l1[0], a1[0], b1[0], l2[i], a2[i], b2[i]);
    }
    return into;
  }

  /** OpenIMAJ 1.3.10. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double openimaj() {
    double sum = 0;
    for (int i = 0; i < PAIRS; i++) {
      sum += CIEDE2000.calculateDeltaE(l1[i], a1[i], b1[i], l2[i], a2[i], b2[i]);
    }
    return sum;
  }

  /** Colormath 3.6.1. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double colormath() {
    double sum = 0;
    for (int i = 0; i < PAIRS; i++) {
      sum += DifferenceKt.differenceCIE2000(colormath1[i], colormath2[i]);
    }
    return sum;
  }
}
