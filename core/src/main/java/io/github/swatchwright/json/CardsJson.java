package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.PartsBy;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.exchange.ReadLimits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Test cards as JSON, format {@code swatchwright-cards} version 1. Cards that are written read back
 * as equal cards.
 *
 * <pre>{@code
 * {"format":"swatchwright-cards","version":1,"painted":"2026-11-20",
 *  "cards":[{"parts":{"White":50,"Yellow oxide":0.5},"by":"volume",
 *            "measured":{"srgb":"#E6D2A8"},"measuredError":2,
 *            "over":{"srgb":"#202020"},"coats":1,"batches":{"White":"new bottle"},
 *            "painted":"2026-11-21"}]}
 * }</pre>
 *
 * <p>{@code by} is {@code volume} or {@code mass}, and {@code volume} when it is left out. The rest
 * may be left out, too: {@code measuredError}, sd of L*, a* and b*; {@code over} and {@code coats}
 * of a film; {@code painted}, the day on which a card was painted, or all cards that don't say
 * their own: cards of one day share the state of their bottles; and {@code batches}, labels of the
 * paints that came from another bottle than the one that the shelf describes: bottles of one label
 * are equally strong, by how much is found out, and labels hold within one set of cards. The limits
 * that the package comment states hold.
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
   * The same within other limits than the usual ones.
   *
   * @param in UTF-8
   * @param source what messages call it
   * @param limits how much is taken in
   * @throws JsonInputException when the text doesn't hold cards, or more than the limits allow
   * @throws IOException when it can't be read
   */
  public static CardSet read(InputStream in, String source, ReadLimits limits) throws IOException {
    return cards(JsonDocument.read(in, source, limits));
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
    JsonFields fields = root.fields("format", "version", "painted", "cards");
    HEAD.check(fields);
    Optional<LocalDate> painted = fields.optional("painted").map(JsonElement::date);
    return new CardSet(
        fields.required("cards").items(1, CardSet.MOST_CARDS).stream()
            .map(card -> card(card, painted))
            .toList());
  }

  private static TestCard card(JsonElement element, Optional<LocalDate> ofSet) {
    JsonFields fields =
        element.fields(
            "parts", "by", "measured", "over", "coats", "measuredError", "batches", "painted");
    Optional<LocalDate> own = fields.optional("painted").map(JsonElement::date);
    return element.make(
        () ->
            new TestCard(
                parts(fields.required("parts"), batches(fields.optional("batches"))),
                fields
                    .optional("by")
                    .map(by -> by.oneOf(List.of(PartsBy.values()), PartsBy::word))
                    .orElse(PartsBy.VOLUME),
                SwatchJson.read(fields.required("measured")),
                fields.optional("over").map(SwatchJson::read),
                number(fields.optional("coats")),
                number(fields.optional("measuredError")),
                own.or(() -> ofSet)));
  }

  private static OptionalDouble number(Optional<JsonElement> field) {
    return field.map(given -> OptionalDouble.of(given.number())).orElse(OptionalDouble.empty());
  }

  private static Map<String, JsonElement> batches(Optional<JsonElement> field) {
    return field.map(given -> given.members().fields()).orElse(Map.of());
  }

  private static List<TestCard.Part> parts(JsonElement element, Map<String, JsonElement> batches) {
    List<TestCard.Part> parts = new ArrayList<>();
    element
        .members()
        .fields()
        .forEach(
            (paint, amount) -> {
              double number = amount.number();
              Optional<String> batch =
                  Optional.ofNullable(batches.get(paint)).map(JsonElement::text);
              parts.add(amount.make(() -> new TestCard.Part(paint, number, batch)));
            });
    batches.forEach(
        (paint, label) -> {
          if (parts.stream().noneMatch(part -> part.paint().equals(paint))) {
            throw label.refuse("is of a paint that isn't among the parts");
          }
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

  /** The same as a result of a command. */
  static JsonResult of(CardSet cards) {
    return new JsonResult(json -> write(json, cards));
  }

  private static void write(JsonGenerator json, CardSet cards) throws IOException {
    HEAD.write(json);
    JsonOutput.list(json, "cards", cards.cards(), card -> write(json, card));
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
    if (card.measuredError().isPresent()) {
      json.writeNumberField("measuredError", card.measuredError().getAsDouble());
    }
    if (card.painted().isPresent()) {
      json.writeStringField("painted", card.painted().get().toString());
    }
    if (card.parts().stream().anyMatch(part -> part.batch().isPresent())) {
      json.writeObjectFieldStart("batches");
      for (TestCard.Part part : card.parts()) {
        if (part.batch().isPresent()) {
          json.writeFieldName(JsonOutput.fieldName(part.paint()));
          json.writeString(part.batch().get());
        }
      }
      json.writeEndObject();
    }
    json.writeEndObject();
  }
}
