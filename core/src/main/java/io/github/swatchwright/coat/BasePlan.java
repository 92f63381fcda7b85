package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Swatch;
import java.util.List;
import java.util.Optional;

/**
 * What to paint below some coats, so that they end in a wanted colour: the base, and a
 * pre-highlight for the parts that are to end darker and lighter.
 *
 * @param colour the base's colour, or why there is none
 * @param recipes paint for it, the nearest first; empty when the coats hide it
 * @param darkest the same for the darkest part of the pre-highlight; empty when none is wanted
 * @param lightest the same for the lightest part
 */
public record BasePlan(
    BaseColour colour,
    List<BaseRecipe> recipes,
    Optional<BasePlan> darkest,
    Optional<BasePlan> lightest) {

  /** How far darkest and lightest part of the end are from it by default, in L*. */
  public static final double USUAL_SPREAD = 5;

  /** The furthest that can be set, in L*. */
  public static final double LARGEST_SPREAD = 50;

  /** Copies the list. */
  public BasePlan {
    recipes = List.copyOf(recipes);
  }

  /**
   * Plans a base.
   *
   * @param finder what looks for it
   * @param end the colour that is wanted in the end
   * @param coats over the base, lowest first; at least one
   * @param choice the paints that the base may be mixed of
   * @param spread how much darker and lighter, in L*, the darkest and lightest part are to end: 0
   *     for no pre-highlight, to {@value #LARGEST_SPREAD}
   * @throws IllegalArgumentException when there are no coats, or no paint is left to choose from
   */
  public static BasePlan of(
      BaseFinder finder, Swatch end, List<Coat> coats, PaintChoice choice, double spread) {
    Require.within("spread", spread, 0, LARGEST_SPREAD);
    BasePlan middle = of(finder, end, coats, choice);
    if (spread == 0) {
      return middle;
    }
    PaintChoice alike =
        middle.recipes.isEmpty() ? choice : choice.withMedium(medium(middle.recipes.get(0).base()));
    return new BasePlan(
        middle.colour,
        middle.recipes,
        Optional.of(of(finder, moved(end.lab(), -spread), coats, alike)),
        Optional.of(of(finder, moved(end.lab(), spread), coats, alike)));
  }

  private static BasePlan of(BaseFinder finder, Swatch end, List<Coat> coats, PaintChoice choice) {
    BaseColour colour = finder.colour(end, coats);
    return new BasePlan(
        colour, finder.recipes(colour, coats, choice), Optional.empty(), Optional.empty());
  }

  private static Medium medium(RankedRecipe recipe) {
    return recipe.recipe().toMix().parts().get(0).paint().medium();
  }

  private static Swatch moved(Lab end, double by) {
    double l = Math.max(0, Math.min(100, end.l() + by));
    return new Swatch.OfLab(Lab.ofD65(l, end.a(), end.b()));
  }

  /** The pre-highlight's two ends; empty when none is wanted. */
  public Optional<PreHighlight> preHighlight() {
    return darkest.flatMap(
        dark ->
            lightest.map(
                light ->
                    new PreHighlight(
                        new Swatch.OfLab(dark.colour.base()),
                        new Swatch.OfLab(light.colour.base()))));
  }

  /** The base to paint: the first recipe, or the colour alone when there is none. */
  public Base base() {
    return recipes.isEmpty()
        ? new Base.OfSwatch(new Swatch.OfLab(colour.base()))
        : recipes.get(0).toBase();
  }
}
