package io.github.swatchwright.match;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.OptionalDouble;

/**
 * A paint that a recipe is to stand in for.
 *
 * @param paint the paint; its colour is the target, and the paint itself is used only when it is
 *     asked for by name
 * @param contrastRatio how well one coat of it hides, 0 to 1; empty when nothing is known of it
 */
public record Substitution(Paint paint, OptionalDouble contrastRatio) {

  /**
   * Takes a paint's colour and hiding from the shelf that it is on: a stated contrast ratio as it
   * is, everything else that is known of its hiding by way of its estimated constants.
   *
   * @param name the paint's name
   * @param optics the shelf that it is on, which needn't be the one to mix from
   * @param light the light to look under
   * @throws IllegalArgumentException when it isn't there or has no colour
   */
  public static Substitution of(String name, ShelfOptics optics, TristimulusWeights light) {
    Paint paint = optics.shelf().paint(name);
    Swatch colour = optics.colour(name);
    return new Substitution(paint.withMasstone(colour), contrastRatio(paint, optics, light));
  }

  private static OptionalDouble contrastRatio(
      Paint paint, ShelfOptics optics, TristimulusWeights light) {
    if (paint.hiding().orElse(null) instanceof Hiding.ContrastRatio stated) {
      return OptionalDouble.of(stated.ratio());
    }
    boolean unknown =
        paint.hiding().isEmpty() && paint.drawdown().isEmpty() && paint.optics().isEmpty();
    if (unknown || paint.whyNotComputable().isPresent()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        new HidingPower(new Viewing(light, optics.surface()))
            .contrastRatio(optics.of(paint.name()).constants(), Film.COAT));
  }

  /** The colour to be matched. */
  public Swatch target() {
    return paint.masstone().orElseThrow();
  }
}
