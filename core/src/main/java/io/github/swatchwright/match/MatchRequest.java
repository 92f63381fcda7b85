package io.github.swatchwright.match;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.search.SearchSpace;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A colour to match, and what its recipes may look like. Immutable.
 *
 * @param target the wanted colour
 * @param mostPaints the most ingredients in a recipe, 1 to 4
 * @param mostDrops the most drops in a recipe, 1 to 40
 * @param alternatives how many sets of ingredients to propose recipes of, 1 to 50
 * @param ratios how many recipes of each set to propose, 1 to {@value #LARGEST_RATIOS}; with 1, no
 *     two recipes share all ingredients
 * @param choice which paints of the shelf may be mixed
 * @param pots left-over pots to use as ingredients
 * @param insteadOf the paint that the target is; empty for any other colour
 * @param wishes what else counts
 */
public record MatchRequest(
    Swatch target,
    int mostPaints,
    int mostDrops,
    int alternatives,
    int ratios,
    PaintChoice choice,
    List<Pot> pots,
    Optional<Substitution> insteadOf,
    Wishes wishes) {

  /** The largest number of drops that may be asked for. */
  public static final int LARGEST_DROPS = SearchSpace.LARGEST_DROPS;

  /** The largest number of recipes that may be asked for. */
  public static final int LARGEST_ALTERNATIVES = 50;

  /** The largest number of recipes of one set of ingredients. */
  public static final int LARGEST_RATIOS = 3;

  /** The most pots. */
  public static final int MOST_POTS = 20;

  /** Copies the list; refuses numbers out of range, and a pot named twice. */
  public MatchRequest {
    Objects.requireNonNull(target, "target");
    Require.within("most paints", mostPaints, 1, Recipe.MOST_PAINTS);
    Require.within("most drops", mostDrops, 1, LARGEST_DROPS);
    Require.within("alternatives", alternatives, 1, LARGEST_ALTERNATIVES);
    Require.within("ratios", ratios, 1, LARGEST_RATIOS);
    pots = List.copyOf(pots);
    Require.within("number of pots", pots.size(), 0, MOST_POTS);
    for (int i = 0; i < pots.size(); i++) {
      for (int earlier = 0; earlier < i; earlier++) {
        if (pots.get(i).name().equals(pots.get(earlier).name())) {
          throw new IllegalArgumentException(
              "the " + Printable.quoted(pots.get(i).name()) + " is given twice");
        }
      }
    }
  }

  /** Up to three paints in up to twelve drops, five recipes, from the whole shelf. */
  public static MatchRequest of(Swatch target) {
    return new MatchRequest(
        target, 3, 12, 5, 1, PaintChoice.ALL, List.of(), Optional.empty(), Wishes.NONE);
  }

  /**
   * For a colour that is still moving, under a finger or a slider: one recipe of up to two paints
   * in up to twelve drops. Ask {@link #of(Swatch)} once it is let go: a third paint often halves
   * the difference. {@code core/docs/cookbook.md} has the times of both.
   */
  public static MatchRequest ofMoving(Swatch target) {
    return of(target).withMostPaints(2).withAlternatives(1);
  }

  /**
   * The same for a mix that replaces a paint; the paint's colour is the target, and it isn't used.
   */
  public static MatchRequest of(Substitution substitution) {
    return of(substitution.target()).with(Optional.of(substitution));
  }

  private MatchRequest with(Optional<Substitution> paint) {
    return new MatchRequest(
        target, mostPaints, mostDrops, alternatives, ratios, choice, pots, paint, wishes);
  }

  private MatchRequest with(int paints, int drops, int sets, int ratiosEach) {
    return new MatchRequest(
        target, paints, drops, sets, ratiosEach, choice, pots, insteadOf, wishes);
  }

  /** The same with another limit for the number of paints, 1 to 4. */
  public MatchRequest withMostPaints(int paints) {
    return with(paints, mostDrops, alternatives, ratios);
  }

  /** The same with another limit for the number of drops, 1 to 40. */
  public MatchRequest withMostDrops(int drops) {
    return with(mostPaints, drops, alternatives, ratios);
  }

  /** The same with another number of sets of ingredients, 1 to 50. */
  public MatchRequest withAlternatives(int sets) {
    return with(mostPaints, mostDrops, sets, ratios);
  }

  /** The same with another number of recipes of each set, 1 to 3. */
  public MatchRequest withRatios(int recipes) {
    return with(mostPaints, mostDrops, alternatives, recipes);
  }

  /** The same from other paints. */
  public MatchRequest withChoice(PaintChoice paints) {
    return new MatchRequest(
        target, mostPaints, mostDrops, alternatives, ratios, paints, pots, insteadOf, wishes);
  }

  /** The same from the named paints alone. */
  public MatchRequest withOnly(Set<String> names) {
    return withChoice(choice.withOnly(names));
  }

  /** The same leaving out the named paints. */
  public MatchRequest withWithout(Set<String> names) {
    return withChoice(choice.withWithout(names));
  }

  /** The same within one medium. */
  public MatchRequest withMedium(Medium wanted) {
    return withChoice(choice.withMedium(wanted));
  }

  /** The same with left-over pots for ingredients. */
  public MatchRequest withPots(List<Pot> leftOver) {
    return new MatchRequest(
        target, mostPaints, mostDrops, alternatives, ratios, choice, leftOver, insteadOf, wishes);
  }

  /** The same with other wishes. */
  public MatchRequest withWishes(Wishes others) {
    return new MatchRequest(
        target, mostPaints, mostDrops, alternatives, ratios, choice, pots, insteadOf, others);
  }
}
