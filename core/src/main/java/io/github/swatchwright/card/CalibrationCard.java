package io.github.swatchwright.card;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.NextCard;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Line;
import io.github.swatchwright.card.CardPart.Lines;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What test cards have taught a shelf: its paints before and after, and which card comes next. */
final class CalibrationCard {
  private CalibrationCard() {}

  /**
   * The card.
   *
   * @param before the shelf as it was
   * @param calibration what was learned
   * @param next cards to paint next, if that was asked
   * @param light the light that its colours are for
   */
  static Card of(
      Shelf before, Calibration calibration, Optional<NextCards> next, Illuminant light) {
    List<CardPart> parts = new ArrayList<>();
    parts.add(
        Facts.none().and("Before", off(calibration.before())).and("Now", off(calibration.after())));
    parts.add(paints(before, calibration, light));
    if (!calibration.contradictions().isEmpty()) {
      parts.add(
          differing(
              "Left out: other cards and statements contradict them",
              calibration.contradictions()));
    }
    if (!calibration.unexpected().isEmpty()) {
      parts.add(
          differing("Used, but unexpected: are their labels right?", calibration.unexpected()));
    }
    next.ifPresent(cards -> parts.add(next(cards)));
    parts.add(Sayings.lamp(light));
    return new Card("Calibration", "What the test cards taught", parts);
  }

  /** Cards to paint first, when nothing was learned yet. */
  static Card of(NextCards next, Illuminant light) {
    return new Card("Test cards", "Worth painting first", List.of(next(next), Sayings.lamp(light)));
  }

  private static String off(double deltaE00) {
    return String.format(
        Locale.ROOT, "cards lie ΔE00 %.1f from what was expected of them, on average", deltaE00);
  }

  private static Section paints(Shelf before, Calibration calibration, Illuminant light) {
    ShelfOptics then = ShelfOptics.estimate(before);
    ShelfOptics now = ShelfOptics.estimate(calibration.shelf());
    PaintColour colours = new PaintColour(light);
    List<Line> lines = new ArrayList<>();
    for (Calibration.CalibratedPaint paint : calibration.paints()) {
      List<Lab> both = new ArrayList<>();
      for (ShelfOptics optics : List.of(then, now)) {
        Paint known = optics.shelf().paint(paint.name());
        if (known.whyNotComputable().isEmpty()) {
          both.add(colours.of(optics.colour(paint.name())));
        }
      }
      lines.add(
          new Line(
              "",
              both,
              Label.of(paint.name()),
              String.format(
                  Locale.ROOT,
                  "ΔE00 %.1f before, %.1f now (%d %s)",
                  paint.before(),
                  paint.after(),
                  paint.cards(),
                  paint.cards() == 1 ? "card" : "cards")));
    }
    return new Section(
        "",
        "Paints before, and now beside it",
        List.of(
            new Lines(lines),
            new Sentence(
                "A paint alone may look as before and still mix otherwise: cards teach its strength"
                    + " above all.")));
  }

  private static Section differing(String heading, List<Calibration.DifferingCard> cards) {
    List<Line> lines =
        cards.stream()
            .map(
                card ->
                    new Line(
                        "",
                        List.of(card.measured(), card.expected()),
                        "Card " + card.card(),
                        String.format(
                            Locale.ROOT,
                            "measured, and what was expected: ΔE00 %.1f apart",
                            card.deltaE00())))
            .toList();
    return new Section("", heading, List.of(new Lines(lines)));
  }

  private static Section next(NextCards next) {
    List<Line> lines = new ArrayList<>();
    for (NextCard card : next.cards()) {
      lines.add(
          new Line(
              Integer.toString(lines.size() + 1),
              List.of(),
              Label.sentence(card.recipe().toMix().toText()),
              String.format(Locale.ROOT, "then expect ΔE00 %.1f", card.expectedDeltaE00())));
    }
    String now =
        String.format(Locale.ROOT, "Without them, expect ΔE00 %.1f.", next.expectedDeltaE00());
    return new Section(
        "",
        "Paint these next",
        List.of(
            lines.isEmpty() ? new Sentence("No card would make it much better.") : new Lines(lines),
            new Sentence(now)));
  }
}
