package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;

/** Questions for a matcher that nobody has asked anything yet: colours all round the hue circle. */
final class WarmingUp {
  private static final int HUES = 12;
  private static final double CHROMA = 35;

  /** Every so many hues are asked for in full as well, which takes longest. */
  private static final int FULL_EVERY = 4;

  private WarmingUp() {}

  static List<MatchRequest> requests() {
    List<MatchRequest> requests = new ArrayList<>();
    for (int hue = 0; hue < HUES; hue++) {
      double angle = 2 * Math.PI * hue / HUES;
      double lightness = 30 + 40.0 * hue / HUES;
      Swatch target =
          new Swatch.OfLab(
              Lab.ofD65(lightness, CHROMA * Math.cos(angle), CHROMA * Math.sin(angle)));
      requests.add(MatchRequest.ofMoving(target));
      if (hue % FULL_EVERY == 0) {
        requests.add(MatchRequest.of(target));
      }
    }
    return requests;
  }
}
