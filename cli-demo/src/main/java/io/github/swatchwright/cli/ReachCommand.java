package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.match.Addition;
import io.github.swatchwright.match.Catalogue;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Reach;
import io.github.swatchwright.match.Reinforcement;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds the one further paint that brings wanted colours closest. */
@CommandLine.Command(
    name = "reach",
    description = "Tells which one paint of a catalogue brings these colours closest.",
    footer = {
      "",
      "The catalogue is a shelf file of paints that you could get, up to 5,000. Paints are in the",
      "order of the mean difference (ΔE00) of the colours from their nearest mixes.",
      "",
      "Example:",
      "  swatchwright reach '#2A7B3C' '#8A4B2A' --catalogue catalogue.json",
      "",
      "JSON: targets[]{target, reachable, nearestDeltaE00, missing}, additions[]{paint,",
      "meanDeltaE00, withinReach, nearest[]{drops[], deltaE00}}, tried."
    })
final class ReachCommand implements Command {
  private static final int MOST_SHOWN = 5;

  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Mixin CardOption card = new CardOption();

  @Mixin PaintChoiceOptions choice = new PaintChoiceOptions();

  @Parameters(arity = "1..*", paramLabel = "COLOUR", description = "The colours you want.")
  List<String> colours = new ArrayList<>();

  @Option(
      names = "--catalogue",
      paramLabel = "FILE",
      required = true,
      description = "The paints that you could get, as a shelf file.")
  @Nullable GivenFile catalogue;

  @Option(
      names = "--paints",
      paramLabel = "N",
      defaultValue = "3",
      description = "The most paints in a mix, 1 to 3 (default 3).")
  int paints;

  @Option(
      names = "--max-drops",
      paramLabel = "N",
      defaultValue = "12",
      description = "The most drops in a mix, 1 to 40 (default 12).")
  int maxDrops;

  @Option(
      names = "--alternatives",
      paramLabel = "N",
      defaultValue = "3",
      description = "How many paints to show, 1 to 5 (default 3).")
  int alternatives;

  ReachCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    TristimulusWeights light = shared.weights();
    MatchCommand.check("--paints", paints, Recipe.MOST_PAINTS - 1);
    MatchCommand.check("--max-drops", maxDrops, MatchRequest.LARGEST_DROPS);
    MatchCommand.check("--alternatives", alternatives, MOST_SHOWN);
    Shelf shelf = shared.shelf();
    Shelf offered = Objects.requireNonNull(catalogue).read("--catalogue", ShelfJson::read);
    List<Swatch> targets =
        colours.stream()
            .map(text -> ColourArgument.parse(text, shelf, reference, output).swatch())
            .toList();
    ShelfOptics optics = ShelfOptics.estimate(shelf);
    Reinforcement result =
        output.withProgress(
            control ->
                Catalogue.of(offered, optics, light)
                    .withChoice(choice.of(shelf))
                    .best(targets, paints, maxDrops, alternatives, control));
    card.write(output, shared, () -> Card.of(result));
    shared.give(output, () -> JsonResult.of(result), () -> print(result, offered.name()));
  }

  private void print(Reinforcement result, String name) {
    for (int i = 0; i < result.targets().size(); i++) {
      Reach reach = result.withoutIt().get(i);
      String missing =
          reach.withinReach() ? "within reach" : "missing: " + String.join(", ", reach.words());
      output.line(
          "%s%s  nearest ΔE00 %.1f, %s",
          output.block(result.targets().get(i)),
          Output.notation(result.targets().get(i)),
          reach.nearestDeltaE00(),
          missing);
    }
    output.line("");
    if (result.additions().isEmpty()) {
      output.line("None of the paints of %s can be mixed with this shelf.", name);
    }
    int number = 1;
    for (Addition addition : result.additions()) {
      output.line(
          "%2d.  %s: %d of %d within reach, mean ΔE00 %.1f",
          number++,
          addition.paint().name(),
          addition.withinReach(),
          result.targets().size(),
          addition.meanDeltaE00());
    }
  }
}
