package io.github.swatchwright.cli;

import java.util.Locale;

/** The ways to write a colour on the command line; the text itself shows which one it is. */
enum ColourNotation {
  /** {@code #RRGGBB}. */
  SRGB,
  /** {@code lab(L, a, b)}. */
  LAB,
  /** {@code photo.jpg@x,y,w,h}: a region of a photo. */
  PHOTO,
  /** The name of a paint, or anything else: where mixes are allowed too, it may be a mix. */
  NAME;

  /** The notation that a text uses; the text itself may still be wrong, such as {@code #12}. */
  static ColourNotation of(String text) {
    String trimmed = text.trim();
    if (trimmed.startsWith("#")) {
      return SRGB;
    }
    if (trimmed.toLowerCase(Locale.ROOT).startsWith("lab(")) {
      return LAB;
    }
    int at = trimmed.lastIndexOf('@');
    boolean region = at > 0 && trimmed.substring(at).matches("@[^,]*,[^,]*,[^,]*,[^,]*");
    return region ? PHOTO : NAME;
  }
}
