package io.github.swatchwright.plan;

import io.github.swatchwright.argument.BadArgumentException;
import io.github.swatchwright.argument.Printable;

/** What projects and areas may be called. */
final class PlanName {
  private PlanName() {}

  /** Refuses a name that is blank, too long, or not on one line. */
  static void check(String name, int longest) {
    if (name.isBlank() || name.length() > longest || !Printable.oneLine(name).equals(name)) {
      throw new BadArgumentException(
          "name",
          "has "
              + name.length()
              + " characters, must have 1 to "
              + longest
              + " on one line and not be blank");
    }
  }
}
