package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.exchange.ReadLimits;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shelves as JSON, format {@code swatchwright-shelf} version 1. A shelf that is written reads back
 * as an equal shelf.
 *
 * <pre>{@code
 * {"format":"swatchwright-shelf","version":1,"name":"Harbour dredger",
 *  "surface":{"k1":0.04,"k2":0.4},
 *  "paints":[{"name":"Yellow oxide","medium":"acrylic","finish":"matt",
 *             "masstone":{"srgb":"#C48A2C"},"make":"single-pigment","hiding":{"coats":3},
 *             "dropMillilitres":0.045,"swatchError":1.5,"notes":"free text"}]}
 * }</pre>
 *
 * <p>{@code surface} may be left out, and of a paint all but {@code name} and {@code medium}. The
 * limits that the package comment states hold.
 */
public final class ShelfJson {
  private static final DocumentHead HEAD = new DocumentHead("swatchwright-shelf", 1);

  private ShelfJson() {}

  /**
   * Reads a shelf from a file, which messages name by its path.
   *
   * @throws JsonInputException when the file isn't a shelf
   * @throws IOException when it can't be read
   */
  public static Shelf read(Path file) throws IOException {
    return shelf(JsonDocument.read(file));
  }

  /**
   * Reads a shelf from a stream, and leaves it open.
   *
   * @param in UTF-8
   * @param source what messages call it
   * @throws JsonInputException when the text isn't a shelf
   * @throws IOException when it can't be read
   */
  public static Shelf read(InputStream in, String source) throws IOException {
    return shelf(JsonDocument.read(in, source));
  }

  /**
   * The same within other limits than the usual ones.
   *
   * @param in UTF-8
   * @param source what messages call it
   * @param limits how much is taken in
   * @throws JsonInputException when the text doesn't hold a shelf, or more than the limits allow
   * @throws IOException when it can't be read
   */
  public static Shelf read(InputStream in, String source, ReadLimits limits) throws IOException {
    return shelf(JsonDocument.read(in, source, limits));
  }

  /**
   * Reads a shelf from a text.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @throws JsonInputException when the text isn't a shelf
   */
  public static Shelf parse(String text, String source) {
    return shelf(JsonDocument.parse(text, source));
  }

  private static Shelf shelf(JsonElement root) {
    JsonFields fields = root.fields("format", "version", "name", "surface", "paints");
    HEAD.check(fields);
    String name = fields.required("name").text();
    Optional<Saunderson> surface = fields.optional("surface").map(ShelfJson::surface);
    List<Paint> paints = paints(fields.required("paints"));
    return root.make(() -> new Shelf(name, paints, surface));
  }

  private static Saunderson surface(JsonElement element) {
    JsonFields fields = element.fields("k1", "k2");
    double k1 = fields.required("k1").number();
    double k2 = fields.required("k2").number();
    return element.make(() -> new Saunderson(k1, k2));
  }

  private static List<Paint> paints(JsonElement list) {
    List<Paint> paints = new ArrayList<>();
    Map<String, JsonPlace> places = new HashMap<>();
    for (JsonElement element : list.items(1, Shelf.MOST_PAINTS)) {
      Paint paint = PaintJson.read(element);
      JsonPlace earlier = places.putIfAbsent(paint.name(), element.place());
      if (earlier != null) {
        String taken = OneLine.quote(paint.name()) + ", the name of " + earlier.path();
        throw element.place().field("name").refuse("is " + taken + " already, must be another");
      }
      paints.add(paint);
    }
    return paints;
  }

  /**
   * The shelf as a JSON document, with every digit of its numbers.
   *
   * @throws IllegalArgumentException when it holds what the format doesn't: an sRGB colour finer
   *     than 8 bits, half a Unicode character, or more than the limits allow
   */
  public static String toText(Shelf shelf) {
    return JsonOutput.document(json -> write(json, shelf));
  }

  /** SHA-256 of all that the shelf holds, 64 hexadecimal digits; a file's layout is no part. */
  public static String hash(Shelf shelf) {
    byte[] text = JsonOutput.line(json -> write(json, shelf)).getBytes(StandardCharsets.UTF_8);
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static void write(JsonGenerator json, Shelf shelf) throws IOException {
    HEAD.write(json);
    JsonOutput.text(json, "name", shelf.name());
    if (shelf.surface().isPresent()) {
      json.writeObjectFieldStart("surface");
      json.writeNumberField("k1", shelf.surface().get().k1());
      json.writeNumberField("k2", shelf.surface().get().k2());
      json.writeEndObject();
    }
    json.writeArrayFieldStart("paints");
    for (Paint paint : shelf.paints()) {
      PaintJson.write(json, paint);
    }
    json.writeEndArray();
  }
}
