package io.github.swatchwright.search;

import io.github.swatchwright.spectrum.Bands;

/**
 * Computes the colours of up to {@link #LANES} mixes at once, in single precision: the inner loops
 * of the search, which take nearly all of its time.
 *
 * <p>Lane i of every array belongs to mix i; an array "by band" has a row of lanes for each of the
 * 36 bands. From paint to colour the steps are, in the order of a search: {@link #reflect} (K and S
 * of a mix → r), {@link #weigh} (r → X, Y, Z), {@link #encode} (→ f of CIELAB) and {@link #lab};
 * {@link #span}, {@link #outside}, {@link #apart} and {@link #widen} compare the results with
 * boxes.
 *
 * <p>Each method works on the first n lanes. The JIT compiler turns each loop into vector
 * instructions, which it does only while the loop is small, reads each array at one place, and has
 * no nested choice: hence rows instead of one long array, absolute values where a maximum would be
 * plainer, and loops for three and four paints written out.
 */
final class LaneKernel {
  /** The number of mixes that are computed together. */
  static final int LANES = 128;

  /** With more lanes than this in use, computing all of them is faster. */
  private static final int MANY = 96;

  private static final int BANDS_AT_ONCE = 4;

  /** CIE 15:2018: where CIELAB's straight start ends, and its slope. */
  private static final float EPSILON = (float) (216.0 / 24389);

  private static final float SLOPE = (float) (24389.0 / 27 / 116);

  /**
   * v^(4/3) ≈ v·(ROOT_0 + ROOT_1·v + …) within 0.07 % for v⁴ from ε to 1.05 (least largest error).
   */
  private static final float ROOT_0 = 0.40377367f;

  private static final float ROOT_1 = 1.0854069f;
  private static final float ROOT_2 = -0.73213035f;
  private static final float ROOT_3 = 0.24315476f;

  private LaneKernel() {}

  /** An array by band. */
  static float[][] byBand() {
    return new float[Bands.COUNT][LANES];
  }

  /**
   * r = S/(K + rest·S + √(K(K + 2S))) of the mix of paints in these parts, see {@link BandTables}.
   *
   * @param k K of each paint, by band
   * @param s S of each paint, by band
   * @param r by band, with one row more for scratch
   */
  static void reflect(int n, float[][][] k, float[][][] s, float[] parts, float rest, float[][] r) {
    float[] scratch = r[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      float[] into = r[band];
      if (parts.length == 3 && n > MANY) {
        threeInAllLanes(k, s, parts, band, rest, into);
        continue;
      }
      if (parts.length == 4 && n > MANY) {
        fourInAllLanes(k, s, parts, band, rest, into);
        continue;
      }
      mix(n, k, parts, band, scratch);
      mix(n, s, parts, band, into);
      reflectRow(n, scratch, into, rest);
    }
  }

  private static void mix(int n, float[][][] of, float[] parts, int band, float[] into) {
    if (parts.length == 3) {
      sum(n, parts[0], of[0][band], parts[1], of[1][band], parts[2], of[2][band], into);
      return;
    }
    sum(n, parts[0], of[0][band], parts[1], of[1][band], into);
    if (parts.length == 4) {
      sum(n, 1, into, parts[2], of[2][band], parts[3], of[3][band], into);
    }
  }

  private static void sum(int n, float p, float[] a, float q, float[] b, float[] into) {
    for (int i = 0; i < n; i++) {
      into[i] = p * a[i] + q * b[i];
    }
  }

  private static void sum(
      int n, float p, float[] a, float q, float[] b, float t, float[] c, float[] into) {
    for (int i = 0; i < n; i++) {
      into[i] = p * a[i] + q * b[i] + t * c[i];
    }
  }

  /** S on entry, r on return. */
  private static void reflectRow(int n, float[] k, float[] s, float rest) {
    for (int i = 0; i < n; i++) {
      float ki = k[i];
      float si = s[i];
      s[i] = si / (ki + rest * si + (float) Math.sqrt(ki * (ki + (si + si))));
    }
  }

  /** Mixes and reflects in one loop, which is faster, but only with a fixed number of lanes. */
  private static void threeInAllLanes(
      float[][][] k, float[][][] s, float[] parts, int band, float rest, float[] r) {
    float[] k0 = k[0][band];
    float[] s0 = s[0][band];
    float p0 = parts[0];
    float[] k1 = k[1][band];
    float[] s1 = s[1][band];
    float p1 = parts[1];
    float[] k2 = k[2][band];
    float[] s2 = s[2][band];
    float p2 = parts[2];
    for (int i = 0; i < LANES; i++) {
      float ki = p0 * k0[i] + p1 * k1[i] + p2 * k2[i];
      float si = p0 * s0[i] + p1 * s1[i] + p2 * s2[i];
      r[i] = si / (ki + rest * si + (float) Math.sqrt(ki * (ki + (si + si))));
    }
  }

  private static void fourInAllLanes(
      float[][][] k, float[][][] s, float[] parts, int band, float rest, float[] r) {
    float[] k0 = k[0][band];
    float[] s0 = s[0][band];
    float p0 = parts[0];
    float[] k1 = k[1][band];
    float[] s1 = s[1][band];
    float p1 = parts[1];
    float[] k2 = k[2][band];
    float[] s2 = s[2][band];
    float p2 = parts[2];
    float[] k3 = k[3][band];
    float[] s3 = s[3][band];
    float p3 = parts[3];
    for (int i = 0; i < LANES; i++) {
      float ki = p0 * k0[i] + p1 * k1[i] + p2 * k2[i] + p3 * k3[i];
      float si = p0 * s0[i] + p1 * s1[i] + p2 * s2[i] + p3 * s3[i];
      r[i] = si / (ki + rest * si + (float) Math.sqrt(ki * (ki + (si + si))));
    }
  }

