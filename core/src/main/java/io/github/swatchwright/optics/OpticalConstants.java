package io.github.swatchwright.optics;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.spectrum.Bands;
import java.util.Arrays;

/**
 * Absorption K(λ) and scattering S(λ) of a paint or a mix, per unit of thickness, in units of a
 * typical white's S. They add up by volume (Duncan 1940).
 */
public final class OpticalConstants {
  private final double[] k;
  private final double[] s;

  private OpticalConstants(double[] k, double[] s) {
    this.k = k;
    this.s = s;
  }

  /**
   * Constants from their values in all bands.
   *
   * @param k absorption, at least 0
   * @param s scattering, above 0
   */
  public static OpticalConstants of(double[] k, double[] s) {
    Require.within("number of k", k.length, Bands.COUNT, Bands.COUNT);
    Require.within("number of s", s.length, Bands.COUNT, Bands.COUNT);
    for (int i = 0; i < Bands.COUNT; i++) {
      Require.nonNegative("k", i, k[i]);
      Require.positive("s", i, s[i]);
    }
    return new OpticalConstants(k.clone(), s.clone());
  }

  /**
   * The mix K = Σ cᵢKᵢ, S = Σ cᵢSᵢ with the volumes scaled to sum to 1.
   *
   * @param parts the constants of the parts, at least one
   * @param volumes their volumes in any unit, at least 0, not all 0
   */
  public static OpticalConstants mix(OpticalConstants[] parts, double[] volumes) {
    Require.within("number of parts", parts.length, 1, Integer.MAX_VALUE);
    Require.within("number of volumes", volumes.length, parts.length, parts.length);
    double whole = 0;
    for (int i = 0; i < volumes.length; i++) {
      whole += Require.nonNegative("volumes", i, volumes[i]);
    }
    Require.positive("sum of volumes", whole);
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    for (int i = 0; i < parts.length; i++) {
      double share = volumes[i] / whole;
      for (int band = 0; band < Bands.COUNT; band++) {
        k[band] += share * parts[i].k[band];
        s[band] += share * parts[i].s[band];
      }
    }
    return new OpticalConstants(k, s);
  }

  /** Absorption in one band. */
  public double k(int band) {
    return k[band];
  }

  /** Scattering in one band. */
  public double s(int band) {
    return s[band];
  }

  /** Internal reflectance at full hiding, all bands. */
  public double[] opaque() {
    double[] r = new double[Bands.COUNT];
    for (int i = 0; i < r.length; i++) {
      r[i] = KubelkaMunk.reflectance(k[i], s[i]);
    }
    return r;
  }

  /**
   * Internal reflectance of a film over a base, all bands.
   *
   * @param x thickness, at least 0; a coat is {@value Film#COAT}
   * @param base internal reflectance of the base in all bands, 0 to 1
   */
  public double[] filmOver(double x, double[] base) {
    Require.nonNegative("x", x);
    Require.within("number of base bands", base.length, Bands.COUNT, Bands.COUNT);
    double[] r = new double[Bands.COUNT];
    for (int i = 0; i < r.length; i++) {
      r[i] = Film.over(k[i], s[i], x, Require.within("base", i, base[i], 0, 1));
    }
    return r;
  }

  /**
   * Internal reflectance of a film over two bases that are the same in all bands.
   *
   * @return two rows of all bands
   */
  double[][] filmOver(double x, double first, double second) {
    double[][] r = new double[2][Bands.COUNT];
    for (int i = 0; i < Bands.COUNT; i++) {
      Film.over(k[i], s[i], x, first, second, r, i);
    }
    return r;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OpticalConstants that
        && Arrays.equals(k, that.k)
        && Arrays.equals(s, that.s);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(k) + Arrays.hashCode(s);
  }

  @Override
  public String toString() {
    return "OpticalConstants[k=" + Arrays.toString(k) + ", s=" + Arrays.toString(s) + "]";
  }
}
