package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.paint.Drawdown;
import java.io.IOException;
import java.util.OptionalDouble;

/**
 * A drawdown: {@code {"coats":1,"black":{"base":…,"measured":…},"white":{"base":…,"measured":…}}},
 * each colour as a swatch; {@code coats} may be left out.
 */
final class DrawdownJson {
  private DrawdownJson() {}

  static Drawdown read(JsonElement element) {
    JsonFields fields = element.fields("coats", "black", "white");
    OptionalDouble coats =
        fields
            .optional("coats")
            .map(field -> OptionalDouble.of(field.number()))
            .orElse(OptionalDouble.empty());
    Drawdown.Half black = half(fields.required("black"));
    Drawdown.Half white = half(fields.required("white"));
    return element.make(() -> new Drawdown(coats, black, white));
  }

  private static Drawdown.Half half(JsonElement element) {
    JsonFields fields = element.fields("base", "measured");
    return new Drawdown.Half(
        SwatchJson.read(fields.required("base")), SwatchJson.read(fields.required("measured")));
  }

  static void write(JsonGenerator json, Drawdown drawdown) throws IOException {
    json.writeObjectFieldStart("drawdown");
    if (drawdown.coats().isPresent()) {
      json.writeNumberField("coats", drawdown.coats().getAsDouble());
    }
    write(json, "black", drawdown.black());
    write(json, "white", drawdown.white());
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, String field, Drawdown.Half half)
      throws IOException {
    json.writeObjectFieldStart(field);
    SwatchJson.write(json, "base", half.base());
    SwatchJson.write(json, "measured", half.measured());
    json.writeEndObject();
  }
}
