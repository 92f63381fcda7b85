package io.github.swatchwright.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What a step of a plan does. Thinner and coverage are those that are usual for it (common practice
 * of the trade, without a source).
 */
public enum StepKind {
  /** Holds on to bare plastic and metal. */
  PRIMER(0, 1, "Prime"),
  /** Light and dark below a thin base, so that it isn't flat. */
  PRE_HIGHLIGHT(1, 0.5, "Pre-highlight"),
  /** The body colour, over all of the area. */
  BASE(1, 1, "Base coat"),
  /** A clear coat that water softens, so that the next coat can be worn off in places. */
  CHIPPING_MEDIUM(0, 1, "Chipping medium"),
  /** A worn, translucent white over a base. */
  WHITEWASH(1, 1, "Whitewash"),
  /** A clear coat that was asked for. */
  VARNISH(0, 1, "Varnish"),
  /** Very thin coats that tint all of an area. */
  FILTER(15, 1, "Filter"),
  /** A thin dark coat that stays in recesses; what lies on the faces is wiped off. */
  WASH(10, 0.2, "Wash"),
  /** Graded shades, each over less of the area than the one before. */
  LADDER(0, 1, "Ladder"),
  /** Specks of an opaque colour. */
  SPECKLE(0, 0.1, "Speckle"),
  /** A clear coat that the plan puts in because the next step would lift what lies below. */
  SEAL(0, 1, "Seal"),
  /** The base coat once more, from a corrected pot. */
  CORRECTION(1, 1, "Base coat again");

  private final double usualThinner;
  private final double usualCoverage;
  private final String heading;

  StepKind(double usualThinner, double usualCoverage, String heading) {
    this.usualThinner = usualThinner;
    this.usualCoverage = usualCoverage;
    this.heading = heading;
  }

  /** Those that a project may ask for; the others are put in by the plan. */
  public static List<StepKind> askable() {
    return Arrays.stream(values()).filter(kind -> kind != SEAL && kind != CORRECTION).toList();
  }

  /** Volumes of thinner to one of paint that are usual for it, unless the bottle comes thinned. */
  double usualThinner() {
    return usualThinner;
  }

  /** The share of the area that it usually covers, above 0 to 1. */
  double usualCoverage() {
    return usualCoverage;
  }

  /** Whether it is clear, so that no colour can be asked of it. */
  public boolean isClear() {
    return this == CHIPPING_MEDIUM || this == VARNISH || this == SEAL;
  }

  /** Whether it has to stay at the bottom: nothing is moved below it. */
  boolean isGround() {
    return this == PRIMER || this == PRE_HIGHLIGHT || this == BASE;
  }

  /** Whether what lies below is meant to shine through. */
  boolean isTranslucent() {
    return this == WHITEWASH || this == FILTER || this == WASH;
  }

  /** The word for it in files, such as {@code pre-highlight}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What heads such a step on a page, such as {@code Base coat}. */
  public String heading() {
    return heading;
  }
}
