package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.mix.Application;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;

/**
 * What every step is worked out with.
 *
 * @param optics the shelf
 * @param light the light it is looked at under
 * @param predictor of coats
 * @param matcher of colours
 * @param application how paint gets onto the model
 */
record Tools(
    ShelfOptics optics,
    TristimulusWeights light,
    CoatPredictor predictor,
    Matcher matcher,
    Application application) {
  private static final double LEAST_ERROR = 0.05;
  private static final double MOST_ERROR = 50;

  ClearCoats clearCoats() {
    return new ClearCoats(optics.shelf());
  }

  Prediction predict(Layers layers) {
    return predictor.last(layers.known(), layers.since());
  }

  /** A predicted colour as what lies below the next coats. */
  static Base asBase(Prediction prediction) {
    return new Base.OfSwatch(asSwatch(prediction.lab()), error(prediction.spread()));
  }

  static Swatch asSwatch(Lab lab) {
    return new Swatch.OfLab(lab.adaptTo(WhitePoint.D65));
  }

  /** One standard deviation for L*, a* and b* alike. */
  private static double error(ColourSpread spread) {
    double mean =
        Arrays.stream(spread.standardDeviations()).map(sd -> sd * sd).average().orElseThrow();
    return Math.max(LEAST_ERROR, Math.min(MOST_ERROR, Math.sqrt(mean)));
  }
}
