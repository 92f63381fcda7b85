package io.github.swatchwright.ladder;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Swatch;

/** A shade that a ladder starts at, passes or ends at. */
public sealed interface Shade {

  /**
   * A colour, for which a recipe is looked for.
   *
   * @param swatch the colour
   */
  record OfColour(Swatch swatch) implements Shade {}

  /**
   * A mix that is known.
   *
   * @param mix the mix; the ratio of its parts counts, not their sum
   */
  record OfMix(Mix mix) implements Shade {}
}
