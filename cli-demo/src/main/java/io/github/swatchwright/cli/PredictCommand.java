package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Predicts what mixes will look like. */
@CommandLine.Command(
    name = "predict",
    description = "Tells what one or more mixes will look like, painted until they hide.",
    footer = {"", "Example:", "  swatchwright predict 'Titanium white:6, Red oxide:1.5'"})
final class PredictCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Mixin CardOption card = new CardOption();

  @Parameters(
      arity = "1..*",
      paramLabel = "MIX",
      description = "Paints and their parts, such as \"Name:3, Other name:1\"; decimals are fine.")
  List<String> mixes = new ArrayList<>();

  PredictCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    TristimulusWeights light = shared.weights();
    Shelf shelf = shared.shelf();
    List<Mix> wanted = mixes.stream().map(text -> Mix.parse(text, shelf)).toList();
    MixPredictor predictor = MixPredictor.of(ShelfOptics.estimate(shelf), light);
    List<PredictedMix> predicted =
        wanted.stream().map(mix -> new PredictedMix(mix, predictor.predict(mix))).toList();
    card.write(output, shared, () -> Card.ofPredictions(predicted, shared.light()));
    shared.give(
        output, () -> JsonResult.ofPredictions(predicted, shared.light()), () -> print(predicted));
  }

  private void print(List<PredictedMix> predicted) {
    for (PredictedMix mix : predicted) {
      output.line(mix.mix().toText());
      output.line("  %s", PredictionText.colour(output, mix.prediction()));
      output.line("  %s", PredictionText.interval(mix.prediction()));
    }
    output.line("Light: %s", shared.light().name());
  }
}
