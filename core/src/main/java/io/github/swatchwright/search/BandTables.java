package io.github.swatchwright.search;

import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;

/**
 * A space's numbers in single precision, as the lane kernels read them.
 *
 * <p>With r = S/(K + (1 − k2)S + √(K(K + 2S))) the seen reflectance is k1 + (1 − k1)(1 − k2)·r, so
 * that X/Xn = k1·ΣWx/Xn + Σ wx·r with wx = (1 − k1)(1 − k2)·Wx/Xn, and alike for Y and Z. All sums
 * that r is made of have terms ≥ 0, so nothing cancels: with u = 2⁻²⁴ and up to 4 paints K and S
 * are within 5u of their size, r within 15u, Σ wx·r over 36 bands within 54u, and X/Xn within
 * {@link #RELATIVE_ERROR}.
 */
final class BandTables {
  /** Of X/Xn, Y/Yn and Z/Zn: 60 × 2⁻²⁴, where no weight is below 0. */
  static final double RELATIVE_ERROR = 60 * 0x1p-24;

  /** K and S outside are left to double precision: their products could leave float's range. */
  private static final double SMALLEST = 1e-15;

  private static final double LARGEST = 1e15;

  /** K and S of a drop, at paint · 36 + band. */
  final float[] k;

  final float[] s;

  /** 1 − k2. */
  final float rest;

  /** wx, wy and wz by band. */
  final float[][] weights;

  /** The same, with 0 instead of what is below. */
  final float[][] positive;

  /** What the surface adds to X/Xn, Y/Yn and Z/Zn. */
  final double[] surface;

  /** The most that weights below 0 take away from X/Xn, Y/Yn and Z/Zn. */
  final double[] negative;

  final boolean withinRange;

  BandTables(SearchSpace space) {
    weights = new float[3][Bands.COUNT];
    positive = new float[3][Bands.COUNT];
    surface = new double[3];
    negative = new double[3];
    double[][] absorption = space.absorptionPerDrop();
    double[][] scattering = space.scatteringPerDrop();
    k = flat(absorption);
    s = flat(scattering);
    Saunderson saunderson = space.viewing().surface();
    rest = (float) (1 - saunderson.k2());
    double through = (1 - saunderson.k1()) * (1 - saunderson.k2());
    TristimulusWeights light = space.viewing().weights();
    WhitePoint white = light.whitePoint();
    double[][] perWhite = {
      scaled(light.x(), white.xn()), scaled(light.y(), white.yn()), scaled(light.z(), white.zn())
    };
    for (int i = 0; i < 3; i++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        double weight = perWhite[i][band];
        weights[i][band] = (float) (through * weight);
        positive[i][band] = Math.max(0, weights[i][band]);
        surface[i] += saunderson.k1() * weight;
        negative[i] += Math.max(0, -weight);
      }
    }
    withinRange =
        saunderson.k2() < 0.999
            && Math.max(negative[0], Math.max(negative[1], negative[2])) < 1e-3
            && within(absorption)
            && within(scattering);
  }

  /** The same with the paints in another order: place i holds the paint of order[i]. */
  BandTables reordered(int[] order) {
    return new BandTables(this, order);
  }

  /** Writes K and S of a drop of each of n paints into the lanes, band by band. */
  void copyDrops(int n, int[] paints, float[][] intoK, float[][] intoS) {
    for (int band = 0; band < Bands.COUNT; band++) {
      float[] kOfBand = intoK[band];
      float[] sOfBand = intoS[band];
      for (int lane = 0; lane < n; lane++) {
        int at = paints[lane] * Bands.COUNT + band;
        kOfBand[lane] = k[at];
        sOfBand[lane] = s[at];
      }
    }
  }

  /** Writes K and S of p drops of one paint and q of another into one lane. */
  void copyMix(
      int first, float p, int second, float q, float[][] intoK, float[][] intoS, int lane) {
    int from1 = first * Bands.COUNT;
    int from2 = second * Bands.COUNT;
    for (int band = 0; band < Bands.COUNT; band++) {
      intoK[band][lane] = p * k[from1 + band] + q * k[from2 + band];
      intoS[band][lane] = p * s[from1 + band] + q * s[from2 + band];
    }
  }

  private BandTables(BandTables other, int[] order) {
    k = new float[other.k.length];
    s = new float[other.s.length];
    for (int place = 0; place < order.length; place++) {
      int from = order[place] * Bands.COUNT;
      System.arraycopy(other.k, from, k, place * Bands.COUNT, Bands.COUNT);
      System.arraycopy(other.s, from, s, place * Bands.COUNT, Bands.COUNT);
    }
    rest = other.rest;
    weights = other.weights;
    positive = other.positive;
    surface = other.surface;
    negative = other.negative;
    withinRange = other.withinRange;
  }

  private static float[] flat(double[][] rows) {
    float[] flat = new float[rows.length * Bands.COUNT];
    for (int row = 0; row < rows.length; row++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        flat[row * Bands.COUNT + band] = (float) rows[row][band];
      }
    }
    return flat;
  }

  private static double[] scaled(double[] values, double divisor) {
    for (int i = 0; i < values.length; i++) {
      values[i] /= divisor;
    }
    return values;
  }

  private static boolean within(double[][] rows) {
    for (double[] row : rows) {
      for (double value : row) {
        if (!(value >= SMALLEST && value <= LARGEST)) {
          return false;
        }
      }
    }
    return true;
  }
}
