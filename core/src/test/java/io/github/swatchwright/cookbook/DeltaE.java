package io.github.swatchwright.cookbook;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.difference.ColourDifference;
import io.github.swatchwright.difference.Verdict;
import java.util.Locale;

/** How far two colours are apart, and in which way; needs no shelf. */
final class DeltaE {
  private DeltaE() {}

  static String compare(String first, String second) {
    Lab a = Lab.parse(first);
    Lab b = Lab.parse(second);
    ColourDifference difference = Ciede2000.STANDARD.compare(a, b);
    return String.format(
        Locale.ROOT,
        "ΔE00 %.2f (%s): lightness %+.2f, chroma %+.2f, hue %+.2f",
        difference.deltaE(),
        Verdict.of(difference.deltaE()).word(),
        difference.deltaL(),
        difference.deltaC(),
        difference.deltaH());
  }
}
