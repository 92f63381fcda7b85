package io.github.swatchwright.cli;

import io.github.swatchwright.card.PredictionCard;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.PredictionsJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    List<PredictionsJson.Entry> entries =
        wanted.stream().map(mix -> new PredictionsJson.Entry(mix, predictor.predict(mix))).toList();
    card.write(output, shared, () -> PredictionCard.of(byMix(entries), shared.light()));
    shared.give(output, () -> PredictionsJson.of(entries, shared.light()), () -> print(entries));
  }

  private static Map<Mix, Prediction> byMix(List<PredictionsJson.Entry> entries) {
    Map<Mix, Prediction> predictions = new LinkedHashMap<>();
    entries.forEach(entry -> predictions.put(entry.mix(), entry.prediction()));
    return predictions;
  }

  private void print(List<PredictionsJson.Entry> entries) {
    for (PredictionsJson.Entry entry : entries) {
      output.line(entry.mix().toText());
      output.line("  %s", PredictionText.colour(output, entry.prediction()));
      output.line("  %s", PredictionText.interval(entry.prediction()));
    }
    output.line("Light: %s", shared.light().name());
  }
}
