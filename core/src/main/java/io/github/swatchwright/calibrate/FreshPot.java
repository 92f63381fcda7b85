package io.github.swatchwright.calibrate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;

/**
 * A new pot of at least the same amount, by the best recipe there is.
 *
 * @param recipe whole drops for all of it
 * @param predicted the colour to be expected
 * @param deltaE00 how far that is from the target
 * @param expectedDeltaE00 how far from the target to expect the pot, ΔE00, with all errors and the
 *     scatter of drops
 */
public record FreshPot(Recipe recipe, Lab predicted, double deltaE00, double expectedDeltaE00) {

  /** The best recipe, repeated until it fills the wanted volume. */
  static FreshPot of(
      ShelfOptics optics,
      TristimulusWeights light,
      Swatch target,
      PaintChoice choice,
      double millilitres) {
    RankedRecipe best =
        Matcher.of(optics, light)
            .match(MatchRequest.of(target).withChoice(choice).withAlternatives(1))
            .recipes()
            .get(0);
    double once = best.recipe().toMix().parts().stream().mapToDouble(Mix.Part::millilitres).sum();
    // A sum of drops may miss the wanted amount in its last digit.
    int times = (int) Math.ceil(millilitres / once * (1 - 1e-9));
    List<Recipe.Drops> drops =
        best.recipe().drops().stream()
            .map(some -> new Recipe.Drops(some.paint(), times * some.count()))
            .toList();
    return new FreshPot(
        new Recipe(drops), best.prediction().lab(), best.deltaE00(), best.expectedDeltaE00());
  }
}
