package io.github.swatchwright.cli;

import io.github.swatchwright.colour.ColourNotation;
import io.github.swatchwright.paint.Shelf;

/** What a colour on the command line may be. */
enum ArgumentKind {
  /** The name of a paint on the shelf, which comes before all else. */
  PAINT,
  /** {@code photo.jpg@x,y,w,h}: a region of a photo. */
  PHOTO,
  /** A colour in numbers, or a colour name of CSS. */
  NOTATION,
  /** Anything else: where mixes are allowed too, it may be a mix. */
  WORDS;

  /** What a text is; a colour in numbers may still be wrong, such as {@code #12}. */
  static ArgumentKind of(String text, Shelf shelf) {
    String trimmed = text.trim();
    if (shelf.paints().stream().anyMatch(paint -> paint.name().equalsIgnoreCase(trimmed))) {
      return PAINT;
    }
    if (isPhoto(trimmed)) {
      return PHOTO;
    }
    return ColourNotation.of(trimmed).isPresent() ? NOTATION : WORDS;
  }

  /** Whether a text names a region of a photo. */
  static boolean isPhoto(String text) {
    int at = text.lastIndexOf('@');
    return at > 0 && text.substring(at).matches("@[^,]*,[^,]*,[^,]*,[^,]*");
  }

  /** Whether it names a paint, or may be meant to. */
  boolean isName() {
    return this == PAINT || this == WORDS;
  }
}
