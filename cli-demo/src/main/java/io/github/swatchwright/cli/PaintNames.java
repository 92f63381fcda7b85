package io.github.swatchwright.cli;

import io.github.swatchwright.paint.Shelf;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Names of paints in an option that may be given several times, or several at once. */
final class PaintNames {
  private PaintNames() {}

  /**
   * The names as they are on the shelf. Commas part them, unless the whole is a paint's name.
   *
   * @param option the option's name, for messages
   * @throws IllegalArgumentException when one isn't on the shelf
   */
  static Set<String> parse(String option, List<String> values, Shelf shelf) {
    Set<String> names = new LinkedHashSet<>();
    for (String value : values) {
      if (isOn(shelf, value.trim())) {
        names.add(value.trim());
      } else {
        for (String name : value.split(",", -1)) {
          names.add(named(option, name.trim(), shelf));
        }
      }
    }
    return names;
  }

  private static boolean isOn(Shelf shelf, String name) {
    return shelf.paints().stream().anyMatch(paint -> paint.name().equals(name));
  }

  private static String named(String option, String name, Shelf shelf) {
    try {
      return shelf.paint(name).name();
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(option + ": " + e.getMessage(), e);
    }
  }
}
