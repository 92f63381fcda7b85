package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import java.util.Locale;

/**
 * What became of a region's pixels, as shares of all of them.
 *
 * @param used in the mean
 * @param clipped left out because a channel is at its end, as in highlights
 * @param nearBlack left out because they are lost in the noise
 * @param transparent left out because they aren't opaque
 * @param stray left out because they lie far from the others
 * @param crushed in the mean, but with a channel at its lower end: the colour is stronger than the
 *     file can hold
 */
public record PixelShares(
    double used,
    double clipped,
    double nearBlack,
    double transparent,
    double stray,
    double crushed) {

  /** Refuses shares outside 0 to 1. */
  public PixelShares {
    Require.within("used", used, 0, 1);
    Require.within("clipped", clipped, 0, 1);
    Require.within("nearBlack", nearBlack, 0, 1);
    Require.within("transparent", transparent, 0, 1);
    Require.within("stray", stray, 0, 1);
    Require.within("crushed", crushed, 0, 1);
  }

  /** Whether most of the pixels in the mean have a stronger colour than the file can hold. */
  public boolean isCrushed() {
    return crushed > used / 2;
  }

  /** The shares in words, rounded to percent. */
  public String toText() {
    return String.format(
        Locale.ROOT,
        "%.0f %% usable, %.0f %% clipped, %.0f %% near black, %.0f %% transparent, %.0f %% stray",
        100 * used,
        100 * clipped,
        100 * nearBlack,
        100 * transparent,
        100 * stray);
  }
}
