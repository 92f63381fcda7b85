package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.mix.Recipe;
import java.io.IOException;

/** A recipe's {@code drops}: a list of {@code paint} and {@code drops}. */
final class DropsJson {
  private DropsJson() {}

  static void write(JsonGenerator json, Recipe recipe) throws IOException {
    json.writeArrayFieldStart("drops");
    for (Recipe.Drops drops : recipe.drops()) {
      json.writeStartObject();
      json.writeStringField("paint", drops.paint().name());
      json.writeNumberField("drops", drops.count());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
