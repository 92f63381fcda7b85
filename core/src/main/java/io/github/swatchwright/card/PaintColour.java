package io.github.swatchwright.card;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Optional;

/** Colours of swatches and paints under the light of a card. */
final class PaintColour {
  private final TristimulusWeights light;

  PaintColour(Illuminant light) {
    this.light = TristimulusWeights.of(light, Observer.CIE_1931);
  }

  /** A swatch's colour. */
  Lab of(Swatch swatch) {
    return swatch.labUnder(light);
  }

  /**
   * What a paint looks like: its masstone, or a stroke over white; empty where neither is known.
   */
  Optional<Lab> of(Paint paint) {
    return paint.look().map(this::of);
  }
}
