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
 * @param directions the same in words, the largest first; empty when within reach
 */
public record Reach(
    boolean withinReach,
    double nearestDeltaE00,
    ColourDifference missing,
    List<String> directions) {

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
        within, missing.deltaE(), missing, within ? List.of() : words(missing, nearest));
  }

  private static List<String> words(ColourDifference missing, Lab nearest) {
    List<Direction> named = new ArrayList<>();
    named.add(new Direction(missing.deltaL(), missing.deltaL() > 0 ? "lighter" : "darker"));
    named.add(new Direction(missing.deltaC(), missing.deltaC() > 0 ? "more chromatic" : "greyer"));
    named.add(new Direction(missing.deltaH(), HueWord.towards(nearest, missing.deltaH() > 0)));
    double whole = Math.hypot(missing.deltaL(), Math.hypot(missing.deltaC(), missing.deltaH()));
    return named.stream()
        .filter(direction -> Math.abs(direction.size) >= NAMED_SHARE * whole)
        .sorted((a, b) -> Double.compare(Math.abs(b.size), Math.abs(a.size)))
        .map(direction -> direction.word)
        .toList();
  }

  /**
   * One component of the difference.
   *
   * @param size signed, in CIELAB units
   * @param word what to call it
   */
  private record Direction(double size, String word) {}
}
