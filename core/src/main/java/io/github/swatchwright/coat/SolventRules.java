package io.github.swatchwright.coat;

import static io.github.swatchwright.coat.SolventVerdict.CAREFUL;
import static io.github.swatchwright.coat.SolventVerdict.CLASH;
import static io.github.swatchwright.coat.SolventVerdict.SAFE;
import static io.github.swatchwright.paint.Medium.ACRYLIC;
import static io.github.swatchwright.paint.Medium.ENAMEL;
import static io.github.swatchwright.paint.Medium.LACQUER;
import static io.github.swatchwright.paint.Medium.OIL;
import static io.github.swatchwright.paint.Medium.WATER;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Medium;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which medium may go over which: never a hotter solvent over a weaker binder. From mild to hot:
 * water, white spirit (enamel, oil), lacquer thinner. Common practice of the trade, without a
 * source.
 */
public final class SolventRules {
  /**
   * With this much thinner to one of paint, or more, a coat counts as a wash: its solvent works
   * longer.
   */
  public static final double WASH_FROM = 3;

  private static final String MIST =
      "Let it cure, then mist on several dry coats; never flood it. Or put the lacquer first.";
  private static final String BARRIER =
      "Seal it with an acrylic varnish, misted on, and let that cure.";
  private static final String LACQUER_SEAL =
      "Seal it with a lacquer varnish, misted on, and let that cure.";
  private static final String FIRST =
      "Put the lacquer first: no varnish holds against this much lacquer thinner.";
  private static final String CURE = "Let it cure first, and try it on scrap.";

  /** One rule for coats, then those that are stricter for washes. */
  private static final List<SolventRule> COATS =
      List.of(
          rule(ACRYLIC, ACRYLIC, SAFE, "dry acrylic doesn't dissolve in water again", ""),
          rule(ACRYLIC, LACQUER, CAREFUL, "lacquer thinner softens acrylic", MIST),
          rule(ACRYLIC, ENAMEL, SAFE, "white spirit leaves cured acrylic alone", ""),
          rule(ACRYLIC, OIL, SAFE, "white spirit leaves cured acrylic alone", ""),
          rule(ACRYLIC, WATER, SAFE, "water leaves dry acrylic alone", ""),
          rule(LACQUER, ACRYLIC, SAFE, "water leaves lacquer alone", ""),
          rule(LACQUER, LACQUER, SAFE, "lacquer bites into lacquer, and so holds on it", ""),
          rule(LACQUER, ENAMEL, SAFE, "white spirit leaves lacquer alone", ""),
          rule(LACQUER, OIL, SAFE, "white spirit leaves lacquer alone", ""),
          rule(LACQUER, WATER, SAFE, "water leaves lacquer alone", ""),
          rule(ENAMEL, ACRYLIC, CAREFUL, "acrylic cracks on enamel that is still soft", CURE),
          rule(ENAMEL, LACQUER, CLASH, "lacquer thinner wrinkles and lifts enamel", BARRIER),
          rule(ENAMEL, ENAMEL, CAREFUL, "white spirit softens enamel that hasn't cured", CURE),
          rule(ENAMEL, OIL, CAREFUL, "white spirit softens enamel that hasn't cured", CURE),
          rule(ENAMEL, WATER, CAREFUL, "water beads on enamel", BARRIER),
          rule(OIL, ACRYLIC, CAREFUL, "acrylic cracks on oil that is still soft", CURE),
          rule(OIL, LACQUER, CLASH, "lacquer thinner wrinkles and lifts oil", BARRIER),
          rule(OIL, ENAMEL, CAREFUL, "white spirit softens oil that hasn't dried through", CURE),
          rule(OIL, OIL, CAREFUL, "white spirit softens oil that hasn't dried through", CURE),
          rule(OIL, WATER, CAREFUL, "water beads on oil", BARRIER),
          rule(WATER, ACRYLIC, CAREFUL, "water lifts water colour again", LACQUER_SEAL),
          rule(WATER, LACQUER, SAFE, "lacquer thinner leaves water colour alone", ""),
          rule(WATER, ENAMEL, SAFE, "white spirit leaves water colour alone", ""),
          rule(WATER, OIL, SAFE, "white spirit leaves water colour alone", ""),
          rule(WATER, WATER, CAREFUL, "water lifts water colour again", LACQUER_SEAL));

  /** The rules that take the place of those for coats when the upper one is a wash. */
  private static final List<SolventRule> WASHES =
      List.of(
          rule(
              ACRYLIC, LACQUER, CLASH, "a wet coat of lacquer thinner lifts acrylic", LACQUER_SEAL),
          rule(ENAMEL, LACQUER, CLASH, "lacquer thinner wrinkles and lifts enamel", FIRST),
          rule(OIL, LACQUER, CLASH, "lacquer thinner wrinkles and lifts oil", FIRST),
          rule(ENAMEL, ENAMEL, CLASH, "the white spirit of a wash lifts enamel", BARRIER),
          rule(ENAMEL, OIL, CLASH, "the white spirit of a wash lifts enamel", BARRIER),
          rule(OIL, ENAMEL, CLASH, "the white spirit of a wash lifts oil", BARRIER),
          rule(OIL, OIL, CLASH, "the white spirit of a wash lifts oil", BARRIER),
          rule(WATER, ACRYLIC, CLASH, "a wash lifts water colour again", LACQUER_SEAL),
          rule(WATER, WATER, CLASH, "a wash lifts water colour again", LACQUER_SEAL));

  private SolventRules() {}

  private static SolventRule rule(
      Medium lower, Medium upper, SolventVerdict verdict, String reason, String remedy) {
    return new SolventRule(lower, upper, verdict, reason, remedy);
  }

  /** The rules for coats, one for each lower and upper medium. */
  static List<SolventRule> coats() {
    return COATS;
  }

  /**
   * The rule for one medium over another.
   *
   * @param lower the medium below
   * @param upper the medium on top
   * @param thinner volumes of thinner to one of paint in the upper coat, at least 0; a wash from
   *     {@value #WASH_FROM} on
   */
  public static SolventRule of(Medium lower, Medium upper, double thinner) {
    Require.nonNegative("thinner", thinner);
    return of(lower, upper, thinner >= WASH_FROM);
  }

  /**
   * The rule for one medium over another.
   *
   * @param lower the medium below
   * @param upper the medium on top
   * @param wash whether the upper coat is a wash or a filter
   */
  public static SolventRule of(Medium lower, Medium upper, boolean wash) {
    return (wash ? washesFirst() : COATS.stream())
        .filter(rule -> rule.lower() == lower && rule.upper() == upper)
        .findFirst()
        .orElseThrow();
  }

  private static Stream<SolventRule> washesFirst() {
    return Stream.concat(WASHES.stream(), COATS.stream());
  }
}
