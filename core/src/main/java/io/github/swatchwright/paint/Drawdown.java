package io.github.swatchwright.paint;

import io.github.swatchwright.argument.Require;
import java.util.OptionalDouble;

/**
 * One stroke of a paint across a dark and a light base: two colours of one film. Together they tell
 * the colour at full hiding and the hiding of a paint that doesn't hide in one coat, which neither
 * colour tells by itself.
 *
 * <p>The stroke is as thick over one base as over the other. How thick, needn't be known: left out,
 * it is one coat as a painter brushes it, more or less.
 *
 * @param coats how thick the stroke is, in coats, above 0 to 100; empty when nobody measured it
 * @param black the stroke over the dark base
 * @param white the stroke over the light base
 */
public record Drawdown(OptionalDouble coats, Half black, Half white) {
  /** Bases nearer to each other in L* tell next to nothing of what lies over them. */
  public static final double LEAST_CONTRAST = 20;

  /**
   * The stroke over one base.
   *
   * @param base the base, bare
   * @param measured the dry stroke over it
   */
  public record Half(Swatch base, Swatch measured) {}

  /** Refuses coats out of range, and bases that are alike or the wrong way round. */
  public Drawdown {
    if (coats.isPresent()) {
      Require.positive("coats", coats.getAsDouble());
      Require.within("coats", coats.getAsDouble(), 0, 100);
    }
    double lighter = white.base().lab().l() - black.base().lab().l();
    if (lighter < LEAST_CONTRAST) {
      throw new IllegalArgumentException(
          "the white base is lighter than the black one by L* "
              + Math.rint(10 * lighter) / 10
              + ", must be "
              + LEAST_CONTRAST
              + " or more");
    }
  }

  /** The larger of both colours' usual errors, sd in units of L*, a* and b*. */
  public double usualError() {
    return Math.max(black.measured().usualError(), white.measured().usualError());
  }
}
