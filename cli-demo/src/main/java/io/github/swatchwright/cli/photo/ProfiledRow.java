package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.RgbSpace;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Arrays;
import java.util.Random;

/**
 * Rows of a picture through a colour profile, into 16 bits of {@link RgbSpace#WIDE}.
 *
 * <p>The light of most RGB profiles, which are three curves and a matrix, is the sum of what each
 * channel gives. Where colours drawn at random show that, 8-bit pictures are added up from three
 * small tables made by the platform's colour management; all else goes through it.
 */
final class ProfiledRow {
  private static final int LEVELS = 256;
  private static final int TRIED = 256;

  /** In steps of 16 bits: a quarter of an 8-bit one, for rounding of summands in dark colours. */
  private static final int ALIKE = 64;

  /** What the other channels have while one is tabulated, so that no sum is cut off at 0. */
  private static final int BASE = 96;

  /** Encoded levels by the square root of light. */
  private static final int[] ENCODED = encoded();

  private final ColorConvertOp op;
  private final boolean deep;
  private final int channels;
  private final float[] parts = new float[9 * LEVELS];
  private final boolean additive;
  private int[] wide = new int[0];

  /**
   * Rows through a profile.
   *
   * @param op from the profile to the wide space
   * @param channels of the picture, without alpha
   * @param deep whether they have 16 bits instead of 8
   */
  ProfiledRow(ColorConvertOp op, int channels, boolean deep) {
    this.op = op;
    this.channels = channels;
    this.deep = deep;
    this.additive = channels == 3 && !deep && addsUp();
  }

  private static int[] encoded() {
    int[] levels = new int[1 << 16];
    for (int i = 0; i < levels.length; i++) {
      double root = i / 65535.0;
      levels[i] = (int) Math.round(65535 * RgbSpace.WIDE.encode(root * root));
    }
    return levels;
  }

  private boolean addsUp() {
    int[] ramps = new int[9 * LEVELS];
    Arrays.fill(ramps, BASE);
    for (int channel = 0; channel < 3; channel++) {
      for (int level = 0; level < LEVELS; level++) {
        ramps[3 * (channel * LEVELS + level) + channel] = level;
      }
    }
    int[] converted = managed(ramps);
    for (int i = 0; i < converted.length; i++) {
      double base = RgbSpace.WIDE.decode(converted[3 * BASE + i % 3] / 65535.0);
      parts[i] = (float) (RgbSpace.WIDE.decode(converted[i] / 65535.0) - base * 2 / 3);
    }
    Random random = new Random(1);
    int[] tried = random.ints(3L * TRIED, 0, LEVELS).toArray();
    int[] exact = managed(tried);
    int[] added = new int[tried.length];
    add(tried, 3, added);
    for (int i = 0; i < exact.length; i++) {
      if (Math.abs(exact[i] - added[i]) > ALIKE) {
        return false;
      }
    }
    return true;
  }

  /**
   * Converts pixels.
   *
   * @param samples channel by channel, alpha among them
   * @param bands channels of a pixel, with alpha
   * @return red, green and blue, pixel by pixel, until the next call
   */
  int[] convert(int[] samples, int bands) {
    if (additive) {
      int length = samples.length / bands * 3;
      wide = wide.length == length ? wide : new int[length];
      add(samples, bands, wide);
      return wide;
    }
    int[] colours = samples;
    if (bands != channels) {
      colours = new int[samples.length / bands * channels];
      for (int i = 0; i < colours.length; i++) {
        colours[i] = samples[i / channels * bands + i % channels];
      }
    }
    return managed(colours);
  }

  private void add(int[] samples, int bands, int[] sums) {
    for (int at = 0, to = 0; to < sums.length; at += bands, to += 3) {
      int r = 3 * samples[at];
      int g = 3 * (LEVELS + samples[at + 1]);
      int b = 3 * (2 * LEVELS + samples[at + 2]);
      sums[to] = level(parts[r] + parts[g] + parts[b]);
      sums[to + 1] = level(parts[r + 1] + parts[g + 1] + parts[b + 1]);
      sums[to + 2] = level(parts[r + 2] + parts[g + 2] + parts[b + 2]);
    }
  }

  private static int level(float light) {
    return ENCODED[Math.min(65535, (int) (65535 * (float) Math.sqrt(Math.max(0, light)) + 0.5f))];
  }

  private int[] managed(int[] colours) {
    int width = colours.length / channels;
    int type = deep ? DataBuffer.TYPE_USHORT : DataBuffer.TYPE_BYTE;
    WritableRaster from = Raster.createInterleavedRaster(type, width, 1, channels, null);
    WritableRaster to = Raster.createInterleavedRaster(DataBuffer.TYPE_USHORT, width, 1, 3, null);
    from.setPixels(0, 0, width, 1, colours);
    op.filter(from, to);
    return to.getPixels(0, 0, width, 1, (int[]) null);
  }
}
