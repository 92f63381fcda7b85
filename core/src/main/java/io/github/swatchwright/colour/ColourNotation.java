package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Printable;
import java.util.Locale;
import java.util.Optional;

/**
 * How a colour is written: the notations of CSS Color Module Level 4 (W3C) that name a colour by
 * numbers people meet, its names, and two habits of colour pickers, {@code 8A4B2A} and {@code
 * 138,75,42}.
 *
 * <p>CSS parts the components by blanks, and its {@code lab()} and {@code lch()} are relative to
 * D50. This library writes {@code lab(L, a, b)} with commas, relative to D65, as most instruments
 * show it. So the commas tell the two apart; a colour that CSS wrote is adapted to D65.
 *
 * <p>Left out: {@code hsl()} and {@code hwb()}, which say the same as {@code rgb()} in other
 * coordinates, and the wide spaces of {@code color()}, which no paint needs. A colour with an alpha
 * below 1 is refused, since it has no colour of its own.
 */
public enum ColourNotation {
  /** {@code #RRGGBB}, {@code #RGB}, {@code #RRGGBBFF}, or six digits without the {@code #}. */
  HEX {
    @Override
    Srgb srgb(String text) {
      return HexColour.parse(text);
    }
  },

  /**
   * {@code rgb(138 75 42)}, {@code rgb(54%, 29%, 16%)}, or {@code 138,75,42} alone; {@code hsl()}
   * and {@code hwb()} are known, and refused.
   */
  RGB {
    @Override
    Srgb srgb(String text) {
      boolean bare = text.indexOf('(') < 0;
      if (!bare && !text.trim().toLowerCase(Locale.ROOT).startsWith("rgb")) {
        throw new IllegalArgumentException(
            Printable.quoted(text)
                + " is not read; give the same colour as rgb(r, g, b) or #RRGGBB");
      }
      CssFunction rgb =
          CssFunction.parse(bare ? "rgb(" + text + ")" : text, "rgb(138, 75, 42), each 0 to 255");
      return new Srgb(
          rgb.number(0, 255, "red", 0, 255) / 255,
          rgb.number(1, 255, "green", 0, 255) / 255,
          rgb.number(2, 255, "blue", 0, 255) / 255);
    }
  },

  /** A colour name of CSS, such as {@code sienna}. */
  NAME {
    @Override
    Srgb srgb(String text) {
      return NamedColours.of(text).orElseThrow(() -> new IllegalArgumentException(none(text)));
    }
  },

  /** {@code lab(L, a, b)} relative to D65, or CSS's {@code lab(L a b)} relative to D50. */
  LAB {
    @Override
    Lab lab(String text) {
      CssFunction lab = CssFunction.parse(text, "lab(L, a, b), such as lab(41.5, 20, 30)");
      double most = Lab.LARGEST_PARSED_AB;
      return asD65(
          lab,
          new Lab(
              lab.number(0, 100, "L*", 0, 100),
              lab.number(1, 125, "a*", -most, most),
              lab.number(2, 125, "b*", -most, most),
              white(lab)));
    }
  },

  /** {@code lch(L, C, h)} relative to D65, or CSS's {@code lch(L C h)} relative to D50. */
  LCH {
    @Override
    Lab lab(String text) {
      CssFunction lch = CssFunction.parse(text, "lch(L, C, h), such as lch(41.5, 36, 56)");
      double c = lch.number(1, 150, "C*", 0, Lab.LARGEST_PARSED_AB);
      double h = Math.toRadians(lch.degrees(2));
      return asD65(
          lch,
          new Lab(lch.number(0, 100, "L*", 0, 100), c * Math.cos(h), c * Math.sin(h), white(lch)));
    }
  },

  /** {@code oklab(L a b)}, relative to D65. */
  OKLAB {
    @Override
    Lab lab(String text) {
      CssFunction oklab = CssFunction.parse(text, "oklab(L a b), such as oklab(0.45 0.07 0.06)");
      double l = oklab.number(0, 1, "L", 0, 1);
      double a = oklab.number(1, 0.4, "a", -LARGEST_OK, LARGEST_OK);
      return new Oklab(l, a, oklab.number(2, 0.4, "b", -LARGEST_OK, LARGEST_OK)).toXyz().toLab();
    }
  },

  /** {@code oklch(L C h)}, relative to D65. */
  OKLCH {
    @Override
    Lab lab(String text) {
      CssFunction oklch = CssFunction.parse(text, "oklch(L C h), such as oklch(0.45 0.1 45)");
      double l = oklch.number(0, 1, "L", 0, 1);
      double c = oklch.number(1, 0.4, "C", 0, LARGEST_OK);
      double h = Math.toRadians(oklch.degrees(2));
      return new Oklab(l, c * Math.cos(h), c * Math.sin(h)).toXyz().toLab();
    }
  };

  /** No real colour's Oklab chroma is larger (CSS Color 4, section 9.3). */
  private static final double LARGEST_OK = 0.5;

  /** The notation that a text uses; the text may still be wrong inside, such as {@code #12}. */
  public static Optional<ColourNotation> of(String text) {
    String trimmed = text.trim().toLowerCase(Locale.ROOT);
    if (trimmed.startsWith("#") || trimmed.matches("[0-9a-f]{6}")) {
      return Optional.of(HEX);
    }
    if (trimmed.matches("[0-9]{1,3}(\\s*,\\s*|\\s+)[0-9]{1,3}(\\s*,\\s*|\\s+)[0-9]{1,3}")) {
      return Optional.of(RGB);
    }
    int bracket = trimmed.indexOf('(');
    if (bracket < 0) {
      return NamedColours.of(trimmed).map(colour -> NAME);
    }
    return switch (trimmed.substring(0, bracket)) {
      case "rgb", "rgba", "hsl", "hsla", "hwb" -> Optional.of(RGB);
      case "lab" -> Optional.of(LAB);
      case "lch" -> Optional.of(LCH);
      case "oklab" -> Optional.of(OKLAB);
      case "oklch" -> Optional.of(OKLCH);
      default -> Optional.empty();
    };
  }

  /** Whether it writes a colour as a display's red, green and blue; else as CIELAB or Oklab. */
  public boolean isRgb() {
    return this == HEX || this == RGB || this == NAME;
  }

  /** A colour in any notation. */
  static ColourNotation required(String text) {
    return of(text).orElseThrow(() -> new IllegalArgumentException(none(text)));
  }

  /** What is said of a text that is in no notation. */
  private static String none(String text) {
    return Printable.quoted(text)
        + " is not a colour of the form #RRGGBB, rgb(138, 75, 42) or lab(L, a, b), nor a colour"
        + " name of CSS such as sienna";
  }

  /** Encoded sRGB of a text in this notation; channels may lie outside 0 to 1. */
  Srgb srgb(String text) {
    return lab(text).toSrgb();
  }

  /** CIELAB relative to D65 of a text in this notation. */
  Lab lab(String text) {
    return srgb(text).toLab();
  }

  private static WhitePoint white(CssFunction function) {
    return function.commas() ? WhitePoint.D65 : WhitePoint.D50;
  }

  private static Lab asD65(CssFunction function, Lab lab) {
    return function.commas() ? lab : lab.adaptTo(WhitePoint.D65);
  }
}
