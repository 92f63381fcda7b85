package io.github.swatchwright.coat;

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
   * A colour, given the smoothest reflectance that has it, with the error of its form.
   *
   * @param swatch the colour, or a measured reflectance
   */
  record OfSwatch(Swatch swatch) implements Base {
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
