package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What a coat is called by how far it is thinned, and the steps of thinner that make sense for it.
 * Thinner to paint, common practice without a source: spray 1:2 to 2:1, glaze 3:1 to 10:1, wash
 * about 10:1, filter 10:1 to 20:1.
 */
public enum CoatUse {
  /** An ordinary coat, thinned for the brush or the airbrush. */
  COAT(3),
  /** A translucent coat over all of an area. */
  GLAZE(10),
  /** Gathers in recesses; predicted where it lies evenly. */
  WASH(12),
  /** Many dilute coats that shift the whole. */
  FILTER(Double.POSITIVE_INFINITY);

  /** Volumes of thinner to one of paint that are worth a try. */
  public static final List<Double> STEPS = List.of(0.5, 1.0, 2.0, 3.0, 5.0, 8.0, 10.0, 15.0, 20.0);

  private final double below;

  CoatUse(double below) {
    this.below = below;
  }

  /** The use that goes with a ratio of thinner to paint, by volume. */
  public static CoatUse of(double thinner) {
    Require.nonNegative("thinner", thinner);
    return Arrays.stream(values()).filter(use -> thinner < use.below).findFirst().orElseThrow();
  }

  /** The word for it, such as {@code filter}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
