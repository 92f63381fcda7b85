package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.FreshPot;
import io.github.swatchwright.mix.Mix;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** What to add to a pot as JSON, see {@link JsonResult#of(Mix, Correction)}. */
final class CorrectionJson {
  private CorrectionJson() {}

  /**
   * The result as JSON.
   *
   * @param pot what was in the pot
   * @param correction the result
   */
  static JsonResult of(Mix pot, Correction correction) {
    return new JsonResult(
        json -> {
          json.writeStringField("light", correction.light().name());
          Rounded.field(json, "now", correction.now());
          JsonOutput.objects(
              json,
              "additions",
              correction.additions(),
              addition -> {
                json.writeStringField("paint", addition.drops().paint().name());
                json.writeNumberField("drops", addition.drops().count());
                ColourJson.write(json, "predicted", addition.predicted());
                Rounded.field(json, "deltaE00", addition.deltaE00());
              });
          ColourJson.write(json, "predicted", correction.predicted());
          Rounded.field(json, "deltaE00", correction.deltaE00());
          Rounded.field(json, "expectedDeltaE00", correction.expectedDeltaE00());
          writeCorrected(json, pot, correction);
          json.writeBooleanField("startAfresh", correction.startAfresh());
          if (correction.fresh().isPresent()) {
            FreshPot fresh = correction.fresh().get();
            json.writeObjectFieldStart("fresh");
            RecipeJson.write(json, fresh.recipe());
            ColourJson.write(json, "predicted", fresh.predicted());
            Rounded.field(json, "deltaE00", fresh.deltaE00());
            Rounded.field(json, "expectedDeltaE00", fresh.expectedDeltaE00());
            json.writeEndObject();
          }
        });
  }

  /** What is in the pot then: a list of one, so that it can be mixed again. */
  private static void writeCorrected(JsonGenerator json, Mix pot, Correction correction)
      throws IOException {
    Map<String, Double> drops = new LinkedHashMap<>();
    pot.parts().forEach(part -> drops.put(part.paint().name(), part.drops()));
    correction
        .additions()
        .forEach(
            some ->
                drops.merge(
                    some.drops().paint().name(), (double) some.drops().count(), Double::sum));
    json.writeArrayFieldStart("corrected");
    json.writeStartObject();
    JsonOutput.objects(
        json,
        "drops",
        drops.entrySet(),
        part -> {
          JsonOutput.text(json, "paint", part.getKey());
          json.writeNumberField("drops", part.getValue());
        });
    ColourJson.write(json, "predicted", correction.predicted());
    json.writeEndObject();
    json.writeEndArray();
  }
}
