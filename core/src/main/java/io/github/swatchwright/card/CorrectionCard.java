package io.github.swatchwright.card;

import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.FreshPot;
import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to add to a pot that came out wrong, one paint after the other. */
final class CorrectionCard {
  private CorrectionCard() {}

  /**
   * The card.
   *
   * @param pot what is in the pot
   * @param measured its colour
   * @param target the wanted colour
   * @param correction what to add
   */
  static Card of(Mix pot, Swatch measured, Swatch target, Correction correction) {
    PaintColour colours = new PaintColour(correction.light());
    Named wanted = new Named("Target", colours.of(target));
    Named now = new Named("Pot now", colours.of(measured));
    List<CardPart> blocks = new ArrayList<>();
    blocks.add(
        new Section(
            "",
            "In the pot",
            List.of(
                RecipeDrops.of(pot, colours),
                Colours.known(wanted, now),
                Facts.none().and("Off by", Sayings.difference(correction.now())))));
    int step = 1;
    for (Correction.Addition addition : correction.additions()) {
      blocks.add(step(step++, addition, wanted, colours));
    }
    if (correction.additions().isEmpty()) {
      blocks.add(
          correction.fresh().isEmpty()
              ? new Note("Add nothing", "The pot is near enough.")
              : new Note("Add nothing", "Nothing that can be added brings it nearer."));
    }
    correction
        .fresh()
        .ifPresent(fresh -> blocks.add(fresh(correction.startAfresh(), fresh, wanted, colours)));
    blocks.add(
        new Note("Test", "Stir, paint a patch, let it dry and look again before adding more."));
    blocks.add(Sayings.lamp(correction.light()));
    return new Card("Correction", "To " + new ScreenColour(wanted.colour()).hex(), blocks);
  }

  private static Section step(
      int number, Correction.Addition addition, Named wanted, PaintColour colours) {
    Named then = new Named("Then", addition.predicted());
    return new Section(
        Integer.toString(number),
        "Add",
        List.of(
            RecipeDrops.of(List.of(addition.drops()), colours),
            new Colours(List.of(wanted, then), Optional.empty(), true),
            Facts.none().and("Then off by", Sayings.difference(addition.deltaE00()))));
  }

  private static Section fresh(boolean better, FreshPot fresh, Named wanted, PaintColour colours) {
    Named then = new Named("New pot", fresh.predicted());
    return new Section(
        "!",
        better ? "Start afresh instead" : "Not better: a new pot",
        List.of(
            RecipeDrops.of(fresh.recipe(), colours),
            new Colours(List.of(wanted, then), Optional.empty(), true),
            Facts.none()
                .and("Amount", Sayings.amount(fresh.recipe().toMix()))
                .and("Off by", Sayings.difference(fresh.deltaE00()))
                .and("Expect", Sayings.expected(fresh.expectedDeltaE00()))));
  }
}
