package io.github.swatchwright.estimate;

import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.spectrum.Bands;
import java.util.Arrays;

/**
 * Turns what is stated of a paint's hiding into levels of ln S, given its masstone.
 *
 * <p>At a given q(λ), scaling S scales K with it and is the same as scaling the thickness, so one
 * paint of S = 1 answers for all levels: e^level coats of it stand for one coat.
 *
 * <p>A contrast ratio and a scattering are figures; so is a number of coats that isn't whole. A
 * painter's whole number of coats n stands for more than n − 1 and at most n, a word for what
 * {@link Hiding.Word} lists, and a ratio so near 1 that its error reaches it for "at least".
 */
final class ScatteringLevel {
  private static final double RATIO_ERROR = 0.01;

  /** Nobody lays a coat to better than this: sd of ln thickness (common practice). */
  private static final double THICKNESS_ERROR = 0.15;

  /** A film drawn down for its contrast ratio (ISO 6504-3) is evener: sd of ln thickness (cp). */
  private static final double DRAWDOWN_ERROR = 0.08;

  private static final double SCATTERING_ERROR = 0.1;
  private static final double STEP = 1e-4;

  private final GaussianBelief reflectance;
  private final OpticalConstants unitScatterer;
  private final HidingPower hidingPower;

  /**
   * Levels of a paint.
   *
   * @param reflectance what is believed of z in all bands
   * @param hidingPower daylight and the shelf's surface
   */
  ScatteringLevel(GaussianBelief reflectance, HidingPower hidingPower) {
    this.reflectance = reflectance;
    this.unitScatterer = unitScatterer(reflectance.mean());
    this.hidingPower = hidingPower;
  }

  private static OpticalConstants unitScatterer(double[] z) {
    return OpticsState.constants(Arrays.copyOf(z, OpticsState.SIZE));
  }

  /** Coats until the paint hides, if S were 1 in all bands. */
  double unitCoats() {
    return hidingPower.coatsToHide(unitScatterer);
  }

  /** What was stated, as levels. */
  HidingStatement of(Hiding hiding) {
    if (hiding instanceof Hiding.Scattering stated) {
      double level = Math.log(stated.scattering());
      return new HidingStatement(
          level, level, SCATTERING_ERROR, OpticsPrior.flat(1.0 / Bands.COUNT));
    }
    if (hiding instanceof Hiding.Coats coats) {
      return ofCoats(coats.coats());
    }
    if (hiding instanceof Hiding.ContrastRatio measured) {
      return measured.ratio() > 1 - RATIO_ERROR
          ? between(measured.ratio() - RATIO_ERROR, 1, DRAWDOWN_ERROR)
          : between(measured.ratio(), measured.ratio(), DRAWDOWN_ERROR);
    }
    Hiding.Word word = (Hiding.Word) hiding;
    return between(word.lowestRatio(), word.highestRatio(), THICKNESS_ERROR);
  }

  private HidingStatement ofCoats(double coats) {
    double unitCoats = unitCoats();
    double least = Math.log(unitCoats / coats);
    double most = least;
    if (coats == Math.rint(coats)) {
      most = coats > 1 ? Math.log(unitCoats / (coats - 1)) : Double.POSITIVE_INFINITY;
    }
    return statement(least, most, unitCoats * Film.COAT, THICKNESS_ERROR, 0);
  }

  private HidingStatement between(double lowestRatio, double highestRatio, double thicknessError) {
    double thinnest = lowestRatio == 0 ? 0 : hidingPower.thickness(unitScatterer, lowestRatio);
    double thickest = thinnest;
    if (highestRatio != lowestRatio) {
      thickest =
          highestRatio == 1
              ? Double.POSITIVE_INFINITY
              : hidingPower.thickness(unitScatterer, highestRatio);
    }
    double middle =
        thinnest == 0 ? thickest : highestRatio == 1 ? thinnest : Math.sqrt(thinnest * thickest);
    return statement(
        Math.log(thinnest / Film.COAT),
        Math.log(thickest / Film.COAT),
        middle,
        thicknessError,
        RATIO_ERROR);
  }

  /**
   * Weights and error from the slopes of the contrast ratio at a thickness of the unit scatterer:
   * by ln S, which is by ln X in each band, and by z.
   */
  private HidingStatement statement(
      double lowest, double highest, double x, double thicknessError, double ratioError) {
    double[] shifted = reflectance.mean();
    for (int band = 0; band < shifted.length; band++) {
      shifted[band] += STEP;
    }
    double[][] films = hidingPower.overCards(unitScatterer, x);
    double[] byU = slopes(films, hidingPower.overCards(unitScatterer, x * (1 + STEP)));
    double[] byZ = slopes(films, hidingPower.overCards(unitScatterer(shifted), x));
    double byLevel = Arrays.stream(byU).reduce(0, Double::sum);
    if (!(byLevel > 0)) {
      return new HidingStatement(
          lowest, highest, thicknessError, OpticsPrior.flat(1.0 / Bands.COUNT));
    }
    for (int band = 0; band < Bands.COUNT; band++) {
      byU[band] /= byLevel;
      byZ[band] /= byLevel;
    }
    double ofMasstone = LowerTriangle.dot(byZ, reflectance.spreadAlong(byZ));
    double ofRatio = ratioError / byLevel;
    double sd = Math.sqrt(thicknessError * thicknessError + ofRatio * ofRatio + ofMasstone);
    return new HidingStatement(lowest, highest, sd, byU);
  }

  /**
   * What each band contributes to the change of the contrast ratio over a small step.
   *
   * @param films a film on the card, {@link HidingPower#overCards}
   * @param stepped the same a step further
   */
  private double[] slopes(double[][] films, double[][] stepped) {
    Viewing viewing = hidingPower.viewing();
    Saunderson surface = viewing.surface();
    double yWhite = viewing.xyz(films[1]).y();
    double ratio = viewing.xyz(films[0]).y() / yWhite;
    double[] slopes = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double y = viewing.weights().y(band) / (yWhite * STEP);
      double toBlack = y * surface.slope(films[0][band]);
      double toWhite = ratio * y * surface.slope(films[1][band]);
      slopes[band] =
          toBlack * (stepped[0][band] - films[0][band])
              - toWhite * (stepped[1][band] - films[1][band]);
    }
    return slopes;
  }
}
