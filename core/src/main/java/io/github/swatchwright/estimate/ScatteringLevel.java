package io.github.swatchwright.estimate;

import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Hiding;
import org.apache.commons.math3.special.Erf;

/**
 * What a hiding figure says about the level of ln S, given the masstone: a one-dimensional
 * posterior on a grid.
 *
 * <p>At a given q(λ), scaling S scales K with it and is the same as scaling the thickness, so one
 * paint of S = 1 answers for all levels: e^level coats of it stand for one coat.
 */
final class ScatteringLevel {
  private static final int GRID = 241;
  private static final double GRID_SDS = 6;

  /** Hiding figures are judged with an error of their own; the shape of S adds to it. */
  private static final double INFLATION = 0.25;

  private static final double COATS_ERROR = 0.15;
  private static final double RATIO_ERROR = 0.01;
  private static final double WORD_ERROR = 0.04;
  private static final double SCATTERING_ERROR = 0.1;

  /** Levels are bracketed to this. */
  private static final double LEVEL_STEP = 0.05;

  /** No likelihood falls below this, so that a figure that can't be leaves the prior in place. */
  private static final double FLOOR = 1e-12;

  private final OpticalConstants unitScatterer;
  private final HidingPower hidingPower;

  /**
   * Evidence about a paint.
   *
   * @param unitScatterer its constants when S = 1 in all bands
   * @param hidingPower daylight and the shelf's surface
   */
  ScatteringLevel(OpticalConstants unitScatterer, HidingPower hidingPower) {
    this.unitScatterer = unitScatterer;
    this.hidingPower = hidingPower;
  }

  /** The belief about scattering after the figure. */
  OpticsPrior.Scattering after(OpticsPrior.Scattering prior, Hiding hiding) {
    double reach = GRID_SDS * prior.sd();
    Likelihood likelihood = likelihood(hiding, prior.mean() - reach, prior.mean() + reach);
    double weightSum = 0;
    double mean = 0;
    double square = 0;
    for (int i = 0; i < GRID; i++) {
      double offset = GRID_SDS * (2.0 * i / (GRID - 1) - 1);
      double level = prior.mean() + prior.sd() * offset;
      double weight = Math.exp(-offset * offset / 2) * Math.max(FLOOR, likelihood.of(level));
      weightSum += weight;
      mean += weight * level;
      square += weight * level * level;
    }
    mean /= weightSum;
    double variance = Math.max(0, square / weightSum - mean * mean);
    return prior.withLevel(mean, Math.sqrt(variance + INFLATION * INFLATION));
  }

  /** How likely the figure is at a level of ln S. */
  private interface Likelihood {
    double of(double level);
  }

  private Likelihood likelihood(Hiding hiding, double lowest, double highest) {
    if (hiding instanceof Hiding.Coats coats) {
      double unitCoats = Math.log(hidingPower.coatsToHide(unitScatterer));
      double most = Math.log(coats.coats());
      double fewest = coats.coats() > 1 ? Math.log(coats.coats() - 1) : Double.NEGATIVE_INFINITY;
      return level -> within(unitCoats - level, fewest, most, COATS_ERROR);
    }
    if (hiding instanceof Hiding.ContrastRatio measured) {
      return nearRatio(measured.ratio(), lowest, highest);
    }
    if (hiding instanceof Hiding.Scattering stated) {
      double logScattering = Math.log(stated.scattering());
      return level -> bell(level - logScattering, SCATTERING_ERROR);
    }
    Hiding.Word word = (Hiding.Word) hiding;
    double least = word.lowestRatio() == 0 ? Double.NEGATIVE_INFINITY : word.lowestRatio();
    double most = word.highestRatio() == 1 ? Double.POSITIVE_INFINITY : word.highestRatio();
    return level -> within(oneCoatRatio(level), least, most, WORD_ERROR);
  }

  /**
   * Of a measured ratio. Ratios so far from it that they fall below the floor aren't computed: they
   * rise with the level, so that halving finds where they begin.
   */
  private Likelihood nearRatio(double ratio, double lowest, double highest) {
    double far = RATIO_ERROR * Math.sqrt(-2 * Math.log(FLOOR));
    double from = levelBefore(ratio - far, lowest, highest);
    double to = levelBefore(ratio + far, lowest, highest) + LEVEL_STEP;
    return level -> level < from || level > to ? 0 : bell(oneCoatRatio(level) - ratio, RATIO_ERROR);
  }

  /** A level, within a step, at which one coat's ratio isn't yet above this one. */
  private double levelBefore(double ratio, double lowest, double highest) {
    double low = lowest;
    double high = highest;
    while (high - low > LEVEL_STEP) {
      double middle = (low + high) / 2;
      if (oneCoatRatio(middle) <= ratio) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double oneCoatRatio(double level) {
    return hidingPower.contrastRatio(unitScatterer, Film.COAT * Math.exp(level));
  }

  private static double bell(double deviation, double sd) {
    double t = deviation / sd;
    return Math.exp(-t * t / 2);
  }

  /** The chance that a value with that error lies between two limits. */
  private static double within(double value, double lowest, double highest, double sd) {
    double scale = sd * Math.sqrt(2);
    return (Erf.erf((highest - value) / scale) - Erf.erf((lowest - value) / scale)) / 2;
  }
}
