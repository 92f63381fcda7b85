package io.github.swatchwright.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What a plan takes in all, from now on.
 *
 * @param paints each paint, and how much of it there is
 * @param thinners millilitres of each thinner, by its name, without what cleaning takes
 */
public record Needs(List<OfPaint> paints, Map<String, Double> thinners) {
  /** Copies the list. */
  public Needs {
    paints = List.copyOf(paints);
    thinners = Collections.unmodifiableMap(new LinkedHashMap<>(thinners));
  }

  /**
   * A paint and how much of it is needed.
   *
   * @param name the paint's name
   * @param millilitres how much the pots take
   * @param drops the same in whole drops of its dropper
   * @param left what is left in the bottle, ml; empty when that isn't written down
   * @param owned whether it is on the shelf
   */
  public record OfPaint(
      String name, double millilitres, long drops, OptionalDouble left, boolean owned) {
    /** How much is missing, ml: 0 when there is enough, and when nobody knows what is left. */
    public double missingMillilitres() {
      return owned ? Math.max(0, millilitres - left.orElse(millilitres)) : millilitres;
    }
  }

  /** The paints that have to be bought, or of which there isn't enough. */
  public List<OfPaint> missing() {
    return paints.stream().filter(paint -> paint.missingMillilitres() > 0).toList();
  }
}
