package io.github.swatchwright.json;

import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.List;

/** Predicted mixes as JSON, see {@link JsonResult#ofPredictions}. */
final class PredictionsJson {
  private PredictionsJson() {}

  /**
   * The result as JSON.
   *
   * @param entries the mixes, in the order they were asked for
   * @param light the light that they were computed for
   */
  static JsonResult of(List<PredictedMix> entries, Illuminant light) {
    return new JsonResult(
        json -> {
          json.writeStringField("light", light.name());
          JsonOutput.objects(
              json,
              "predictions",
              entries,
              entry -> {
                json.writeStringField("mix", entry.mix().toText());
                ColourJson.write(json, entry.prediction());
              });
        });
  }
}
