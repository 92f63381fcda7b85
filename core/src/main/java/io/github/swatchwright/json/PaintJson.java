package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.paint.Bottle;
import io.github.swatchwright.paint.Effect;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Use;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A paint of a shelf; all but {@code name} and {@code medium} may be left out. */
final class PaintJson {
  private static final String[] FIELDS = {
    "name",
    "medium",
    "finish",
    "masstone",
    "make",
    "hiding",
    "drawdown",
    "dropMillilitres",
    "swatchError",
    "effect",
    "notes",
    "optics",
    "bottle",
    "use",
    "thinned"
  };

  private PaintJson() {}

  static Paint read(JsonElement element) {
    JsonFields fields = element.fields(FIELDS);
    return element.make(() -> paint(fields));
  }

  private static Paint paint(JsonFields fields) {
    return new Paint(
        fields.required("name").text(),
        fields.required("medium").oneOf(List.of(Medium.values()), Medium::word),
        word(fields, "finish", Finish.values(), Finish::word).orElse(Finish.MATT),
        fields.optional("make").map(PaintJson::make).orElse(Make.UNSTATED),
        fields.optional("masstone").map(SwatchJson::read),
        fields.optional("hiding").map(HidingJson::read),
        fields.optional("drawdown").map(DrawdownJson::read),
        fields
            .optional("dropMillilitres")
            .map(JsonElement::number)
            .orElse(Paint.USUAL_DROP_MILLILITRES),
        number(fields, "swatchError"),
        word(fields, "effect", Effect.values(), Effect::word),
        fields.optional("notes").map(JsonElement::text).orElse(""),
        fields.optional("optics").map(OpticsJson::read),
        fields.optional("bottle").map(BottleJson::read).orElse(Bottle.UNSTATED),
        word(fields, "use", Use.values(), Use::word).orElse(Use.PAINT),
        fields.optional("thinned").map(JsonElement::truth).orElse(false));
  }

  private static <T> Optional<T> word(
      JsonFields fields, String name, T[] known, Function<T, String> word) {
    return fields.optional(name).map(field -> field.oneOf(List.of(known), word));
  }

  private static OptionalDouble number(JsonFields fields, String name) {
    return fields.optional(name).stream().mapToDouble(JsonElement::number).findFirst();
  }

  private static Make make(JsonElement field) {
    return field.oneOf(List.of(Make.SINGLE_PIGMENT, Make.READY_MIXED), Make::word);
  }

  static void write(JsonGenerator json, Paint paint) throws IOException {
    json.writeStartObject();
    JsonOutput.text(json, "name", paint.name());
    json.writeStringField("medium", paint.medium().word());
    json.writeStringField("finish", paint.finish().word());
    if (paint.masstone().isPresent()) {
      SwatchJson.write(json, "masstone", paint.masstone().get());
    }
    if (paint.make() != Make.UNSTATED) {
      json.writeStringField("make", paint.make().word());
    }
    if (paint.hiding().isPresent()) {
      HidingJson.write(json, paint.hiding().get());
    }
    if (paint.drawdown().isPresent()) {
      DrawdownJson.write(json, paint.drawdown().get());
    }
    json.writeNumberField("dropMillilitres", paint.dropMillilitres());
    if (paint.swatchError().isPresent()) {
      json.writeNumberField("swatchError", paint.swatchError().getAsDouble());
    }
    if (paint.effect().isPresent()) {
      json.writeStringField("effect", paint.effect().get().word());
    }
    if (!paint.notes().isEmpty()) {
      JsonOutput.text(json, "notes", paint.notes());
    }
    if (paint.optics().isPresent()) {
      OpticsJson.write(json, paint.optics().get());
    }
    BottleJson.write(json, paint.bottle());
    if (paint.use() != Use.PAINT) {
      json.writeStringField("use", paint.use().word());
    }
    if (paint.thinned()) {
      json.writeBooleanField("thinned", true);
    }
    json.writeEndObject();
  }
}
