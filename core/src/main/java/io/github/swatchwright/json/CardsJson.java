package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.PartsBy;
import io.github.swatchwright.calibrate.TestCard;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Test cards as JSON, format {@code swatchwright-cards} version 1. Cards that are written read back
 * as equal cards.
 *
 * <pre>{@code
 * {"format":"swatchwright-cards","version":1,
 *  "cards":[{"parts":{"White":50,"Yellow oxide":0.5},"by":"volume",
 *            "measured":{"srgb":"#E6D2A8"},"over":{"srgb":"#202020"},"coats":1}]}
 * }</pre>
 *
 * <p>{@code by} is {@code volume}, unless {@code mass} is stated; {@code over} and {@code coats}
 * may be left out. The limits that the package comment states hold.
 */
public final class CardsJson {
  private static final DocumentHead HEAD = new DocumentHead("swatchwright-cards", 1);

  private CardsJson() {}

  /**
   * Reads cards from a file, which messages name by its path.
   *
   * @throws JsonInputException when the file doesn't hold cards
   * @throws IOException when it can't be read
   */
  public static CardSet read(Path file) throws IOException {
    return cards(JsonDocument.read(file));
  }

  /**
   * Reads cards from a stream, and leaves it open.
   *
   * @param in UTF-8
   * @param source what messages call it
   * @throws JsonInputException when the text doesn't hold cards
   * @throws IOException when it can't be read
   */
  public static CardSet read(InputStream in, String source) throws IOException {
    return cards(JsonDocument.read(in, source));
  }

  /**
   * Reads cards from a text.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @throws JsonInputException when the text doesn't hold cards
   */
  public static CardSet parse(String text, String source) {
    return cards(JsonDocument.parse(text, source));
  }

  private static CardSet cards(JsonElement root) {
    JsonFields fields = root.fields("format", "version", "cards");
    HEAD.check(fields);
    return new CardSet(
        fields.required("cards").items(1, CardSet.MOST_CARDS).stream()
            .map(CardsJson::card)
            .toList());
  }

  private static TestCard card(JsonElement element) {
    JsonFields fields = element.fields("parts", "by", "measured", "over", "coats");
    return element.make(
        () ->
            new TestCard(
                parts(fields.required("parts")),
                fields
                    .optional("by")
                    .map(by -> by.oneOf(List.of(PartsBy.values()), PartsBy::word))
                    .orElse(PartsBy.VOLUME),
                SwatchJson.read(fields.required("measured")),
                fields.optional("over").map(SwatchJson::read),
                fields
                    .optional("coats")
                    .map(coats -> OptionalDouble.of(coats.number()))
                    .orElse(OptionalDouble.empty())));
  }

  private static List<TestCard.Part> parts(JsonElement element) {
    List<TestCard.Part> parts = new ArrayList<>();
    element
        .members()
        .fields()
        .forEach(
            (paint, amount) -> {
              double number = amount.number();
              parts.add(amount.make(() -> new TestCard.Part(paint, number)));
            });
    if (parts.isEmpty() || parts.size() > TestCard.MOST_PARTS) {
      throw element.refuse(
          "holds " + parts.size() + " paints, must hold 1 to " + TestCard.MOST_PARTS);
    }
    return parts;
  }

  /**
   * The cards as a JSON document, with every digit of their numbers.
   *
   * @throws IllegalArgumentException when they hold what the format doesn't: an sRGB colour finer
   *     than 8 bits, half a Unicode character, or more than the limits allow
   */
  public static String toText(CardSet cards) {
    return JsonOutput.document(json -> write(json, cards));
  }

  private static void write(JsonGenerator json, CardSet cards) throws IOException {
    HEAD.write(json);
    json.writeArrayFieldStart("cards");
    for (TestCard card : cards.cards()) {
      write(json, card);
    }
    json.writeEndArray();
  }

  private static void write(JsonGenerator json, TestCard card) throws IOException {
    json.writeStartObject();
    json.writeObjectFieldStart("parts");
    for (TestCard.Part part : card.parts()) {
      json.writeNumberField(JsonOutput.fieldName(part.paint()), part.amount());
    }
    json.writeEndObject();
    json.writeStringField("by", card.by().word());
    SwatchJson.write(json, "measured", card.measured());
    if (card.over().isPresent()) {
      SwatchJson.write(json, "over", card.over().get());
    }
    if (card.coats().isPresent()) {
      json.writeNumberField("coats", card.coats().getAsDouble());
    }
    json.writeEndObject();
  }
}
