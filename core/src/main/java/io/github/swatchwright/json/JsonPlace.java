package io.github.swatchwright.json;

import org.jspecify.annotations.Nullable;

/** Where in which document a value stands, as a JSONPath (RFC 9535) such as {@code $.paints[3]}. */
final class JsonPlace {
  private final String source;
  private final @Nullable JsonPlace parent;
  private final @Nullable String field;
  private final int index;

  private JsonPlace(String source, @Nullable JsonPlace parent, @Nullable String field, int index) {
    this.source = source;
    this.parent = parent;
    this.field = field;
    this.index = index;
  }

  /** The root of a document. */
  static JsonPlace rootOf(String source) {
    return new JsonPlace(source, null, null, 0);
  }

  /** A field of the object that stands here. */
  JsonPlace field(String name) {
    return new JsonPlace(source, this, name, 0);
  }

  /** An item of the list that stands here. */
  JsonPlace item(int place) {
    return new JsonPlace(source, this, null, place);
  }

  /** The path from the root; names that aren't plain words stand in brackets. */
  String path() {
    if (parent == null) {
      return "$";
    }
    return parent.path() + step();
  }

  private String step() {
    if (field == null) {
      return "[" + index + "]";
    }
    return field.matches("[A-Za-z_][A-Za-z_0-9]*")
        ? "." + field
        : "['" + field.replace("\\", "\\\\").replace("'", "\\'") + "']";
  }

  /** The exception for what is wrong with the value that stands here. */
  JsonInputException refuse(String complaint) {
    return new JsonInputException(source, path(), complaint);
  }
}
