package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Application;
import io.github.swatchwright.mix.PaintAmount;
import java.util.List;

/**
 * How much paint and thinner the coats of a stack take.
 *
 * @param squareCentimetres the whole area, above 0
 * @param application film, solids and transfer
 * @param each paint and thinner for each coat, in the stack's order
 */
public record CoatAmounts(
    double squareCentimetres, Application application, List<PaintAmount> each) {

  /** Copies the list; refuses an area that isn't above 0. */
  public CoatAmounts {
    Require.positive("area", squareCentimetres);
    each = List.copyOf(each);
  }

  /** What some coats take, each for the share of the area that it covers. */
  public static CoatAmounts of(
      double squareCentimetres, Application application, List<Coat> coats) {
    return new CoatAmounts(
        squareCentimetres,
        application,
        coats.stream()
            .map(
                coat ->
                    PaintAmount.of(
                        squareCentimetres * coat.coverage(),
                        coat.coats(),
                        coat.thinner(),
                        application))
            .toList());
  }
}
