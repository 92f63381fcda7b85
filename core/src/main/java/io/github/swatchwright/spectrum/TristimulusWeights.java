package io.github.swatchwright.spectrum;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;

/**
 * What turns a reflectance into tristimulus values: one weight a band for X, Y and Z, so that X = Σ
 * Wx·R.
 *
 * <p>Worked out from the CIE's tables every 5 nm over 380 to 780 nm, in the spirit of ASTM E2022:
 * between the bands the reflectance is Lagrange's cubic through the four nearest bands (the
 * quadratic through three in the first and the last interval), above 730 nm it is held. The weights
 * carry all of the light's and the observer's 5 nm detail. Scale: a perfect diffuser has Y = 100.
 *
 * <p>Under D65 and D50 with the CIE 1931 observer the weights of each channel are then scaled, by
 * less than 1.0003, so that the diffuser is {@link WhitePoint#D65} or {@link WhitePoint#D50}
 * exactly: the CIE's rounded chromaticities of its daylights and its tables of them disagree in the
 * fourth digit, and a white of Lab (100, 0, 0) has to be the same white everywhere. Under every
 * other light the sum of the weights is the white.
 */
public final class TristimulusWeights {
  /** Daylight D65 and the CIE 1931 observer: the default of everything here. */
  public static final TristimulusWeights D65 =
      new TristimulusWeights(
          Illuminant.D65,
          Observer.CIE_1931,
          WeightTable.fiveNanometre(Illuminant.D65, Observer.CIE_1931));

  private final Illuminant illuminant;
  private final Observer observer;
  private final double[] x;
  private final double[] y;
  private final double[] z;
  private final WhitePoint whitePoint;

  private TristimulusWeights(Illuminant illuminant, Observer observer, double[][] weights) {
    this.illuminant = illuminant;
    this.observer = observer;
    x = weights[0];
    y = weights[1];
    z = weights[2];
    WhitePoint sum = new WhitePoint(sum(x), sum(y), sum(z));
    whitePoint = nominalWhite(illuminant, observer, sum);
    scale(x, whitePoint.xn() / sum.xn());
    scale(y, whitePoint.yn() / sum.yn());
    scale(z, whitePoint.zn() / sum.zn());
  }

  /** The weights of a light and an observer; {@link #D65} itself for daylight and CIE 1931. */
  public static TristimulusWeights of(Illuminant illuminant, Observer observer) {
    if (illuminant.equals(Illuminant.D65) && observer == Observer.CIE_1931) {
      return D65;
    }
    return new TristimulusWeights(
        illuminant, observer, WeightTable.fiveNanometre(illuminant, observer));
  }

  private static WhitePoint nominalWhite(Illuminant light, Observer observer, WhitePoint sum) {
    if (observer != Observer.CIE_1931) {
      return sum;
    }
    if (light.equals(Illuminant.D65)) {
      return WhitePoint.D65;
    }
    return light.equals(Illuminant.D50) ? WhitePoint.D50 : sum;
  }

  private static double sum(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    return sum;
  }

  private static void scale(double[] weights, double factor) {
    for (int band = 0; band < weights.length; band++) {
      weights[band] *= factor;
    }
  }

  /** Tristimulus values of a surface of this reflectance, relative to {@link #whitePoint}. */
  public Xyz xyz(Reflectance reflectance) {
    return xyz(reflectance.values());
  }

  /**
   * The same from a bare array, for inner loops; the values are not checked.
   *
   * @param reflectance 36 fractions, in order of wavelength
   */
  public Xyz xyz(double[] reflectance) {
    Require.within("number of bands", reflectance.length, Bands.COUNT, Bands.COUNT);
    double sumX = 0;
    double sumY = 0;
    double sumZ = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      sumX += x[band] * reflectance[band];
      sumY += y[band] * reflectance[band];
      sumZ += z[band] * reflectance[band];
    }
    return new Xyz(sumX, sumY, sumZ, whitePoint);
  }

  /** The weight of X in one band, 0 to 35. */
  public double x(int band) {
    return x[band];
  }

  /** A copy of the 36 weights of X. */
  public double[] x() {
    return x.clone();
  }

  /** The weight of Y in one band, 0 to 35. */
  public double y(int band) {
    return y[band];
  }

  /** A copy of the 36 weights of Y. */
  public double[] y() {
    return y.clone();
  }

  /** The weight of Z in one band, 0 to 35. */
  public double z(int band) {
    return z[band];
  }

  /** A copy of the 36 weights of Z. */
  public double[] z() {
    return z.clone();
  }

  /** What a perfect diffuser comes to under this light. */
  public WhitePoint whitePoint() {
    return whitePoint;
  }

  /** The light. */
  public Illuminant illuminant() {
    return illuminant;
  }

  /** The observer. */
  public Observer observer() {
    return observer;
  }

  /** Whether the other weights are of the same light and observer. */
  @Override
  public boolean equals(Object other) {
    return other instanceof TristimulusWeights that
        && illuminant.equals(that.illuminant)
        && observer == that.observer;
  }

  @Override
  public int hashCode() {
    return 31 * illuminant.hashCode() + observer.hashCode();
  }

  @Override
  public String toString() {
    return "TristimulusWeights[" + illuminant + ", " + observer + "]";
  }
}
