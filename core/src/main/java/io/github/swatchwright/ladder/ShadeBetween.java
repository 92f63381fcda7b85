package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A shade halfway between two colours, of the first end's mix and one more paint: a brown on the
 * way from orange to black. Without it, black alone would take the shades between through a dull
 * olive.
 */
final class ShadeBetween {
  /** Drops of the paint to one of the first end's mix. */
  private static final double[] RATIOS = {0.06, 0.12, 0.25, 0.5, 1, 2, 4};

  /** A detour is worth planning when it brings the middle nearer by that ΔE00. */
  private static final double WORTH_A_DETOUR = 0.5;

  /**
   * A paint is of the family when its own colour lies so near to the straight line between the
   * ends, ΔE00: brown is, on the way from orange to black; blue isn't, though it darkens orange
   * too.
   */
  private static final double FAMILY = 12;

  private static final int LINE = 9;

  /** Where the straight way is looked at. */
  private static final int SAMPLES = 32;

  private final MixPredictor predictor;
  private final ShelfOptics optics;
  private final PaintChoice choice;

  ShadeBetween(MixPredictor predictor, ShelfOptics optics, PaintChoice choice) {
    this.predictor = predictor;
    this.optics = optics;
    this.choice = choice.on(optics.shelf());
  }

  /** The shade; empty when the straight way comes as near to the middle. */
  Optional<Mix> of(Mix from, Lab first, Mix to, Lab last) {
    Lab middle =
        new Lab(
            (first.l() + last.l()) / 2,
            (first.a() + last.a()) / 2,
            (first.b() + last.b()) / 2,
            first.white());
    double nearest = straight(from, to, middle) - WORTH_A_DETOUR;
    Optional<Mix> found = Optional.empty();
    Medium medium = from.parts().get(0).paint().medium();
    List<Lab> line = StraightWay.evenly(first, last, LINE);
    for (PaintOptics candidate : optics.paints()) {
      Paint paint = candidate.paint();
      if (choice.admits(paint) && paint.medium() == medium && isOfTheFamily(paint, line)) {
        for (double ratio : RATIOS) {
          Mix mix = blended(from, 1, Mix.of(paint), ratio);
          double missed = Ciede2000.deltaE(lab(mix), middle);
          if (missed < nearest) {
            nearest = missed;
            found = Optional.of(mix);
          }
        }
      }
    }
    return found;
  }

  private boolean isOfTheFamily(Paint paint, List<Lab> line) {
    Lab own = lab(Mix.of(paint));
    return line.stream().anyMatch(lab -> Ciede2000.deltaE(own, lab) < FAMILY);
  }

  /** How near mixes of the two ends alone come to a colour, ΔE00. */
  private double straight(Mix from, Mix to, Lab middle) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 1; i < SAMPLES; i++) {
      double share = (double) i / SAMPLES;
      nearest =
          Math.min(nearest, Ciede2000.deltaE(lab(blended(from, 1 - share, to, share)), middle));
    }
    return nearest;
  }

  private Lab lab(Mix mix) {
    return predictor.viewing().lab(predictor.constants(mix).opaque());
  }

  /** Drops of two mixes together. */
  private static Mix blended(Mix one, double drops, Mix other, double more) {
    List<Mix.Part> parts = new ArrayList<>();
    pour(parts, one, drops);
    pour(parts, other, more);
    return new Mix(parts);
  }

  private static void pour(List<Mix.Part> parts, Mix mix, double drops) {
    double whole = mix.parts().stream().mapToDouble(Mix.Part::drops).sum();
    for (Mix.Part part : mix.parts()) {
      double poured = part.drops() * drops / whole;
      int known = parts.stream().map(Mix.Part::paint).toList().indexOf(part.paint());
      if (known < 0) {
        parts.add(new Mix.Part(part.paint(), poured));
      } else {
        parts.set(known, new Mix.Part(part.paint(), parts.get(known).drops() + poured));
      }
    }
  }
}