  /** r of lanes that hold K and S of a part of the mix; the rest of the mix is the same for all. */
  static void reflectWith(
      int n, float[][] k, float[][] s, float[] moreK, float[] moreS, float rest, float[][] r) {
    for (int band = 0; band < Bands.COUNT; band++) {
      with(n, k[band], s[band], moreK[band], moreS[band], rest, r[band]);
    }
  }

  private static void with(
      int n, float[] k, float[] s, float moreK, float moreS, float rest, float[] r) {
    for (int i = 0; i < n; i++) {
      float ki = k[i] + moreK;
      float si = s[i] + moreS;
      r[i] = si / (ki + rest * si + (float) Math.sqrt(ki * (ki + (si + si))));
    }
  }

  /** low and high become the least and greatest of 2 to 4 arrays. */
  static void span(int n, float[][][] r, float[][] low, float[][] high) {
    for (int band = 0; band < Bands.COUNT; band++) {
      if (r.length == 2) {
        ofTwo(n, r[0][band], r[1][band], low[band], high[band]);
      } else {
        ofThree(n, r[0][band], r[1][band], r[2][band], low[band], high[band]);
      }
      if (r.length > 3) {
        withOne(n, r[3][band], low[band], high[band]);
      }
    }
  }

  private static void ofTwo(int n, float[] a, float[] b, float[] low, float[] high) {
    for (int i = 0; i < n; i++) {
      float x = a[i];
      float y = b[i];
      low[i] = Math.min(x, y);
      high[i] = Math.max(x, y);
    }
  }

  private static void ofThree(int n, float[] a, float[] b, float[] c, float[] low, float[] high) {
    for (int i = 0; i < n; i++) {
      float x = a[i];
      float y = b[i];
      float z = c[i];
      low[i] = Math.min(x, Math.min(y, z));
      high[i] = Math.max(x, Math.max(y, z));
    }
  }

  private static void withOne(int n, float[] a, float[] low, float[] high) {
    for (int i = 0; i < n; i++) {
      float x = a[i];
      low[i] = Math.min(low[i], x);
      high[i] = Math.max(high[i], x);
    }
  }

  /** sums = Σ weights·r over the bands. */
  static void weigh(int n, float[][] r, float[] w, float[] sums) {
    for (int i = 0; i < n; i++) {
      sums[i] = 0;
    }
    for (int b = 0; b < Bands.COUNT; b += BANDS_AT_ONCE) {
      weighFour(n, r[b], r[b + 1], r[b + 2], r[b + 3], w[b], w[b + 1], w[b + 2], w[b + 3], sums);
    }
  }

  private static void weighFour(
      int n,
      float[] r0,
      float[] r1,
      float[] r2,
      float[] r3,
      float w0,
      float w1,
      float w2,
      float w3,
      float[] sums) {
    for (int i = 0; i < n; i++) {
      sums[i] += w0 * r0[i] + w1 * r1[i] + w2 * r2[i] + w3 * r3[i];
    }
  }

  /** Adds to outside twice the distance between a range and another; 0 where they meet. */
  static void outside(int n, float[] low, float[] high, float from, float to, float[] outside) {
    for (int i = 0; i < n; i++) {
      float above = low[i] - to;
      float below = from - high[i];
      outside[i] += (above + Math.abs(above)) + (below + Math.abs(below));
    }
  }

  /**
   * CIELAB's f of plus + t, in place: f(t) = ∛u + slope·(t − u) with u = max(t, ε), since the
   * straight start is the tangent at ε. The root starts from a polynomial in the fourth root, and
   * is mended by one step of Halley's method, whose error is the cube of that.
   */
  static void encode(int n, float plus, float[] sums) {
    for (int i = 0; i < n; i++) {
      float t = sums[i] + plus;
      float u = 0.5f * (t + EPSILON + Math.abs(t - EPSILON));
      float v = (float) Math.sqrt((float) Math.sqrt(u));
      float y = v * (ROOT_0 + v * (ROOT_1 + v * (ROOT_2 + v * ROOT_3)));
      float cube = y * y * y;
      sums[i] = y * ((cube + (u + u)) / ((cube + cube) + u)) + SLOPE * (t - u);
    }
  }

  /** Turns f(X/Xn), f(Y/Yn), f(Z/Zn) into a*, L*, b*, in place. */
  static void lab(int n, float[] x, float[] y, float[] z) {
    for (int i = 0; i < n; i++) {
      float fy = y[i];
      x[i] = 500 * (x[i] - fy);
      z[i] = 200 * (fy - z[i]);
      y[i] = 116 * fy - 16;
    }
  }

  /** Adds to outside twice what |value − centre| exceeds the reach by; 0 within it. */
  static void apart(int n, float[] values, float centre, float reach, float[] outside) {
    for (int i = 0; i < n; i++) {
      float beyond = Math.abs(values[i] - centre) - reach;
      outside[i] += beyond + Math.abs(beyond);
    }
  }

  /** least = min(least, values), most = max(most, values). */
  static void widen(int n, float[] values, float[] least, float[] most) {
    withOne(n, values, least, most);
  }
}
