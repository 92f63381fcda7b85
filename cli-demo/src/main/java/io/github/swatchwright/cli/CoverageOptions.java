package io.github.swatchwright.cli;

import io.github.swatchwright.ladder.CoverageWish;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How much of the area the passes of a ladder cover. */
final class CoverageOptions {
  @Option(
      names = "--base",
      paramLabel = "END",
      description = "What lies below, a colour or a mix; without it, the first rung covers all.")
  @Nullable String base;

  @Option(
      names = "--coverage",
      paramLabel = "LIST",
      description = "How much of the area each pass covers, such as 100%%,40%%,20%%,10%%.")
  @Nullable String coverage;

  @Option(
      names = "--shares",
      paramLabel = "LIST",
      description =
          "How much of the area is to show each rung at last, such as 40%%,30%%,20%%,10%%.")
  @Nullable String shares;

  @Option(
      names = "--look",
      paramLabel = "COLOUR",
      description = "The average colour that all of it is to have from a distance.")
  @Nullable String look;

  /** The wish; without any option, that of the shades' own shares, or an even one. */
  CoverageWish wish(ShadeArguments arguments, ShadeArguments.Shades shades) {
    if (Stream.of(coverage, shares, look).filter(option -> option != null).count() > 1) {
      throw new IllegalArgumentException("give one of --coverage, --shares and --look");
    }
    if (coverage != null) {
      return CoverageWish.ofPasses(numbers("--coverage", coverage));
    }
    if (shares != null) {
      return CoverageWish.ofShares(numbers("--shares", shares));
    }
    if (look != null) {
      return CoverageWish.ofLook(arguments.colour(look));
    }
    return shades.shares().isEmpty() ? CoverageWish.EVEN : CoverageWish.ofShades(shades.shares());
  }

  private static List<Double> numbers(String option, String list) {
    return Arrays.stream(list.split(",", -1)).map(text -> number(option, text.trim())).toList();
  }

  private static double number(String option, String text) {
    boolean percent = text.endsWith("%");
    try {
      double number =
          Double.parseDouble(percent ? text.substring(0, text.length() - 1).trim() : text);
      return percent ? number / 100 : number;
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          option + ": '" + text + "' is not a share such as 40% or 0.4", e);
    }
  }
}
