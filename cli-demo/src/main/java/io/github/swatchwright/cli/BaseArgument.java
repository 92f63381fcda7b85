package io.github.swatchwright.cli;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;

/** Reads what lies under a coat from the command line: a colour, a paint or a mix. */
final class BaseArgument {
  private BaseArgument() {}

  /**
   * Reads a colour as {@link ColourArgument} does; a paint's name and a mix stand for paint that
   * hides.
   *
   * @throws IllegalArgumentException when it is none of them
   */
  static Base parse(String text, Shelf shelf, PhotoReference reference, Output output) {
    String trimmed = text.trim();
    ArgumentKind kind = ArgumentKind.of(trimmed, shelf);
    if (kind == ArgumentKind.PAINT) {
      return new Base.OfMix(Mix.of(shelf.paint(trimmed)));
    }
    if (kind == ArgumentKind.WORDS && trimmed.contains(":")) {
      return new Base.OfMix(Mix.parse(trimmed, shelf));
    }
    GivenColour given = ColourArgument.parse(trimmed, shelf, reference, output);
    return new Base.OfSwatch(given.swatch(), given.error());
  }
}
