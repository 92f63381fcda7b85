package io.github.swatchwright.spectrum;

import io.github.swatchwright.argument.Require;

/**
 * Equally spaced samples over wavelength, read between the samples by Lagrange's cubic through the
 * four nearest (the interpolation of ASTM E2022), at the samples exactly, and beyond either end as
 * the end sample, held.
 */
final class SampledCurve {
  private static final int CUBIC_POINTS = 4;

  private final double fromNm;
  private final double stepNm;
  private final double[] values;

  /** Keeps {@code values} without copying. */
  SampledCurve(double fromNm, double stepNm, double[] values) {
    this.fromNm = Require.positive("fromNm", fromNm);
    this.stepNm = Require.positive("stepNm", stepNm);
    this.values = values;
  }

  double lastNm() {
    return fromNm + stepNm * (values.length - 1);
  }

  double at(double wavelengthNm) {
    double position = (wavelengthNm - fromNm) / stepNm;
    int last = values.length - 1;
    if (position <= 0) {
      return values[0];
    }
    if (position >= last) {
      return values[last];
    }
    long nearest = Math.round(position);
    if (Math.abs(position - nearest) < 1e-9) {
      return values[(int) nearest];
    }
    int points = Math.min(CUBIC_POINTS, values.length);
    int start = (int) Math.floor(position) - (points - 1) / 2;
    return lagrange(Math.max(0, Math.min(start, values.length - points)), points, position);
  }

  /** Σ yᵢ·Π (p − pⱼ)/(pᵢ − pⱼ), with the position p counted in samples. */
  private double lagrange(int start, int points, double position) {
    double sum = 0;
    for (int i = start; i < start + points; i++) {
      double basis = 1;
      for (int j = start; j < start + points; j++) {
        if (j != i) {
          basis *= (position - j) / (i - j);
        }
      }
      sum += values[i] * basis;
    }
    return sum;
  }
}
