package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Medium;

/**
 * How long a coat wants to dry before the next goes over it, hours at room temperature. Common
 * practice of the trade, without a source: what the label says wins.
 *
 * @param leastHours the shortest usual wait, above 0
 * @param mostHours the longest usual wait, at least the shortest
 * @param words the wait in words, such as {@code 1 to 2 days}
 */
public record Wait(double leastHours, double mostHours, String words) {

  /** Refuses numbers out of range. */
  public Wait {
    Require.positive("leastHours", leastHours);
    Require.within("mostHours", mostHours, leastHours, 24 * 365);
  }

  /** The usual wait after a coat of that medium. */
  public static Wait after(Medium medium) {
    return switch (medium) {
      case LACQUER -> new Wait(1, 1, "1 hour");
      case ACRYLIC -> new Wait(4, 6, "4 hours when sprayed, 6 when brushed");
      case ENAMEL -> new Wait(24, 48, "1 to 2 days");
      case OIL -> new Wait(24, 72, "a day or more, until it no longer feels soft");
      case WATER -> new Wait(1, 4, "until it is dry, an hour or more");
    };
  }
}
