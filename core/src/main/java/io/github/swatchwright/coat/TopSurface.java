package io.github.swatchwright.coat;

import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Finish;
import java.util.function.DoubleUnaryOperator;

/**
 * The one surface at the top of a stack of films, by its finish.
 *
 * <p>A shelf's colours hold each paint in its own finish. Under another finish the surface's own
 * reflection k1 comes in or goes: matt scatters all of it towards the eye, gloss mirrors it away
 * from an eye that looks past the lamp's image, satin half of it.
 *
 * @param shelf the surface that the shelf's colours were taken with
 * @param own the finish of the topmost paint
 * @param wanted the finish that is looked at
 */
record TopSurface(Saunderson shelf, Finish own, Finish wanted) implements DoubleUnaryOperator {

  @Override
  public double applyAsDouble(double internal) {
    double shift = shelf.k1() * (mirrored(own) - mirrored(wanted));
    return Math.max(0, Math.min(1, shelf.seen(internal) + shift));
  }

  /** The share of the surface's reflection that misses the eye. */
  private static double mirrored(Finish finish) {
    return switch (finish) {
      case MATT -> 0;
      case SATIN -> 0.5;
      case GLOSS -> 1;
    };
  }
}
