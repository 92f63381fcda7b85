package io.github.swatchwright.cli;

import io.github.swatchwright.json.MatchJson;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.ShelfOptics;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds recipes for a colour. */
@CommandLine.Command(
    name = "match",
    description = "Finds recipes in whole drops for a colour, the one to trust most first.",
    footer = {
      "",
      "Examples:",
      "  swatchwright match '#8A4B2A'",
      "  swatchwright match 'lab(45, 5, 12)' --paints 2 --max-drops 8 --without 'Lamp black'"
    })
final class MatchCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Mixin PhotoReference reference = new PhotoReference();

  @Parameters(index = "0", paramLabel = "TARGET", description = "The colour you want.")
  String target = "";

  @Option(
      names = "--paints",
      paramLabel = "N",
      defaultValue = "3",
      description = "The most paints in a recipe, 1 to 4; 3 unless stated.")
  int paints;

  @Option(
      names = "--max-drops",
      paramLabel = "N",
      defaultValue = "12",
      description = "The most drops in a recipe, 1 to 40; 12 unless stated.")
  int maxDrops;

  @Option(
      names = "--alternatives",
      paramLabel = "N",
      defaultValue = "5",
      description = "How many recipes to show, 1 to 50; 5 unless stated.")
  int alternatives;

  @Option(
      names = "--only",
      paramLabel = "NAMES",
      description = "Use these paints alone; commas between the names, or give the option again.")
  List<String> only = new ArrayList<>();

  @Option(
      names = "--without",
      paramLabel = "NAMES",
      description = "Leave these paints out; commas between the names, or give the option again.")
  List<String> without = new ArrayList<>();

  @Option(
      names = "--medium",
      paramLabel = "MEDIUM",
      description = "Use paints of this medium alone: acrylic, lacquer, enamel, oil or water.")
  @Nullable String medium;

  MatchCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    TristimulusWeights light = shared.weights();
    checkNumbers();
    Shelf shelf = shared.shelf();
    MatchRequest request = request(shelf);
    MatchResult result = Matcher.of(ShelfOptics.estimate(shelf), light).match(request);
    shared.give(
        output,
        () -> MatchJson.toText(result, shared.light()),
        () -> new MatchText(output, shared.light()).print(result));
  }

  private void checkNumbers() {
    check("--paints", paints, Recipe.MOST_PAINTS);
    check("--max-drops", maxDrops, MatchRequest.LARGEST_DROPS);
    check("--alternatives", alternatives, MatchRequest.LARGEST_ALTERNATIVES);
  }

  private static void check(String option, int value, int highest) {
    if (value < 1 || value > highest) {
      throw new IllegalArgumentException(
          option + " is " + value + ", must be within [1, " + highest + "]");
    }
  }

  private MatchRequest request(Shelf shelf) {
    MatchRequest request =
        MatchRequest.of(ColourArgument.parse(target, shelf, reference, output).swatch())
            .withMostPaints(paints)
            .withMostDrops(maxDrops)
            .withAlternatives(alternatives)
            .withOnly(PaintNames.parse("--only", only, shelf))
            .withWithout(PaintNames.parse("--without", without, shelf));
    return medium == null ? request : request.withMedium(medium(medium));
  }

  private static Medium medium(String word) {
    return Arrays.stream(Medium.values())
        .filter(known -> known.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "--medium is '"
                        + word
                        + "', must be one of "
                        + Arrays.stream(Medium.values())
                            .map(Medium::word)
                            .collect(Collectors.joining(", "))));
  }
}
