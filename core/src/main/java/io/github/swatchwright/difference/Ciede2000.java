package io.github.swatchwright.difference;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.ciede2000.Ciede2000Formula;
import io.github.swatchwright.ciede2000.HueDifference;
import io.github.swatchwright.colour.Lab;

/**
 * The CIEDE2000 colour difference ΔE00 of ISO/CIE 11664-6, after Sharma, Wu and Dalal 2005 ("The
 * CIEDE2000 Color-Difference Formula: Implementation Notes …"). Symmetric, at least 0, never NaN.
 * It is made for small differences of surface colours seen side by side; above about 5 it ranks
 * rather than measures.
 *
 * <p>The standard's formula has two jumps, where the last bit of the input decides. Both are
 * decided without rounding: of two hues less than 180° apart the mean lies on the shorter arc; of
 * hues exactly 180° apart it is the plain mean of both, taken from 0° to below 360°; and a mean hue
 * of exactly 0° counts as 0°, not 360°.
 *
 * <p>The static methods take the standard's factors kL = kC = kH = 1. Instances hold others, for
 * conditions that a trade has agreed on, such as kL = 2 for textiles. Immutable.
 */
public final class Ciede2000 {
  /** The formula under reference conditions, kL = kC = kH = 1. */
  public static final Ciede2000 STANDARD = new Ciede2000(1, 1, 1);

  private final Ciede2000Formula formula;

  private Ciede2000(double kL, double kC, double kH) {
    formula = new Ciede2000Formula(kL, kC, kH);
  }

  /**
   * The formula with other parametric factors; a larger factor lets a difference count less.
   *
   * @param kL factor of lightness, 0.001 to 1000
   * @param kC factor of chroma, 0.001 to 1000
   * @param kH factor of hue, 0.001 to 1000
   */
  public static Ciede2000 withFactors(double kL, double kC, double kH) {
    return new Ciede2000(
        Require.within("kL", kL, 0.001, 1000),
        Require.within("kC", kC, 0.001, 1000),
        Require.within("kH", kH, 0.001, 1000));
  }

  /**
   * ΔE00 of two colours under reference conditions.
   *
   * @throws IllegalArgumentException when the colours are relative to different whites
   */
  public static double deltaE(Lab first, Lab second) {
    return STANDARD.difference(first, second);
  }

  /**
   * ΔE00 of two colours under reference conditions, from bare CIELAB coordinates. Both must be
   * relative to the same white; nothing can check that here.
   *
   * @throws IllegalArgumentException when a coordinate is not finite
   */
  public static double deltaE(double l1, double a1, double b1, double l2, double a2, double b2) {
    return STANDARD.formula.deltaE(l1, a1, b1, l2, a2, b2);
  }

  /**
   * ΔE00 of two colours with this instance's factors.
   *
   * @throws IllegalArgumentException when the colours are relative to different whites
   */
  public double difference(Lab first, Lab second) {
    SameWhite.require(first, second);
    return formula.deltaE(first.l(), first.a(), first.b(), second.l(), second.a(), second.b());
  }

  /**
   * ΔE00 with this instance's factors, and the standard's ΔL′, ΔC′ and ΔH′ that it is made of.
   *
   * @throws IllegalArgumentException when the colours are relative to different whites
   */
  public ColourDifference compare(Lab reference, Lab sample) {
    double deltaE = difference(reference, sample);
    double scale =
        Math.min(
            Ciede2000Formula.scale(reference.a(), reference.b()),
            Ciede2000Formula.scale(sample.a(), sample.b()));
    double a1 = reference.a() * scale;
    double b1 = reference.b() * scale;
    double a2 = sample.a() * scale;
    double b2 = sample.b() * scale;
    double stretch = Ciede2000Formula.stretch(a1, b1, a2, b2);
    double deltaC = Math.hypot(stretch * a2, b2) - Math.hypot(stretch * a1, b1);
    double deltaH = HueDifference.of(a1, b1, a2, b2, stretch);
    return new ColourDifference(deltaE, sample.l() - reference.l(), deltaC / scale, deltaH / scale);
  }

  /**
   * ΔE00 of many colours from one reference, with this instance's factors. Allocates nothing for
   * each.
   *
   * @param reference the colour to compare with
   * @param l lightness of each sample, relative to the reference's white
   * @param a a* of each sample
   * @param b b* of each sample
   * @param into receives ΔE00 of each sample; as long as the others, and none of them
   * @throws IllegalArgumentException when the lengths differ, {@code into} is among the others, or
   *     a coordinate is not finite
   */
  public void differences(Lab reference, double[] l, double[] a, double[] b, double[] into) {
    requireArrays(into, l, a, b);
    double l1 = reference.l();
    double a1 = reference.a();
    double b1 = reference.b();
    // Two short loops: the processor overlaps more of their steps than of one long one's.
    for (int i = 0; i < l.length; i++) {
      into[i] = Ciede2000Formula.checkedStretch(l1, a1, b1, l[i], a[i], b[i]);
    }
    for (int i = 0; i < l.length; i++) {
      into[i] = formula.stretched(l1, a1, b1, l[i], a[i], b[i], into[i]);
    }
  }

  /**
   * ΔE00 of many pairs of colours with this instance's factors, all relative to one white.
   * Allocates nothing for each.
   *
   * @param l1 lightness of each first colour
   * @param a1 a* of each first colour
   * @param b1 b* of each first colour
   * @param l2 lightness of each second colour
   * @param a2 a* of each second colour
   * @param b2 b* of each second colour
   * @param into receives ΔE00 of each pair; as long as the others, and none of them
   * @throws IllegalArgumentException when the lengths differ, {@code into} is among the others, or
   *     a coordinate is not finite
   */
  public void differences(
      double[] l1, double[] a1, double[] b1, double[] l2, double[] a2, double[] b2, double[] into) {
    requireArrays(into, l1, a1, b1, l2, a2, b2);
    for (int i = 0; i < l1.length; i++) {
      into[i] = Ciede2000Formula.checkedStretch(l1[i], a1[i], b1[i], l2[i], a2[i], b2[i]);
    }
    for (int i = 0; i < l1.length; i++) {
      into[i] = formula.stretched(l1[i], a1[i], b1[i], l2[i], a2[i], b2[i], into[i]);
    }
  }

  private static void requireArrays(double[] into, double[]... coordinates) {
    for (int i = 0; i < coordinates.length; i++) {
      if (coordinates[i] == into) {
        throw new IllegalArgumentException("into is also array " + i + " of the coordinates");
      }
      if (coordinates[i].length != into.length) {
        throw new IllegalArgumentException(
            "array "
                + i
                + " of the coordinates has length "
                + coordinates[i].length
                + ", must be as long as into: "
                + into.length);
      }
    }
  }

  @Override
  public String toString() {
    return "CIEDE2000(" + formula.kL() + ":" + formula.kC() + ":" + formula.kH() + ")";
  }
}
