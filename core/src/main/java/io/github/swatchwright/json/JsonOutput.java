package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import io.github.swatchwright.exchange.ReadLimits;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Writes one JSON object as indented text that ends with a line feed, the same on every platform.
 */
final class JsonOutput {
  private JsonOutput() {}

  /** Writes the fields of an object. */
  @FunctionalInterface
  interface Fields {
    /** Writes them, without the braces. */
    void write(JsonGenerator json) throws IOException;
  }

  /** The text of an object with those fields. */
  static String object(Fields fields) {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    PrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indenter);
    return write(
            json -> {
              json.setPrettyPrinter(printer);
              object(json, fields);
            })
        + "\n";
  }

  /** The text of an object that was read. */
  static String object(JsonContent.Members object) {
    return object(object::writeFields);
  }

  /** The same on one line, without a line feed. */
  static String line(Fields fields) {
    return write(json -> object(json, fields));
  }

  private static String write(Fields content) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      content.write(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static void object(JsonGenerator json, Fields fields) throws IOException {
    json.writeStartObject();
    fields.write(json);
    json.writeEndObject();
  }

  /** The same, refused when it is too long to be read again. */
  static String document(Fields fields) {
    String text = object(fields);
    int bytes = text.getBytes(StandardCharsets.UTF_8).length;
    if (bytes > ReadLimits.USUAL.mostBytes()) {
      throw new IllegalArgumentException(
          "the document has "
              + bytes
              + " bytes, must have at most "
              + ReadLimits.USUAL.mostBytes());
    }
    return text;
  }

  /** Writes one item of a list. */
  @FunctionalInterface
  interface Item<T> {
    /** Writes it whole, or its fields without the braces, as the list asks. */
    void write(T item) throws IOException;
  }

  /** Writes a list of objects, of which each item gives the fields. */
  static <T> void objects(JsonGenerator json, String name, Iterable<T> items, Item<T> fields)
      throws IOException {
    list(json, name, items, item -> object(json, same -> fields.write(item)));
  }

  /** Writes a list whose items are written whole. */
  static <T> void list(JsonGenerator json, String name, Iterable<T> items, Item<T> whole)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (T item : items) {
      whole.write(item);
    }
    json.writeEndArray();
  }

  /** Writes a list of strings. */
  static void words(JsonGenerator json, String name, Iterable<String> words) throws IOException {
    list(json, name, words, json::writeString);
  }

  /** Writes a string that can be read again: not too long, and of whole characters. */
  static void text(JsonGenerator json, String field, String text) throws IOException {
    json.writeStringField(field, readable(field, text, ReadLimits.USUAL.longestText()));
  }

  /** A string in a list that can be read again. */
  static String item(String field, String text) {
    return readable(field, text, ReadLimits.USUAL.longestText());
  }

  /** A field name that can be read again. */
  static String fieldName(String name) {
    return readable("field name", name, ReadLimits.USUAL.longestName());
  }

  private static String readable(String what, String text, int longest) {
    if (text.length() > longest) {
      throw new IllegalArgumentException(
          what + " has " + text.length() + " characters, must have at most " + longest);
    }
    if (!StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
      throw new IllegalArgumentException(what + " holds half a character, must be Unicode text");
    }
    return text;
  }
}
