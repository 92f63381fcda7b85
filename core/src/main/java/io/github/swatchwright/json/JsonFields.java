package io.github.swatchwright.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The fields of an object whose names are known beforehand.
 *
 * @param object the object
 * @param byName its fields
 */
record JsonFields(JsonElement object, Map<String, JsonElement> byName) {

  /** Refuses a field that isn't known. */
  static JsonFields of(JsonElement object, Map<String, JsonElement> byName, List<String> known) {
    byName.forEach(
        (name, field) -> {
          if (!known.contains(name)) {
            throw field.refuse("is an unknown field; known here: " + String.join(", ", known));
          }
        });
    return new JsonFields(object, byName);
  }

  /** A field that must be there. */
  JsonElement required(String name) {
    return optional(name)
        .orElseThrow(() -> object.refuse("has no field '" + name + "', must have one"));
  }

  /** A field that may be there. */
  Optional<JsonElement> optional(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** The one field that is there, of several that exclude each other. */
  JsonElement only(String name) {
    if (byName.size() != 1) {
      throw object.refuse("has " + byName.size() + " fields, must have exactly one: " + name);
    }
    return byName.values().iterator().next();
  }
}
