package io.github.swatchwright.plan;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.ladder.Subject;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Swatch;
import java.util.Optional;

/** What a step is painted with, or what colour it is to lead to. */
public sealed interface Aim {
  /**
   * The project doesn't say: the plan takes the usual chipping medium, or the varnish that fits.
   */
  record Usual() implements Aim {}

  /**
   * A paint or a mix that the project names.
   *
   * @param mix the mix; the ratio of its parts counts, not their sum
   */
  record OfMix(Mix mix) implements Aim {}

  /**
   * A colour that the area should have after the step; the plan finds the paint for it.
   *
   * @param swatch the colour
   */
  record OfColour(Swatch swatch) implements Aim {}

  /**
   * Graded shades from one pot.
   *
   * @param from the first end
   * @param to the last end
   * @param rungs how many shades, 2 to 12
   * @param subject what it is for
   */
  record OfLadder(Shade from, Shade to, int rungs, Optional<Subject> subject) implements Aim {
    /** Refuses numbers of rungs out of range. */
    public OfLadder {
      Require.within("rungs", rungs, 2, LadderRequest.MOST_RUNGS);
    }
  }
}
