package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.difference.ColourDifference;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the target is within reach of the paints and drops allowed, and if not, what is missing:
 * the way from the nearest predicted colour to the target.
 *
 * @param withinReach whether some recipe comes closer than {@value #LIMIT}
 * @param nearestDeltaE00 the smallest ΔE00 of any recipe
 * @param missing ΔL′, ΔC′ and ΔH′ from the nearest colour to the target
 * @param directions what the difference is called, its largest part first; empty when within reach
 */
public record Reach(
    boolean withinReach,
    double nearestDeltaE00,
    ColourDifference missing,
    List<Direction> directions) {

  /** The ΔE00 from which on a mix is visibly another colour ("close" ends here). */
  public static final double LIMIT = 2;

  /** A component is named when it makes up this share of the difference. */
  private static final double NAMED_SHARE = 0.4;

  /** Copies the list. */
  public Reach {
    directions = List.copyOf(directions);
  }

  /** Says how far the nearest colour is from the target, and in which direction. */
  static Reach of(Lab nearest, Lab target) {
    ColourDifference missing = Ciede2000.STANDARD.compare(nearest, target);
    boolean within = missing.deltaE() <= LIMIT;
    return new Reach(
        within, missing.deltaE(), missing, within ? List.of() : named(missing, nearest));
  }

  private static List<Direction> named(ColourDifference missing, Lab nearest) {
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part(missing.deltaL(), missing.deltaL() > 0 ? Direction.LIGHTER : Direction.DARKER));
    parts.add(
        new Part(
            missing.deltaC(), missing.deltaC() > 0 ? Direction.MORE_CHROMATIC : Direction.GREYER));
    parts.add(new Part(missing.deltaH(), HueWord.towards(nearest, missing.deltaH() > 0)));
    double whole = Math.hypot(missing.deltaL(), Math.hypot(missing.deltaC(), missing.deltaH()));
    return parts.stream()
        .filter(part -> Math.abs(part.size) >= NAMED_SHARE * whole)
        .sorted((a, b) -> Double.compare(Math.abs(b.size), Math.abs(a.size)))
        .map(Part::direction)
        .toList();
  }

  /**
   * One component of the difference.
   *
   * @param size signed, in CIELAB units
   * @param direction what it is called
   */
  private record Part(double size, Direction direction) {}

  /** The directions in words, such as {@code lighter}, in their order. */
  public List<String> words() {
    return directions.stream().map(Direction::words).toList();
  }
}
