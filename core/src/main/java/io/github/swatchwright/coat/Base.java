package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Swatch;
import java.util.Optional;

/** What lies under the first coat. */
public sealed interface Base {

  /** What binds it, when that is known. */
  Optional<Medium> medium();

  /** How it shines; matt when that isn't known. */
  Finish finish();

  /**
   * A colour, given the smoothest reflectance that has it.
   *
   * @param swatch the colour, or a measured reflectance
   * @param error its error, sd in units of L*, a* and b*: above 0 to 50
   */
  record OfSwatch(Swatch swatch, double error) implements Base {
    /** Refuses an error out of range. */
    public OfSwatch {
      Require.positive("error", error);
      Require.within("error", error, 0, 50);
    }

    /** A colour with the error of its form. */
    public OfSwatch(Swatch swatch) {
      this(swatch, swatch.usualError());
    }

    @Override
    public Optional<Medium> medium() {
      return Optional.empty();
    }

    @Override
    public Finish finish() {
      return Finish.MATT;
    }
  }

  /**
   * A paint or a mix of the shelf, painted until it hides.
   *
   * @param mix the paint or mix
   */
  record OfMix(Mix mix) implements Base {
    @Override
    public Optional<Medium> medium() {
      return Optional.of(mix.parts().get(0).paint().medium());
    }

    @Override
    public Finish finish() {
      return mix.parts().get(0).paint().finish();
    }
  }
}
