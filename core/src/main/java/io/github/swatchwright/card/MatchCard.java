package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Line;
import io.github.swatchwright.card.CardPart.Lines;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.match.AcrossLights;
import io.github.swatchwright.match.LeftOutPaint;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.match.Reach;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Recipes for a colour: the one to trust most, then others. */
final class MatchCard {
  /** More recipes than that are not on the card, which says so. */
  static final int MOST_RECIPES = 6;

  private static final int MOST_LEFT_OUT = 12;

  private final MatchResult result;
  private final List<CardPart> blocks = new ArrayList<>();

  private MatchCard(MatchResult result) {
    this.result = result;
  }

  /**
   * The card.
   *
   * @param result what was found
   */
  static Card of(MatchResult result) {
    return new MatchCard(result).card();
  }

  private Card card() {
    result
        .request()
        .insteadOf()
        .ifPresent(
            other -> blocks.add(Facts.none().and("Instead of", Label.of(other.paint().name()))));
    if (!result.reach().withinReach()) {
      blocks.add(outOfReach(result.reach()));
    }
    if (result.recipes().isEmpty()) {
      blocks.add(Colours.known(target()));
      blocks.add(
          new Sentence(
              "None of the " + result.weighed() + " nearest mixes hides as well as wanted."));
    } else {
      blocks.add(best(result.recipes().get(0)));
    }
    if (result.recipes().size() > 1) {
      blocks.add(others());
    }
    blocks.add(Sayings.RING);
    blocks.add(Sayings.lamp(result.light()));
    blocks.addAll(Sayings.cautions(media()));
    leftOut();
    String hex = new ScreenColour(result.target()).hex();
    return new Card("Recipe", "For " + hex, blocks);
  }

  private Set<Medium> media() {
    Set<Medium> media = new TreeSet<>();
    for (RankedRecipe ranked : shown()) {
      ranked.recipe().toMix().parts().forEach(part -> media.add(part.paint().medium()));
    }
    return media;
  }

  private List<RankedRecipe> shown() {
    return result.recipes().subList(0, Math.min(MOST_RECIPES, result.recipes().size()));
  }

  private Named target() {
    return new Named("Target", result.target());
  }

  private Section best(RankedRecipe ranked) {
    Mix mix = ranked.recipe().toMix();
    Facts facts =
        Facts.none()
            .and("Amount", Sayings.amount(mix))
            .and("If all goes well", Sayings.difference(ranked.deltaE00()))
            .and("Expect", Sayings.expected(ranked.expectedDeltaE00()))
            .and("How sure", Sayings.interval(ranked.prediction().intervalDeltaE00()));
    if (ranked.acrossLights().isPresent()) {
      facts = facts.and("Other lamps", acrossLights(ranked.acrossLights().get()));
    }
    return new Section(
        "1",
        "The one to trust most",
        List.of(
            RecipeDrops.of(ranked.recipe(), new PaintColour(result.light())),
            Colours.toDo(
                List.of(target(), new Named("This mix", ranked.prediction().lab())),
                ranked.prediction().spread()),
            facts.and("Thin", Sayings.THINNING)));
  }

  /** The other recipes, a line each. */
  private Section others() {
    List<Line> lines = new ArrayList<>();
    for (RankedRecipe ranked : shown().subList(1, shown().size())) {
      lines.add(
          new Line(
              Integer.toString(lines.size() + 2),
              List.of(result.target(), ranked.prediction().lab()),
              Label.sentence(inDrops(ranked.recipe())),
              String.format(
                  Locale.ROOT,
                  "Expect %s; 80 of 100 tries land within %.1f of the colour shown.",
                  Sayings.expected(ranked.expectedDeltaE00()),
                  ranked.prediction().intervalDeltaE00())));
    }
    int more = result.recipes().size() - MOST_RECIPES;
    List<CardPart> parts = new ArrayList<>(List.of(new Lines(lines)));
    if (more > 0) {
      parts.add(new Sentence("Recipes that are not on this card: " + more + "."));
    }
    return new Section("", "Or one of these", parts);
  }

  /** Such as {@code 6 Titanium white, 2 Red oxide}. */
  private static String inDrops(Recipe recipe) {
    List<String> all = new ArrayList<>();
    recipe.pots().forEach(some -> all.add(some.count() + " " + Label.of(some.pot().name())));
    recipe.drops().forEach(some -> all.add(some.count() + " " + Label.of(some.paint().name())));
    return String.join(", ", all);
  }

  private static String acrossLights(AcrossLights across) {
    return String.format(
        Locale.ROOT,
        "at worst ΔE00 %.1f from the target, under %s",
        across.worstDeltaE00(),
        across.light().name());
  }

  private static Note outOfReach(Reach reach) {
    return new Note(
        "Out of reach",
        String.format(
            Locale.ROOT,
            "The nearest mix of these paints is ΔE00 %.1f away. The target is %s.",
            reach.nearestDeltaE00(),
            String.join(" and ", reach.words())));
  }

  private void leftOut() {
    List<String> reasons = result.leftOut().stream().map(LeftOutPaint::text).toList();
    reasons.stream()
        .limit(MOST_LEFT_OUT)
        .forEach(reason -> blocks.add(new Note("Not used", Label.sentence(reason + "."))));
    if (reasons.size() > MOST_LEFT_OUT) {
      blocks.add(new Note("Not used", (reasons.size() - MOST_LEFT_OUT) + " more paints."));
    }
  }
}
