package io.github.swatchwright.card;

import io.github.swatchwright.match.AcrossLights;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.match.Reach;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Recipes for a colour: the one to trust most, then others. */
public final class MatchCard {
  /** More recipes than that are not on the card, which says so. */
  static final int MOST_RECIPES = 6;

  private static final int MOST_LEFT_OUT = 12;

  private final MatchResult result;
  private final Illuminant light;
  private final List<Block> blocks = new ArrayList<>();

  private MatchCard(MatchResult result, Illuminant light) {
    this.result = result;
    this.light = light;
  }

  /**
   * The card.
   *
   * @param result what was found
   * @param light the light that it was computed for
   */
  public static Card of(MatchResult result, Illuminant light) {
    return new MatchCard(result, light).card();
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
    Set<Medium> media = new TreeSet<>();
    result.recipes().stream()
        .limit(MOST_RECIPES)
        .forEach(
            ranked -> {
              blocks.add(recipe(ranked));
              ranked.recipe().toMix().parts().forEach(part -> media.add(part.paint().medium()));
            });
    if (result.recipes().isEmpty()) {
      blocks.add(new Colours(List.of(target()), Optional.empty()));
      blocks.add(
          new Sentence(
              "None of the " + result.weighed() + " nearest mixes hides as well as wanted."));
    }
    int more = result.recipes().size() - MOST_RECIPES;
    if (more > 0) {
      blocks.add(new Sentence("Recipes that are not on this card: " + more + "."));
    }
    blocks.add(Note.lamp(light));
    blocks.addAll(Sayings.cautions(media));
    leftOut();
    return new Card("Recipes", "For " + target().colour().hex(), blocks);
  }

  private SwatchBlock.Named target() {
    return new SwatchBlock.Named("Target", new ScreenColour(result.target()));
  }

  private Section recipe(RankedRecipe ranked) {
    Mix mix = ranked.recipe().toMix();
    int number = result.recipes().indexOf(ranked) + 1;
    SwatchBlock.Named predicted =
        new SwatchBlock.Named("This mix", new ScreenColour(ranked.prediction().lab()));
    IntervalRing ring = new IntervalRing(ranked.prediction().spread());
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
        Integer.toString(number),
        number == 1 ? "The one to trust most" : "Or this",
        List.of(
            RecipeDrops.of(ranked.recipe(), new PaintColour(light)),
            new Colours(List.of(target(), predicted), Optional.of(ring)),
            number == 1 ? facts.and("Thin", Sayings.THINNING) : facts));
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
            String.join(" and ", reach.directions())));
  }

  private void leftOut() {
    List<String> reasons = result.leftOut();
    reasons.stream()
        .limit(MOST_LEFT_OUT)
        .forEach(reason -> blocks.add(new Sentence("Not used: " + Label.of(reason))));
    if (reasons.size() > MOST_LEFT_OUT) {
      blocks.add(new Sentence("Not used either: " + (reasons.size() - MOST_LEFT_OUT) + " more."));
    }
  }
}
