package io.github.swatchwright.cli;

import io.github.swatchwright.coat.BaseColour;
import io.github.swatchwright.coat.BaseColour.Obstacle;
import io.github.swatchwright.coat.BasePlan;
import io.github.swatchwright.coat.BaseRecipe;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What to paint below some coats, for someone with a brush in hand.
 *
 * @param output where it goes
 * @param light the light that it was computed for
 */
record BasePlanText(Output output, Illuminant light) {
  private static final int SHOWN_RECIPES = 3;

  void print(BasePlan plan) {
    BaseColour colour = plan.colour();
    output.line("Wanted in the end  %s", inWords(colour.end()));
    if (colour.obstacle().filter(Obstacle.HIDDEN::equals).isPresent()) {
      output.line(
          "%s: %s. It ends at %s, ΔE00 %.1f away.",
          Verdict.of(colour.deltaE00()) == Verdict.MATCH ? "Any base does" : "No base does it",
          colour.obstacle().get().reason(),
          inWords(colour.reached()),
          colour.deltaE00());
      output.line("");
      return;
    }
    printObstacle(colour);
    output.line("Base for it        %s%s", inWords(colour), shown(colour));
    int number = 1;
    for (BaseRecipe recipe : plan.recipes()) {
      if (number <= SHOWN_RECIPES) {
        print(number++, recipe, plan.recipes().get(0).clashes());
      }
    }
    print("Pre-highlight, darkest part ", plan.darkest());
    print("Pre-highlight, lightest part", plan.lightest());
    output.line("");
    output.line("With the first of these bases:");
  }

  private void printObstacle(BaseColour colour) {
    colour
        .obstacle()
        .ifPresent(
            obstacle ->
                output.line(
                    "No base does it: %s. The nearest ends at %s, ΔE00 %.1f away.",
                    obstacle.reason(), inWords(colour.reached()), colour.deltaE00()));
  }

  private static String shown(BaseColour colour) {
    return colour.shown() < BaseColour.HARDLY_SHOWN
        ? "; it hardly shows: other bases end alike"
        : String.format(
            Locale.ROOT,
            "; at least %.0f %% of a small difference in it shows in the end",
            100 * colour.shown());
  }

  private void print(int number, BaseRecipe recipe, int clashes) {
    output.line(
        "%2d.  In the end expect %s, ΔE00 %.1f; ΔE00 %.1f if all goes well",
        number,
        MatchText.difference(recipe.expectedDeltaE00()),
        recipe.expectedDeltaE00(),
        recipe.deltaE00());
    for (Recipe.Drops some : recipe.base().recipe().drops()) {
      output.line(
          "      %3d %s  %s",
          some.count(), some.count() == 1 ? "drop " : "drops", some.paint().name());
    }
    output.line(
        "    Base %s, ends at %s%s",
        inWords(recipe.base().prediction().lab()),
        inWords(recipe.end().lab()),
        recipe.clashes() > clashes ? "; over it, more coats clash" : "");
  }

  private void print(String title, Optional<BasePlan> part) {
    part.ifPresent(
        plan -> {
          BaseColour colour = plan.colour();
          output.line(
              "%s  %s, to end at %s%s",
              title, inWords(colour), inWords(colour.end()), missed(colour));
          plan.recipes().stream()
              .findFirst()
              .ifPresent(
                  recipe ->
                      output.line(
                          "      %s; expect ΔE00 %.1f in the end",
                          drops(recipe.base().recipe().drops()), recipe.expectedDeltaE00()));
        });
  }

  private static String missed(BaseColour colour) {
    return colour.isFound()
        ? ""
        : String.format(
            Locale.ROOT,
            " (%s: ΔE00 %.1f away)",
            colour.obstacle().orElseThrow().reason(),
            colour.deltaE00());
  }

  private static String drops(List<Recipe.Drops> drops) {
    return drops.stream()
        .map(some -> some.count() + " " + some.paint().name())
        .collect(Collectors.joining(" + ", "", drops.size() == 1 ? " alone" : " (drops)"));
  }

  private String inWords(BaseColour colour) {
    TristimulusWeights weights = TristimulusWeights.of(light, Observer.CIE_1931);
    return inWords(new Swatch.OfLab(colour.base()).labUnder(weights));
  }

  private String inWords(Lab lab) {
    return output.block(lab) + Output.notation(lab);
  }
}
