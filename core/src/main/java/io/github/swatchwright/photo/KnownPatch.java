package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;

/**
 * A patch in the photo whose colour is known: a painted card that was measured, a printed colour, a
 * paint of the shelf.
 *
 * @param sample where it is
 * @param known its colour, relative to D65
 * @param error how well that is known, sd of L*, a* and b*, above 0 to 50
 */
public record KnownPatch(RegionSample sample, Lab known, double error) {

  /** Refuses a patch that is clipped or black, another white than D65 and an error out of range. */
  public KnownPatch {
    Require.positive("error of the known patch", error);
    Require.within("error of the known patch", error, 0, 50);
    if (!known.white().equals(WhitePoint.D65)) {
      throw new IllegalArgumentException(
          "the known colour is relative to " + known.white() + ", must be D65");
    }
    String where = "the known patch " + sample.region().toText();
    double clipped = sample.shares().clipped();
    if (clipped > NeutralPatch.MOST_CLIPPED) {
      throw new IllegalArgumentException(
          where + " is clipped in " + Math.round(100 * clipped) + " % of its pixels: too bright");
    }
    if (sample.mean().toXyz().y() <= 0 || known.toXyz().y() <= 0) {
      throw new IllegalArgumentException(where + " is black: it tells nothing of the light");
    }
  }
}
