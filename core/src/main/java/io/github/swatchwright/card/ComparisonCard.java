package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.ColourDifference;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Two colours and how they differ. */
final class ComparisonCard {
  /** What one decimal shows as zero. */
  private static final double NO_STEP = 0.05;

  private ComparisonCard() {}

  /**
   * The card.
   *
   * @param a the colour to compare with
   * @param b the colour that is compared
   * @param difference B's difference from A
   * @param light the light that it was computed for
   */
  static Card of(Lab a, Lab b, ColourDifference difference, Illuminant light) {
    Verdict verdict = difference.verdict();
    Facts facts =
        Facts.none()
            .and("Difference", Sayings.difference(difference.deltaE()))
            .and("Lightness", part("ΔL′", difference.deltaL(), "lighter", "darker"))
            .and("Chroma", part("ΔC′", difference.deltaC(), "more chromatic", "greyer"))
            .and(
                "Hue",
                part(
                    "ΔH′",
                    difference.deltaH(),
                    "further on from red over yellow and green to blue",
                    "further back from blue over green and yellow to red"));
    return new Card(
        "Comparison",
        verdict.word().substring(0, 1).toUpperCase(Locale.ROOT) + verdict.word().substring(1),
        List.of(
            new Colours(List.of(new Named("A", a), new Named("B", b)), Optional.empty(), false),
            facts,
            Sayings.lamp(light)));
  }

  private static String part(String symbol, double value, String positive, String negative) {
    if (Math.abs(value) < NO_STEP) {
      return symbol + " 0: the same";
    }
    return String.format(
        Locale.ROOT,
        "%s %s%.1f: B is %s",
        symbol,
        value > 0 ? "+" : "−",
        Math.abs(value),
        value > 0 ? positive : negative);
  }
}
