package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.spectrum.Illuminant;
import java.io.IOException;
import java.util.List;

/** Mixes mixed again as JSON, see {@link JsonResult#ofAgain}. */
final class AgainJson {
  private AgainJson() {}

  /**
   * The result as JSON.
   *
   * @param mixes what is mixed again
   * @param shelfChanged whether the shelf is another than it was then
   * @param light the light that it was computed for
   */
  static JsonResult of(List<MixedAgain> mixes, boolean shelfChanged, Illuminant light) {
    return new JsonResult(
        json -> {
          json.writeStringField("light", light.name());
          json.writeBooleanField("shelfChanged", shelfChanged);
          JsonOutput.list(json, "mixes", mixes, again -> write(json, again));
        });
  }

  private static void write(JsonGenerator json, MixedAgain again) throws IOException {
    json.writeStartObject();
    json.writeStringField("of", again.then().kind().word());
    json.writeNumberField("number", again.then().number());
    JsonOutput.objects(
        json,
        "drops",
        again.mix().parts(),
        part -> {
          json.writeStringField("paint", part.paint().name());
          json.writeNumberField("drops", Math.round(part.drops()));
          Rounded.field(json, "millilitres", part.millilitres());
        });
    Rounded.field(json, "millilitres", again.mix().millilitres());
    Rounded.field(json, "thinnerMillilitres", again.thinnerMillilitres());
    ColourJson.write(json, again.prediction());
    if (again.isComparable()) {
      ColourJson.write(json, "then", again.then().lab().orElseThrow());
      Rounded.field(
          json,
          "deltaE00",
          Ciede2000.deltaE(again.then().lab().orElseThrow(), again.prediction().lab()));
    }
    json.writeEndObject();
  }
}
