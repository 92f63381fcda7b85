package io.github.swatchwright.cli;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.match.Reach;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.spectrum.Illuminant;

/**
 * The result of a search for recipes, for someone with a bottle in hand.
 *
 * @param output where it goes
 * @param light the light that it was computed for
 */
record MatchText(Output output, Illuminant light) {

  void print(MatchResult result) {
    Lab target = result.target();
    output.line("Target  %s%s  light %s", output.block(target), Output.notation(target), light);
    if (!result.reach().withinReach()) {
      output.line("");
      print(result.reach());
    }
    int number = 1;
    for (RankedRecipe ranked : result.recipes()) {
      output.line("");
      print(number++, ranked, target);
    }
    if (!result.leftOut().isEmpty()) {
      output.line("");
      output.line("Not used:");
      result.leftOut().forEach(reason -> output.line("  %s", reason));
    }
  }

  private void print(Reach reach) {
    output.line(
        "These paints don't reach this colour: the nearest mix is ΔE00 %.1f away.",
        reach.nearestDeltaE00());
    output.line(
        "The target is %s than it (ΔL′ %+.1f, ΔC′ %+.1f, ΔH′ %+.1f).",
        String.join(" and ", reach.directions()),
        reach.missing().deltaL(),
        reach.missing().deltaC(),
        reach.missing().deltaH());
  }

  private void print(int number, RankedRecipe ranked, Lab target) {
    Verdict verdict = Verdict.of(ranked.deltaE00());
    output.line(
        "%2d.  ΔE00 %.1f (%s) if all goes well; expect %.1f",
        number, ranked.deltaE00(), verdict.word(), ranked.expectedDeltaE00());
    for (Recipe.Drops drops : ranked.recipe().drops()) {
      String unit = drops.count() == 1 ? "drop " : "drops";
      output.line("      %3d %s  %s", drops.count(), unit, drops.paint().name());
    }
    String blocks = output.block(target) + output.block(ranked.prediction().lab());
    output.line("    %s%s", blocks, Output.notation(ranked.prediction().lab()));
    output.line("    %s", PredictionText.interval(ranked.prediction()));
  }
}
