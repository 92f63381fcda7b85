package io.github.swatchwright.sheet;

import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Works out from a page's strokes the colour of each at full hiding, and how well it hides. All are
 * estimated together, since one surface has to suit them all.
 */
final class StrokeOptics {
  /**
   * With a wider 80 % interval than this, ΔE00, a colour at full hiding is more a guess than a
   * reading.
   */
  private static final double GUESSED = 6;

  private final List<FieldStroke> strokes;
  private final ShelfOptics optics;
  private final MixPredictor predictor;
  private final HidingPower hiding;

  private StrokeOptics(List<FieldStroke> strokes, ShelfOptics optics) {
    this.strokes = strokes;
    this.optics = optics;
    predictor = MixPredictor.of(optics, TristimulusWeights.D65);
    hiding = new HidingPower(predictor.viewing());
  }

  /** Estimates strokes of any number of fields, at least one. */
  static StrokeOptics of(List<FieldStroke> strokes) {
    List<Paint> paints = new ArrayList<>();
    for (FieldStroke stroke : strokes) {
      paints.add(
          Paint.of(name(paints.size()), Medium.ACRYLIC)
              .withDrawdown(stroke.drawdown())
              .withSwatchError(Math.max(FieldReading.LEAST_ERROR, stroke.error())));
    }
    return new StrokeOptics(strokes, ShelfOptics.estimate(Shelf.of("page", paints)));
  }

  private static String name(int index) {
    return "stroke " + index;
  }

  /** The reading of one of the strokes. */
  FieldReading reading(SheetField field, int index) {
    FieldStroke stroke = strokes.get(index);
    PaintOptics paint = optics.of(name(index));
    ColourSpread spread = predictor.predict(Mix.of(paint.paint())).spread();
    double[] sd = spread.standardDeviations();
    double off = spread.radius(Prediction.INTERVAL_PROBABILITY);
    List<String> doubts = new ArrayList<>(stroke.doubts());
    if (off > GUESSED) {
      doubts.add(
          String.format(
              Locale.ROOT,
              "hardly hides: its colour at full hiding may be off by ΔE00 %.0f; another coat tells"
                  + " more",
              off));
    }
    return FieldReading.of(
        field,
        stroke,
        new FieldReading.Opaque(
            spread.centre(),
            Math.sqrt((sd[0] * sd[0] + sd[1] * sd[1] + sd[2] * sd[2]) / 3),
            off,
            hiding.contrastRatio(paint.constants(), Film.COAT * paint.strokeCoats().orElseThrow())),
        doubts);
  }
}
