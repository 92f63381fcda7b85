package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Drawdown;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Chooses the surface that a shelf's paints are seen through. All paints share one, so it has to
 * let each of them look as stated: k1 gives way until it does.
 */
final class ShelfSurface {
  /** Share of light that the surface throws back in, when the shelf doesn't state it. */
  private static final double USUAL_K2 = 0.4;

  /** Share of light that the surface reflects, when the shelf doesn't state it. */
  private static final double USUAL_K1 = 0.04;

  /** Too high a k1 ruins darks: it stays below what the darkest channel on the shelf shows. */
  private static final double SHARE_OF_DARKEST = 0.9;

  /** k1 is lowered in steps until a saturated colour can be seen through the surface. */
  private static final double STEP_DOWN = 0.8;

  private static final double LEAST_K1 = 1e-4;

  /** Sd of a k1 that nobody stated, as a share of it: matt and gloss, and how it is measured. */
  private static final double UNSTATED_SD = 0.25;

  private ShelfSurface() {}

  /** The stated surface, or the usual one, with a k1 that all stated masstones allow. */
  static Saunderson of(Shelf shelf, Recoveries recoveries) {
    List<Paint> paints =
        shelf.paints().stream()
            .filter(paint -> paint.whyNotComputable().isEmpty())
            .filter(paint -> paint.optics().isEmpty() || shelf.surface().isEmpty())
            .toList();
    List<Swatch> masstones = paints.stream().flatMap(paint -> paint.masstone().stream()).toList();
    List<Swatch> seen =
        Stream.concat(
                masstones.stream(),
                paints.stream()
                    .flatMap(paint -> paint.drawdown().stream())
                    .flatMap(ShelfSurface::strokes))
            .toList();
    Saunderson surface = shelf.surface().orElse(new Saunderson(USUAL_K1, USUAL_K2));
    double k1 = surface.k1();
    for (Swatch swatch : seen) {
      double darkest = Math.max(0, darkestChannel(swatch));
      boolean isBelow = shelf.surface().isEmpty() || darkest < k1;
      k1 = isBelow ? Math.min(k1, SHARE_OF_DARKEST * darkest) : k1;
    }
    for (Swatch masstone : masstones) {
      k1 = allowing(masstone, new Saunderson(k1, surface.k2()), recoveries);
    }
    return new Saunderson(k1, surface.k2());
  }

  /** A stroke is seen through the same surface, on black as on white. */
  private static Stream<Swatch> strokes(Drawdown drawdown) {
    return Stream.of(drawdown.black().measured(), drawdown.white().measured());
  }

  /** A surface that is one sd less shiny; empty when the shelf states its own. */
  static Optional<Saunderson> other(Shelf shelf, Saunderson surface) {
    return shelf.surface().isPresent()
        ? Optional.empty()
        : Optional.of(new Saunderson((1 - UNSTATED_SD) * surface.k1(), surface.k2()));
  }

  /** The k1 that lets a masstone look as stated, at most the given one; that when none does. */
  private static double allowing(Swatch masstone, Saunderson surface, Recoveries recoveries) {
    if (masstone instanceof Swatch.OfReflectance) {
      return surface.k1();
    }
    double lower = surface.k1();
    while (lower > LEAST_K1
        && !recoveries.of(masstone, new Saunderson(lower, surface.k2())).attainable()) {
      lower *= STEP_DOWN;
    }
    return lower > LEAST_K1 ? lower : surface.k1();
  }

  /** The smallest of X/Xn, Y/Yn, Z/Zn, and of a measured reflectance's own values. */
  static double darkestChannel(Swatch masstone) {
    Xyz xyz = masstone.lab().toXyz();
    WhitePoint white = xyz.white();
    double channel =
        Math.min(xyz.x() / white.xn(), Math.min(xyz.y() / white.yn(), xyz.z() / white.zn()));
    return masstone instanceof Swatch.OfReflectance measured
        ? Math.min(channel, Arrays.stream(measured.values()).min().orElse(1))
        : channel;
  }
}
