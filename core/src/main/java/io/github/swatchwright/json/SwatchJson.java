package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Swatch;
import java.io.IOException;
import java.util.List;

/**
 * A swatch: one of {@code {"srgb":"#RRGGBB"}}, {@code {"lab":[L,a,b]}} relative to D65 and the 2°
 * observer, and {@code {"reflectance":{"from":400,"step":10,"values":[…]}}}.
 */
final class SwatchJson {
  private static final int MOST_VALUES = 2_000;

  private SwatchJson() {}

  static Swatch read(JsonElement element) {
    JsonElement form =
        element.fields("srgb", "lab", "reflectance").only("srgb, lab or reflectance");
    if (element.members().fields().containsKey("srgb")) {
      return form.make(() -> new Swatch.OfSrgb(Srgb.parseHex(form.text())));
    }
    return element.members().fields().containsKey("lab") ? lab(form) : reflectance(form);
  }

  private static Swatch lab(JsonElement form) {
    List<JsonElement> lab = form.items(3, 3);
    double limit = Lab.LARGEST_PARSED_AB;
    return new Swatch.OfLab(
        Lab.ofD65(
            lab.get(0).number(0, 100),
            lab.get(1).number(-limit, limit),
            lab.get(2).number(-limit, limit)));
  }

  private static Swatch reflectance(JsonElement form) {
    JsonFields fields = form.fields("from", "step", "values");
    double from = fields.required("from").number();
    double step = fields.required("step").number();
    double[] values =
        fields.required("values").items(1, MOST_VALUES).stream()
            .mapToDouble(JsonElement::number)
            .toArray();
    return form.make(() -> new Swatch.OfReflectance(from, step, values));
  }

  static void write(JsonGenerator json, String field, Swatch swatch) throws IOException {
    json.writeObjectFieldStart(field);
    if (swatch instanceof Swatch.OfSrgb ofSrgb) {
      json.writeStringField("srgb", hex(ofSrgb.srgb()));
    } else if (swatch instanceof Swatch.OfLab ofLab) {
      Lab lab = ofLab.lab();
      json.writeFieldName("lab");
      json.writeArray(new double[] {lab.l(), lab.a(), lab.b()}, 0, 3);
    } else if (swatch instanceof Swatch.OfReflectance measured) {
      json.writeObjectFieldStart("reflectance");
      json.writeNumberField("from", measured.fromNm());
      json.writeNumberField("step", measured.stepNm());
      json.writeFieldName("values");
      json.writeArray(measured.values(), 0, measured.values().length);
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  /** Six digits hold 8 bits a channel; a finer colour would not come back as it was. */
  private static String hex(Srgb srgb) {
    if (!Srgb.ofPacked(srgb.toPacked()).equals(srgb)) {
      throw new IllegalArgumentException(
          srgb + " is finer than the 256 steps of #RRGGBB; give it as CIELAB instead");
    }
    return srgb.toHex();
  }
}
