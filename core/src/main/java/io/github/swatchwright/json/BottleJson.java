package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.paint.Bottle;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A paint's bottle: {@code {"leftMillilitres":4.5,"pricePerMillilitre":0.2,
 * "densityGramsPerMillilitre":1.3,"thinner":"odourless spirit"}}; any may be left out.
 */
final class BottleJson {
  private static final String LEFT = "leftMillilitres";
  private static final String PRICE = "pricePerMillilitre";
  private static final String DENSITY = "densityGramsPerMillilitre";
  private static final String THINNER = "thinner";

  private BottleJson() {}

  static Bottle read(JsonElement element) {
    JsonFields fields = element.fields(LEFT, PRICE, DENSITY, THINNER);
    return element.make(
        () ->
            new Bottle(
                number(fields.optional(LEFT)),
                number(fields.optional(PRICE)),
                number(fields.optional(DENSITY)),
                fields.optional(THINNER).map(JsonElement::text)));
  }

  private static OptionalDouble number(Optional<JsonElement> field) {
    return field.map(given -> OptionalDouble.of(given.number())).orElse(OptionalDouble.empty());
  }

  static void write(JsonGenerator json, Bottle bottle) throws IOException {
    if (bottle.equals(Bottle.UNSTATED)) {
      return;
    }
    json.writeObjectFieldStart("bottle");
    if (bottle.leftMillilitres().isPresent()) {
      json.writeNumberField(LEFT, bottle.leftMillilitres().getAsDouble());
    }
    if (bottle.pricePerMillilitre().isPresent()) {
      json.writeNumberField(PRICE, bottle.pricePerMillilitre().getAsDouble());
    }
    if (bottle.densityGramsPerMillilitre().isPresent()) {
      json.writeNumberField(DENSITY, bottle.densityGramsPerMillilitre().getAsDouble());
    }
    if (bottle.thinner().isPresent()) {
      JsonOutput.text(json, THINNER, bottle.thinner().get());
    }
    json.writeEndObject();
  }
}
