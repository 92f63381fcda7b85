package io.github.swatchwright.coat;

import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;

/**
 * The two ends of a black-and-white pre-highlight, which translucent coats let shine through.
 *
 * @param darkest its darkest part
 * @param lightest its lightest part
 */
public record PreHighlight(Swatch darkest, Swatch lightest) {

  /** The greys of ISO 6504-3's card: Y = 5 % and Y = 80 %. */
  static PreHighlight usual() {
    return new PreHighlight(grey(HidingPower.BLACK), grey(HidingPower.WHITE));
  }

  private static Swatch grey(double reflectance) {
    return new Swatch.OfLab(TristimulusWeights.D65.xyz(Reflectance.constant(reflectance)).toLab());
  }
}
