package io.github.swatchwright.json;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.List;

/**
 * Predicted mixes as JSON: {@code predictions}, each with its {@code mix} as {@link Mix#parse}
 * reads it, the {@code predicted} colour and its {@code interval}.
 */
public final class PredictionsJson {
  private PredictionsJson() {}

  /**
   * A mix and what it will look like.
   *
   * @param mix the mix
   * @param prediction its colour and spread
   */
  public record Entry(Mix mix, Prediction prediction) {}

  /**
   * The result as JSON.
   *
   * @param entries the mixes, in the order they were asked for
   * @param light the light that they were computed for
   */
  public static JsonResult of(List<Entry> entries, Illuminant light) {
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
