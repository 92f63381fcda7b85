package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.calibrate.NextCards;
import java.io.IOException;

/**
 * The test cards to paint next as JSON: {@code next} holds the error to be expected as things are,
 * {@code expectedDeltaE00}, and the {@code cards}, each with its {@code drops} and the error that
 * is left once it has been measured.
 */
public final class NextCardsJson {
  private NextCardsJson() {}

  /** The cards as JSON. */
  public static JsonResult of(NextCards next) {
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
