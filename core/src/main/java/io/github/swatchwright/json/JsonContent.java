package io.github.swatchwright.json;

import java.util.List;
import java.util.Map;

/** What a JSON value can be. Numbers keep the digits they were written with. */
sealed interface JsonContent {

  /** The content in a message. */
  String inWords();

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
  }
}
