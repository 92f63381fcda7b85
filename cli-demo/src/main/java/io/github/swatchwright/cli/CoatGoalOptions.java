package io.github.swatchwright.cli;

import io.github.swatchwright.coat.CoatAdvisor;
import io.github.swatchwright.coat.CoatGoal;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What a coat is to do, and which coats may do it: options of {@code coat}. */
final class CoatGoalOptions {
  @Option(
      names = "--shift",
      paramLabel = "SHIFT",
      description =
          "Find coats that shift the colour by this much: \"b=-4\" cools it, \"L=3\""
              + " lightens.")
  @Nullable String shift;

  @Option(
      names = "--towards",
      paramLabel = "COLOUR",
      description = "Find coats that bring it to this colour, or with --share part of the way.")
  @Nullable String towards;

  @Option(
      names = "--share",
      paramLabel = "SHARE",
      description = "How far towards that colour, above 0 to 1; 0.5 is half way.")
  @Nullable Double share;

  @Option(
      names = "--with",
      paramLabel = "NAMES",
      description = "Find coats of these paints only: names, separated by commas.")
  List<String> with = new ArrayList<>();

  @Option(
      names = "--max-coats",
      paramLabel = "N",
      defaultValue = "6",
      description = "The most coats that may be found, 1 to 40 (default 6).")
  int mostCoats;

  /** Whether coats are to be found. */
  boolean isGiven() {
    return shift != null || towards != null;
  }

  /** Refuses options that exclude or need each other. */
  void check() {
    if (shift != null && towards != null) {
      throw new IllegalArgumentException("--shift and --towards exclude each other; give one");
    }
    if (share != null && towards == null) {
      throw new IllegalArgumentException("--share needs --towards");
    }
  }

  /**
   * What is wanted, if anything.
   *
   * @param colour reads the colour to go towards
   */
  Optional<CoatGoal> goal(Function<String, Swatch> colour) {
    if (shift != null) {
      return Optional.of(CoatGoal.parseShift(shift));
    }
    return Optional.ofNullable(towards)
        .map(text -> CoatGoal.ofColour(colour.apply(text), share == null ? 1 : share));
  }

  /** Looks for coats of the paints that were allowed. */
  CoatAdvisor advisor(CoatPredictor predictor, Shelf shelf) {
    CoatAdvisor advisor = CoatAdvisor.of(predictor).withMostCoats(mostCoats);
    return with.isEmpty()
        ? advisor
        : advisor.withOnly(List.copyOf(PaintNames.parse("--with", with, shelf)));
  }
}
