package io.github.swatchwright.difference;

import io.github.swatchwright.colour.Lab;

/** Refuses to compare colours that are relative to different whites. */
final class SameWhite {
  private SameWhite() {}

  static void require(Lab first, Lab second) {
    if (!first.white().equals(second.white())) {
      throw new IllegalArgumentException(
          "colours relative to "
              + first.white()
              + " and to "
              + second.white()
              + " can't be compared; adapt one to the other's white first");
    }
  }
}
