package io.github.swatchwright.cli;

import io.github.swatchwright.coat.HidingCoats;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.match.AcrossLights;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Preference;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.match.Reach;
import io.github.swatchwright.match.Substitution;
import io.github.swatchwright.match.Wishes;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.Locale;

/**
 * The result of a search for recipes, for someone with a bottle in hand.
 *
 * @param output where it goes
 * @param light the light that it was computed for
 */
record MatchText(Output output, Illuminant light) {
  /** Body colours hide within about this many coats (common practice). */
  private static final double WEAK_COATS = 6;

  void print(MatchResult result) {
    output.line(
        "Target  %s%s  light %s",
        output.block(result.target()), Output.notation(result.target()), light);
    result.request().insteadOf().ifPresent(this::print);
    if (!result.reach().withinReach()) {
      output.line("");
      print(result.reach());
    }
    int number = 1;
    for (RankedRecipe ranked : result.recipes()) {
      output.line("");
      print(number++, ranked, result);
    }
    if (result.recipes().isEmpty()) {
      output.line("");
      output.line("None of the %d nearest mixes hides as well as wanted.", result.weighed());
    }
    result.nearestBottle().ifPresent(this::printNearestBottle);
    if (!result.complete()) {
      output.line("");
      output.line(
          "The search was stopped: a mix may exist that is nearer by up to ΔE00 %.1f.",
          result.provenGap());
    }
    if (!result.leftOut().isEmpty()) {
      output.line("");
      output.line("Not used:");
      result.leftOut().forEach(paint -> output.line("  %s", paint.text()));
    }
  }

  private void print(Substitution substitution) {
    String hiding =
        substitution.contrastRatio().isPresent()
            ? String.format(
                Locale.ROOT,
                "; one coat of it has a contrast ratio of %.2f",
                substitution.contrastRatio().getAsDouble())
            : "";
    output.line("Instead of '%s'%s.", substitution.paint().name(), hiding);
  }

  private void print(Reach reach) {
    output.line(
        "These paints don't reach this colour: the nearest mix is ΔE00 %.1f away.",
        reach.nearestDeltaE00());
    output.line(
        "The target is %s than it (ΔL′ %+.1f, ΔC′ %+.1f, ΔH′ %+.1f).",
        String.join(" and ", reach.words()),
        reach.missing().deltaL(),
        reach.missing().deltaC(),
        reach.missing().deltaH());
  }

  private void print(int number, RankedRecipe ranked, MatchResult result) {
    output.line(
        "%2d.  Expect %s, ΔE00 %.1f; %s if all goes well",
        number,
        difference(ranked.expectedDeltaE00()),
        ranked.expectedDeltaE00(),
        atBest(ranked.deltaE00()));
    ranked.recipe().drops().forEach(some -> drops(some.count(), some.paint().name()));
    ranked.recipe().pots().forEach(some -> drops(some.count(), some.pot().name()));
    String blocks = output.block(result.target()) + output.block(ranked.prediction().lab());
    output.line("    %s%s", blocks, Output.notation(ranked.prediction().lab()));
    output.line("    %s", PredictionText.interval(ranked.prediction()));
    output.line("    It %s.%s", HidingCoats.inWords(ranked.coatsToHide()), weak(ranked));
    print(ranked, result.request().wishes());
  }

  /** An expected difference in words. */
  static String difference(double deltaE00) {
    return switch (Verdict.of(deltaE00)) {
      case MATCH -> "a match";
      case CLOSE -> "a slight difference";
      case VISIBLE -> "a visible difference";
      case DIFFERENT -> "another colour";
    };
  }

  private static String atBest(double deltaE00) {
    return deltaE00 < 0.05 ? "exact" : String.format(Locale.ROOT, "ΔE00 %.1f", deltaE00);
  }

  private static String weak(RankedRecipe ranked) {
    return ranked.coatsToHide() > WEAK_COATS ? " Weak for a body colour: mind what is below." : "";
  }

  private void printNearestBottle(RankedRecipe bottle) {
    output.line("");
    output.line(
        "Nearest bottle as it is: %s, expect %s, ΔE00 %.1f; it %s.",
        bottle.recipe().drops().get(0).paint().name(),
        difference(bottle.expectedDeltaE00()),
        bottle.expectedDeltaE00(),
        HidingCoats.inWords(bottle.coatsToHide()));
  }

  private void drops(int count, String name) {
    output.line("      %3d %s  %s", count, count == 1 ? "drop " : "drops", name);
  }

  /** What else was asked about. */
  private void print(RankedRecipe ranked, Wishes wishes) {
    if (wishes.leastContrastRatio().isPresent() || wishes.sameContrastRatio().isPresent()) {
      output.line("    One coat has a contrast ratio of %.2f.", ranked.contrastRatio());
    }
    if (wishes.preferences().contains(Preference.ACROSS_LIGHTS)) {
      output.line(
          "    %s",
          ranked
              .acrossLights()
              .map(MatchText::worst)
              .orElse("Other lights: unknown, since no reflectances were measured."));
    }
    if (wishes.preferences().contains(Preference.CHEAPER)) {
      String price =
          ranked.pricePerMillilitre().isPresent()
              ? String.format(Locale.ROOT, "%.3f", ranked.pricePerMillilitre().getAsDouble())
              : "not known";
      output.line("    Price by the millilitre: %s.", price);
    }
  }

  private static String worst(AcrossLights lights) {
    return String.format(
        Locale.ROOT,
        "Other lights: at worst ΔE00 %.1f, under %s.",
        lights.worstDeltaE00(),
        lights.light().name());
  }
}
