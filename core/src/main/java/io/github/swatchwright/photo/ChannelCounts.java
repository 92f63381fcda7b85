package io.github.swatchwright.photo;

import io.github.swatchwright.colour.RgbSpace;

/**
 * How often each level of one encoded channel occurs, and the mean of the light that the levels
 * stand for. Levels outside Tukey's fences (Exploratory Data Analysis, 1977: beyond the quartiles
 * by more than 1.5 times their distance) are left out of the mean, so that up to a quarter of stray
 * pixels can't pull it, while a texture of two colours keeps both.
 */
final class ChannelCounts {
  private static final double FENCE = 1.5;

  /**
   * The least distance of the quartiles, 8-bit levels: the grain of such pictures is no outlier.
   */
  private static final int LEAST_QUARTILE_DISTANCE = 3;

  final int[] counts;

  ChannelCounts(int levels) {
    counts = new int[levels];
  }

  /**
   * What a channel comes to.
   *
   * @param mean linear light
   * @param kept how many values are within the fences
   */
  record Mean(double mean, long kept) {}

  Mean mean(RgbSpace space, boolean fenced) {
    int last = counts.length - 1;
    double low = 0;
    double high = last;
    if (fenced) {
      int lower = level(0.25);
      int upper = level(0.75);
      // In levels, which are exact in doubles: what lies just on a fence is kept.
      double reach = FENCE * Math.max(LEAST_QUARTILE_DISTANCE * (last / 255), upper - lower);
      low = lower - reach;
      high = upper + reach;
    }
    double sum = 0;
    long kept = 0;
    for (int level = 0; level <= last; level++) {
      if (counts[level] > 0 && level >= low && level <= high) {
        sum += counts[level] * space.decode((double) level / last);
        kept += counts[level];
      }
    }
    return new Mean(sum / kept, kept);
  }

  /** The level at or below which that share of the values lies. */
  private int level(double share) {
    long total = 0;
    for (int count : counts) {
      total += count;
    }
    long wanted = (long) Math.ceil(share * total);
    long passed = 0;
    for (int level = 0; level < counts.length; level++) {
      passed += counts[level];
      if (passed >= wanted && passed > 0) {
        return level;
      }
    }
    return counts.length - 1;
  }
}
