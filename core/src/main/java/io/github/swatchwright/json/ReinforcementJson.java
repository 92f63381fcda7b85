package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.match.Addition;
import io.github.swatchwright.match.Reinforcement;
import java.io.IOException;

/**
 * Which one paint brings a list of targets closest, as JSON: the {@code targets} with the shelf as
 * it stands, and the {@code additions}, the best first, each with its {@code nearest} recipe for
 * each target.
 *
 * <pre>{@code
 * {"light":"D65",
 *  "targets":[{"target":{"lab":[…],"srgb":"#2A7B3C"},"reachable":false,"nearestDeltaE00":6.1,
 *              "missing":{"directions":["greener"],"deltaL":…,"deltaC":…,"deltaH":…}}],
 *  "additions":[{"paint":"Signal green","meanDeltaE00":0.8,"withinReach":1,
 *                "nearest":[{"drops":[{"paint":"Signal green","drops":3}],"deltaE00":0.8}]}],
 *  "tried":4200}
 * }</pre>
 */
final class ReinforcementJson {
  private ReinforcementJson() {}

  /**
   * The result as JSON.
   *
   * @param result what was found
   */
  static JsonResult of(Reinforcement result) {
    return new JsonResult(
        json -> {
          json.writeStringField("light", result.light().name());
          json.writeArrayFieldStart("targets");
          for (int i = 0; i < result.targets().size(); i++) {
            json.writeStartObject();
            ColourJson.write(json, "target", result.targets().get(i));
            MatchJson.write(json, result.withoutIt().get(i));
            json.writeEndObject();
          }
          json.writeEndArray();
          JsonOutput.list(json, "additions", result.additions(), addition -> write(json, addition));
          json.writeNumberField("tried", result.tried());
        });
  }

  private static void write(JsonGenerator json, Addition addition) throws IOException {
    json.writeStartObject();
    JsonOutput.text(json, "paint", addition.paint().name());
    Rounded.field(json, "meanDeltaE00", addition.meanDeltaE00());
    json.writeNumberField("withinReach", addition.withinReach());
    JsonOutput.objects(
        json,
        "nearest",
        addition.nearest(),
        nearest -> {
          RecipeJson.write(json, nearest.recipe());
          Rounded.field(json, "deltaE00", nearest.deltaE00());
        });
    json.writeEndObject();
  }
}
