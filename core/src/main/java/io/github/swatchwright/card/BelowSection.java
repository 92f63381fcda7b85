package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.coat.BaseColour;
import io.github.swatchwright.coat.BasePlan;
import io.github.swatchwright.coat.BaseRecipe;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;

/** What to paint below coats, so that they end in a wanted colour. */
final class BelowSection {
  private BelowSection() {}

  static Section of(BasePlan plan, PaintColour colours) {
    BaseColour colour = plan.colour();
    List<CardPart> inside = new ArrayList<>();
    colour
        .obstacle()
        .ifPresent(obstacle -> inside.add(new Note("No base does it", obstacle.reason() + ".")));
    inside.add(
        Colours.known(
            new Named("Wanted in the end", colour.end()),
            new Named("Base for it", colours.of(new Swatch.OfLab(colour.base()))),
            new Named("Ends at", colour.reached())));
    plan.recipes().stream().findFirst().ifPresent(best -> add(inside, "Base", best, colours));
    plan.darkest().ifPresent(part -> add(inside, "Darkest part", part, colours));
    plan.lightest().ifPresent(part -> add(inside, "Lightest part", part, colours));
    return new Section("", "What to paint below", inside);
  }

  private static void add(List<CardPart> inside, String what, BasePlan part, PaintColour colours) {
    part.recipes().stream().findFirst().ifPresent(best -> add(inside, what, best, colours));
  }

  private static void add(
      List<CardPart> inside, String what, BaseRecipe recipe, PaintColour colours) {
    inside.add(new Sentence(what + ":"));
    inside.add(RecipeDrops.of(recipe.base().recipe(), colours));
    inside.add(
        Facts.none()
            .and("Expect in the end", Sayings.expected(recipe.expectedDeltaE00()))
            .and("How sure", Sayings.interval(recipe.end().intervalDeltaE00())));
  }
}
