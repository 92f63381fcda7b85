package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Swatch;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Works out what counts of a recipe, against one target.
 *
 * @param predictor of the mixes
 * @param target the wanted colour
 * @param lab the same under the predictor's light
 */
record Weighing(MixPredictor predictor, Swatch target, Lab lab) {

  /** All of it but the score, which depends on the other recipes. */
  Weighed weigh(Recipe recipe) {
    Prediction prediction = predictor.predict(recipe);
    Mix mix = recipe.toMix();
    OpticalConstants constants = predictor.constants(mix);
    double expected = prediction.spread().expectedDeltaE00(lab);
    return new Weighed(
        recipe,
        constants,
        prediction,
        Ciede2000.deltaE(lab, prediction.lab()),
        expected,
        hiding().contrastRatio(constants, Film.COAT),
        acrossLights(mix, prediction),
        pricePerMillilitre(recipe),
        expected);
  }

  /** The difference of a paint's colour from the target. */
  double deltaE00(PaintOptics paint) {
    return Ciede2000.deltaE(lab, predictor.viewing().lab(paint.constants().opaque()));
  }

  /** All that is shown of a weighed recipe. */
  RankedRecipe shown(Weighed weighed) {
    return weighed.shown(hiding().coatsToHide(weighed.constants()));
  }

  private HidingPower hiding() {
    return new HidingPower(predictor.viewing());
  }

  private Optional<AcrossLights> acrossLights(Mix mix, Prediction prediction) {
    boolean measured =
        target instanceof Swatch.OfReflectance
            && mix.parts().stream()
                .map(part -> part.paint().masstone())
                .allMatch(masstone -> masstone.orElse(null) instanceof Swatch.OfReflectance);
    return measured
        ? Optional.of(AcrossLights.of(target.reflectance(), prediction.reflectance()))
        : Optional.empty();
  }

  private static OptionalDouble pricePerMillilitre(Recipe recipe) {
    double price = 0;
    double volume = 0;
    for (Recipe.Drops some : recipe.drops()) {
      OptionalDouble each = some.paint().bottle().pricePerMillilitre();
      if (each.isEmpty()) {
        return OptionalDouble.empty();
      }
      double millilitres = some.count() * some.paint().dropMillilitres();
      price += millilitres * each.getAsDouble();
      volume += millilitres;
    }
    for (Recipe.PotDrops some : recipe.pots()) {
      volume += some.count() * some.pot().dropMillilitres();
    }
    return OptionalDouble.of(price / volume);
  }
}
