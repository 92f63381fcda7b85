package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Line;
import io.github.swatchwright.card.CardPart.Lines;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.coat.HidingCoats;
import io.github.swatchwright.estimate.ShelfProblem;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.match.ShelfReach;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The paints of a shelf with their colours, to keep beside the bottles, and what it lacks. */
final class ShelfCard {
  /** More gaps and problems than these aren't on the card, which says so. */
  private static final int MOST = 8;

  private ShelfCard() {}

  /**
   * The card.
   *
   * @param report the shelf
   * @param reach what it can be mixed to; empty when none of its paints can be computed with
   * @param light the light that it was looked at under
   */
  static Card of(ShelfReport report, Optional<ShelfReach> reach, Illuminant light) {
    List<CardPart> parts = new ArrayList<>();
    parts.add(
        new Section(
            "",
            "Paints",
            List.of(new Lines(report.paints().stream().map(ShelfCard::line).toList()))));
    reach.ifPresent(known -> parts.add(reach(known)));
    if (!report.problems().isEmpty()) {
      parts.add(
          new Section(
              "",
              "To look at",
              sentences(report.problems().stream().map(ShelfProblem::text).toList())));
    }
    parts.add(Sayings.lamp(light));
    int paints = report.paints().size();
    String title =
        Label.of(report.name()) + (paints == 1 ? ", one paint" : ", " + paints + " paints");
    return new Card("Shelf", title, parts);
  }

  private static Line line(ShelfReport.Entry entry) {
    Paint paint = entry.paint();
    List<String> details = new ArrayList<>();
    entry.masstone().ifPresent(lab -> details.add(new ScreenColour(lab).hex()));
    details.add(paint.medium().word());
    details.add(paint.finish().word());
    if (entry.coatsToHide().isPresent()) {
      details.add(HidingCoats.inWords(entry.coatsToHide().getAsDouble()));
    }
    paint.bottle().leftMillilitres().ifPresent(left -> details.add(Volume.words(left) + " left"));
    return new Line(
        "",
        entry.masstone().map(List::of).orElse(List.of()),
        Label.of(paint.name()),
        String.join(", ", details));
  }

  private static Section reach(ShelfReach reach) {
    Facts facts =
        Facts.none()
            .and(
                "Within reach",
                String.format(
                    Locale.ROOT,
                    "%.0f %% of the colours that a display shows, to within ΔE00 %.0f, of up to"
                        + " three paints (estimated)",
                    100 * reach.share(),
                    ShelfReach.LIMIT));
    List<Line> gaps = new ArrayList<>();
    for (ShelfReach.Gap gap : reach.gaps().subList(0, Math.min(MOST, reach.gaps().size()))) {
      gaps.add(
          new Line(
              "",
              List.of(gap.furthest().lab()),
              "Gap: " + gap.name(),
              String.format(
                  Locale.ROOT,
                  "%.0f %% of it is out of reach, this by ΔE00 %.0f",
                  100 * gap.share(),
                  gap.furthest().nearestDeltaE00())));
    }
    return new Section("", "What it can be mixed to", List.of(facts, new Lines(gaps)));
  }

  private static List<CardPart> sentences(List<String> problems) {
    List<CardPart> sentences = new ArrayList<>();
    problems.stream()
        .limit(MOST)
        .forEach(problem -> sentences.add(new Sentence(Label.sentence(problem + "."))));
    if (problems.size() > MOST) {
      sentences.add(new Sentence("And " + (problems.size() - MOST) + " more."));
    }
    return sentences;
  }
}
