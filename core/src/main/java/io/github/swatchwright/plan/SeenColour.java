package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Swatch;

/**
 * An area's colour after a step that was both predicted and measured: the mean of the two, weighted
 * by their errors. Otherwise a meter with as large an error as the paint's would undo what is
 * known.
 *
 * <p>Both are Gaussian in L*, a* and b*, but the prediction has the tails of a Student t with four
 * degrees of freedom: a pot that went wrong lies far outside, and then only what was measured
 * counts. The weight of the prediction is therefore (4 + 3)/(4 + d²) of its own, with d the
 * distance in standard deviations (the t as a scale mixture; Lange, Little and Taylor 1989).
 */
final class SeenColour {
  private static final double FREEDOM = 4;
  private static final double COORDINATES = 3;

  private SeenColour() {}

  /**
   * The colour to go on from. A measured reflectance is far surer than any prediction: it stays.
   */
  static Base of(Prediction foretold, Done.Measured seen) {
    if (seen.swatch() instanceof Swatch.OfReflectance) {
      return new Base.OfSwatch(seen.swatch(), seen.error());
    }
    Lab lab = seen.swatch().lab();
    double[] measured = {lab.l(), lab.a(), lab.b()};
    double[] expected = {foretold.lab().l(), foretold.lab().a(), foretold.lab().b()};
    double[] sd = foretold.spread().standardDeviations();
    double variance = seen.error() * seen.error();
    double distance = 0;
    for (int i = 0; i < measured.length; i++) {
      double off = measured[i] - expected[i];
      distance += off * off / (sd[i] * sd[i] + variance);
    }
    double trust = (FREEDOM + COORDINATES) / (FREEDOM + distance);
    double[] weighed = new double[measured.length];
    double left = 0;
    for (int i = 0; i < measured.length; i++) {
      double prior = trust / Math.max(sd[i] * sd[i], 1e-6);
      weighed[i] = (prior * expected[i] + measured[i] / variance) / (prior + 1 / variance);
      left += 1 / (prior + 1 / variance) / measured.length;
    }
    double lightness = Math.max(0, Math.min(100, weighed[0]));
    return new Base.OfSwatch(
        new Swatch.OfLab(Lab.ofD65(lightness, weighed[1], weighed[2])), Math.sqrt(left));
  }
}
