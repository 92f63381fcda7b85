package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.paint.Medium;
import java.util.List;
import java.util.Optional;

/**
 * Chips in the topmost coat: paint over chipping medium, which water lifts again. Every rule here
 * is common practice of the trade, without a source.
 *
 * @param layers what lies on the area
 * @param last the step that was done last; empty at the start
 */
record Chips(Layers layers, Optional<PlanStep> last) {

  /** Whether the topmost coat has chips in it that water would go on making. */
  boolean areOpen() {
    int below = layers.all().size() - 2;
    return below >= 0
        && last.filter(step -> step.work().worn() > 0).isPresent()
        && ClearCoats.isChippingMedium(layers.all().get(below));
  }

  /** Whether chipping medium lies open, ready for the coat that is to be worn off. */
  boolean areNext() {
    return last.filter(step -> step.kind() == StepKind.CHIPPING_MEDIUM).isPresent();
  }

  /**
   * Whether these coats need chipping medium below them, so that part of them can be worn off;
   * enamel and oil are rubbed off with their own thinner instead.
   *
   * @throws IllegalArgumentException when they can't be worn off at all
   */
  static boolean needMedium(List<Coat> coats, double worn) {
    if (worn == 0 || coats.isEmpty()) {
      return false;
    }
    Medium medium = coats.get(0).medium();
    if (medium == Medium.LACQUER) {
      throw new IllegalArgumentException(
          "water doesn't get through lacquer to wear it off; take an acrylic");
    }
    return letsWaterThrough(medium);
  }

  /**
   * The coats, when they can be worn off the chipping medium below them.
   *
   * @throws IllegalArgumentException when they can't
   */
  static List<Coat> checkOverMedium(List<Coat> coats, double worn) {
    if (coats.isEmpty()) {
      return coats;
    }
    Coat coat = coats.get(0);
    if (worn == 0) {
      throw new IllegalArgumentException(
          "it goes over chipping medium: say how much is worn off, such as worn 0.15");
    }
    if (!letsWaterThrough(coat.medium())) {
      throw new IllegalArgumentException(
          "water doesn't get through "
              + coat.medium().word()
              + " to the chipping medium; take an acrylic");
    }
    if (coat.isWash()) {
      throw new IllegalArgumentException(
          "thinned so far it floods the chipping medium and lifts it at once; thin less than 1:3");
    }
    return coats;
  }

  /** How to wear a share of a coat off. */
  static String wearing(Medium medium, double worn) {
    String share = Math.round(100 * worn) + " %";
    return letsWaterThrough(medium)
        ? "About half an hour after the last coat, not the next day: wet a small patch, wait a"
            + " moment, and lift about "
            + share
            + " of it with a damp stiff brush, most where hands and boots go."
        : "Once it is touch-dry, rub about "
            + share
            + " of it off with a brush that is just damp with "
            + Thinner.of(medium)
            + ".";
  }

  private static boolean letsWaterThrough(Medium medium) {
    return medium == Medium.ACRYLIC || medium == Medium.WATER;
  }
}
