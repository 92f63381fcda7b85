package io.github.swatchwright.plan;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Swatch;
import java.util.Optional;

/**
 * How far a plan has been carried out.
 *
 * @param step all steps up to this one are done, by the numbers of the plan so far: at least 1
 * @param measured the colour of that step's area now; empty when it wasn't measured
 */
public record Done(int step, Optional<Measured> measured) {
  /**
   * A colour that was measured.
   *
   * @param swatch the colour
   * @param error its error as sd of L*, a* and b*: above 0 to 50
   */
  public record Measured(Swatch swatch, double error) {
    /** Refuses an error out of range. */
    public Measured {
      Require.positive("error", error);
      Require.within("error", error, 0, 50);
    }

    /** A colour with the usual error of its form. */
    public Measured(Swatch swatch) {
      this(swatch, swatch.usualError());
    }
  }

  /** Refuses steps below 1. */
  public Done {
    Require.within("done", step, 1, Integer.MAX_VALUE);
  }
}
