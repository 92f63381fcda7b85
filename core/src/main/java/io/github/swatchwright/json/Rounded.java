package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** Numbers of a result: four decimals, which is finer than any paint is known. */
final class Rounded {
  private static final double STEPS = 1e4;

  private Rounded() {}

  /** Writes a named number. */
  static void field(JsonGenerator json, String name, double value) throws IOException {
    json.writeNumberField(name, of(name, value));
  }

  /** Writes a named list of numbers on one line. */
  static void list(JsonGenerator json, String name, double... values) throws IOException {
    json.writeArrayFieldStart(name);
    for (double value : values) {
      json.writeNumber(of(name, value));
    }
    json.writeEndArray();
  }

  /** The number to four decimals; minus zero becomes zero. */
  private static double of(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalStateException("the result " + name + " came out as " + value);
    }
    return Math.rint(value * STEPS) / STEPS + 0.0;
  }
}
