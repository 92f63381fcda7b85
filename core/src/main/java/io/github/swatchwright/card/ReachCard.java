package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Line;
import io.github.swatchwright.card.CardPart.Lines;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.match.Addition;
import io.github.swatchwright.match.Reach;
import io.github.swatchwright.match.Reinforcement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Which paint to buy for colours that are wanted, to take along to the shop. */
final class ReachCard {
  private final Reinforcement result;
  private final PaintColour colours;

  private ReachCard(Reinforcement result) {
    this.result = result;
    this.colours = new PaintColour(result.light());
  }

  /**
   * The card.
   *
   * @param result what each paint would do
   */
  static Card of(Reinforcement result) {
    List<CardPart> parts = new ReachCard(result).parts();
    parts.add(Sayings.lamp(result.light()));
    String title = result.additions().isEmpty() ? "None helps" : "The paint that helps most";
    return new Card("What to buy", title, parts);
  }

  private List<CardPart> parts() {
    List<CardPart> parts = new ArrayList<>();
    List<Line> wanted = new ArrayList<>();
    for (int i = 0; i < result.targets().size(); i++) {
      Reach reach = result.withoutIt().get(i);
      wanted.add(
          new Line(
              Integer.toString(i + 1),
              List.of(result.targets().get(i)),
              new ScreenColour(result.targets().get(i)).hex(),
              String.format(
                  Locale.ROOT,
                  "with the shelf as it is: nearest mix ΔE00 %.1f away; %s",
                  reach.nearestDeltaE00(),
                  reach.withinReach()
                      ? "within reach"
                      : "missing: " + String.join(", ", reach.words()))));
    }
    parts.add(new Section("", "Wanted", List.of(new Lines(wanted))));
    int number = 1;
    for (Addition addition : result.additions()) {
      parts.add(section(number++, addition));
    }
    if (result.additions().isEmpty()) {
      parts.add(new Sentence("None of the paints on offer can be mixed with this shelf."));
    }
    return parts;
  }

  private Section section(int number, Addition addition) {
    List<Line> mixes = new ArrayList<>();
    for (Addition.Nearest nearest : addition.nearest()) {
      mixes.add(
          new Line(
              Integer.toString(mixes.size() + 1),
              List.of(result.targets().get(mixes.size())),
              Label.sentence(nearest.recipe().toMix().toText()),
              String.format(Locale.ROOT, "ΔE00 %.1f", nearest.deltaE00())));
    }
    Line bottle =
        new Line(
            "",
            colours.of(addition.paint()).map(List::of).orElse(List.of()),
            Label.of(addition.paint().name()),
            String.format(
                Locale.ROOT,
                "%s, %s; then %d of %d within reach, mean ΔE00 %.1f",
                addition.paint().medium().word(),
                addition.paint().finish().word(),
                addition.withinReach(),
                result.targets().size(),
                addition.meanDeltaE00()));
    return new Section(
        Integer.toString(number),
        number == 1 ? "Buy" : "Or",
        List.of(new Lines(List.of(bottle)), new Sentence("Mixes with it:"), new Lines(mixes)));
  }
}
