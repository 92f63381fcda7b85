package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.mix.Prediction;
import java.io.IOException;

/**
 * A colour in a result: {@code {"lab":[L,a,b],"srgb":"#RRGGBB"}}, CIELAB relative to the white of
 * the result's light. What an sRGB display can't show is given with less chroma, and says {@code
 * "displayable":false}.
 */
final class ColourJson {
  private ColourJson() {}

  static void write(JsonGenerator json, String field, Lab lab) throws IOException {
    json.writeObjectFieldStart(field);
    writeFields(json, lab);
    json.writeEndObject();
  }

  /** Writes the colour's fields into an object that has others as well. */
  static void writeFields(JsonGenerator json, Lab lab) throws IOException {
    Srgb srgb = lab.toSrgb();
    Rounded.list(json, "lab", lab.l(), lab.a(), lab.b());
    json.writeStringField("srgb", srgb.fit(GamutPolicy.REDUCE_CHROMA).toHex());
    if (!srgb.isDisplayable()) {
      json.writeBooleanField("displayable", false);
    }
  }

  /** Writes the predicted colour and its interval. */
  static void write(JsonGenerator json, Prediction prediction) throws IOException {
    write(json, "predicted", prediction.lab());
    json.writeObjectFieldStart("interval");
    Rounded.field(json, "deltaE00", prediction.intervalDeltaE00());
    Rounded.field(json, "probability", Prediction.INTERVAL_PROBABILITY);
    json.writeEndObject();
  }
}
