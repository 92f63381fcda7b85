package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/** What a JSON value can be. Numbers keep the digits they were written with. */
sealed interface JsonContent {

  /** The content in a message. */
  String inWords();

  /** Writes it as it was read. */
  void write(JsonGenerator json) throws IOException;

  /**
   * An object.
   *
   * @param fields its fields in the order they were written in
   */
  record Members(Map<String, JsonElement> fields) implements JsonContent {
    @Override
    public String inWords() {
      return "an object";
    }

    @Override
    public void write(JsonGenerator json) throws IOException {
      json.writeStartObject();
      writeFields(json);
      json.writeEndObject();
    }

    /** Writes its fields into an object that is begun already. */
    void writeFields(JsonGenerator json) throws IOException {
      for (Map.Entry<String, JsonElement> field : fields.entrySet()) {
        json.writeFieldName(field.getKey());
        field.getValue().content().write(json);
      }
    }
  }

  /**
   * A list.
   *
   * @param items its items
   */
  record Items(List<JsonElement> items) implements JsonContent {
    @Override
    public String inWords() {
      return "a list";
    }

    @Override
    public void write(JsonGenerator json) throws IOException {
      json.writeStartArray();
      for (JsonElement item : items) {
        item.content().write(json);
      }
      json.writeEndArray();
    }
  }

  /**
   * A string.
   *
   * @param text its characters, escapes resolved
   */
  record Text(String text) implements JsonContent {
    @Override
    public String inWords() {
      return OneLine.quote(text);
    }

    @Override
    public void write(JsonGenerator json) throws IOException {
      json.writeString(text);
    }
  }

  /**
   * A number, or NaN or an infinity, which JSON doesn't have and nothing here accepts.
   *
   * @param digits as written
   */
  record Numeral(String digits) implements JsonContent {
    @Override
    public String inWords() {
      return digits;
    }

    @Override
    public void write(JsonGenerator json) throws IOException {
      if (!Character.isDigit(digits.charAt(digits.length() - 1))) {
        throw new IllegalArgumentException("there is a " + digits + ", which JSON doesn't have");
      }
      json.writeNumber(digits);
    }
  }

  /**
   * One of the literals true, false and null.
   *
   * @param word as written
   */
  record Literal(String word) implements JsonContent {
    @Override
    public String inWords() {
      return word;
    }

    @Override
    public void write(JsonGenerator json) throws IOException {
      json.writeRawValue(word);
    }
  }
}
