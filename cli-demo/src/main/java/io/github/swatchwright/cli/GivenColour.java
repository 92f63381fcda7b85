package io.github.swatchwright.cli;

import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.photo.PhotoColour;
import java.util.Locale;
import java.util.Optional;

/**
 * A colour that was given, and how well it is known.
 *
 * @param swatch the colour
 * @param error its error, sd in units of L*, a* and b*
 * @param note what has to be said about it, one line
 */
record GivenColour(Swatch swatch, double error, Optional<String> note) {

  /** Whether its error is its own, and not the usual one of its kind. */
  boolean hasOwnError() {
    return error != swatch.usualError();
  }

  /** A colour that isn't from a photo. */
  static GivenColour of(Swatch swatch) {
    return new GivenColour(swatch, swatch.usualError(), Optional.empty());
  }

  /** This colour, with something to say about it. */
  GivenColour noting(String sentence) {
    return new GivenColour(swatch, error, Optional.of(sentence));
  }

  /**
   * A colour from a photo.
   *
   * @param text as it was given
   * @param colour what was read
   */
  static GivenColour of(String text, PhotoColour colour) {
    String note =
        String.format(
            Locale.ROOT,
            "%s is %s; ΔE00 %.1f holds the true colour in 80 %%, which isn't in the results",
            text,
            colour.lab().toText(),
            colour.intervalDeltaE00());
    if (!colour.lightnessKnown()) {
      note += "; its lightness is unknown, give --grey";
    }
    if (colour.shares().isCrushed()) {
      note += "; it is stronger than the file can hold";
    }
    return new GivenColour(colour.swatch(), colour.error(), Optional.of(note));
  }
}
