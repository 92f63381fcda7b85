package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.calibrate.NextCards;
import java.io.IOException;

/** The test cards to paint next as JSON, see {@link JsonResult#of(NextCards)}. */
final class NextCardsJson {
  private NextCardsJson() {}

  /** The cards as JSON. */
  static JsonResult of(NextCards next) {
    return new JsonResult(json -> write(json, next));
  }

  static void write(JsonGenerator json, NextCards next) throws IOException {
    json.writeObjectFieldStart("next");
    Rounded.field(json, "expectedDeltaE00", next.expectedDeltaE00());
    writeCards(json, next);
    json.writeEndObject();
  }

  /** The list of cards alone. */
  static void writeCards(JsonGenerator json, NextCards next) throws IOException {
    JsonOutput.objects(
        json,
        "cards",
        next.cards(),
        card -> {
          RecipeJson.write(json, card.recipe());
          Rounded.field(json, "expectedDeltaE00", card.expectedDeltaE00());
        });
  }
}
