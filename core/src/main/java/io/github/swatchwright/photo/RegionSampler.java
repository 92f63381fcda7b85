package io.github.swatchwright.photo;

import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Counts the pixels of a region in one pass, in constant memory and without an object a pixel, and
 * gives their mean in linear light. Pixels that tell no colour are left out: not wholly opaque,
 * clipped (a channel at its end), or near black (all channels in the noise).
 *
 * <p>Mutable, for one region and one thread.
 */
public final class RegionSampler implements PixelRows {
  /** A channel from this 8-bit level on is clipped. */
  static final int CLIPPED = 254;

  /** A pixel whose channels are all below this 8-bit level is near black. */
  static final int NEAR_BLACK = 8;

  /** A channel up to this 8-bit level is at its lower end. */
  static final int CRUSHED = 1;

  private static final int DEEP = 257;

  private final Region region;
  private final RgbSpace space;
  private final int clippedFrom;
  private final int nearBlackBelow;
  private final boolean fenced;
  private final PixelDraw draw = new PixelDraw();
  private ChannelCounts red = new ChannelCounts(256);
  private ChannelCounts green = new ChannelCounts(256);
  private ChannelCounts blue = new ChannelCounts(256);
  private long transparent;
  private long clipped;
  private long nearBlack;
  private long used;
  private long crushed;

  /**
   * A sampler that has seen nothing yet.
   *
   * @param region the region, for messages
   * @param space the colour space of the pixels to come
   */
  public RegionSampler(Region region, RgbSpace space) {
    this(region, space, CLIPPED, NEAR_BLACK, true);
  }

  private RegionSampler(
      Region region, RgbSpace space, int clippedFrom, int nearBlackBelow, boolean fenced) {
    this.region = region;
    this.space = space;
    this.clippedFrom = clippedFrom;
    this.nearBlackBelow = nearBlackBelow;
    this.fenced = fenced;
  }

  /** A sampler that leaves out none but transparent pixels: the plain mean in linear light. */
  public static RegionSampler ofEverything(Region region, RgbSpace space) {
    return new RegionSampler(region, space, 256, 0, false);
  }

  /**
   * Samples a region of a picture.
   *
   * @throws IllegalArgumentException when the region isn't wholly inside the picture, or too few of
   *     its pixels tell a colour
   */
  public static RegionSample sample(Photo photo, Region region) {
    return over(photo, region).result();
  }

  /**
   * Samples a region of a picture; empty when too few of its pixels tell a colour, as on white
   * paper or in deep shadow. For live use, where that happens at every other step of the pointer.
   *
   * @throws IllegalArgumentException when the region isn't wholly inside the picture
   */
  public static Optional<RegionSample> trySample(Photo photo, Region region) {
    RegionSampler sampler = over(photo, region);
    return sampler.tellsColour() ? Optional.of(sampler.result()) : Optional.empty();
  }

  private static RegionSampler over(Photo photo, Region region) {
    region.checkInside(photo.width(), photo.height());
    RegionSampler sampler = new RegionSampler(region, photo.space());
    photo.read(region, sampler);
    return sampler;
  }

  @Override
  public void argb(int[] argb, int offset, int count) {
    int[] reds = red.counts;
    int[] greens = green.counts;
    int[] blues = blue.counts;
    if (reds.length != 256) {
      throw new IllegalStateException("the region has rows of 16 bits a channel already");
    }
    int clipHere = clippedFrom;
    int darkHere = nearBlackBelow;
    int see = 0;
    int clip = 0;
    int dark = 0;
    int flat = 0;
    int end = offset + count;
    for (int i = offset; i < end; i++) {
      int p = argb[i];
      int r = p >> 16 & 0xFF;
      int g = p >> 8 & 0xFF;
      int b = p & 0xFF;
      int highest = Math.max(r, Math.max(g, b));
      if (p >>> 24 != 0xFF) {
        see++;
      } else if (highest >= clipHere) {
        clip++;
      } else if (highest < darkHere) {
        dark++;
      } else {
        flat += Math.min(r, Math.min(g, b)) <= CRUSHED ? 1 : 0;
        reds[r]++;
        greens[g]++;
        blues[b]++;
      }
    }
    for (int i = draw.wanted(count); i >= 0; i = draw.wanted(count)) {
      draw.keep(widened(argb[offset + i]));
    }
    crushed += flat;
    tally(see, clip, dark, count);
  }

  @Override
  public void deepArgb(long[] argb, int offset, int count) {
    if (red.counts.length == 256) {
      deepen();
    }
    int clipHere = clippedFrom * DEEP;
    int darkHere = nearBlackBelow * DEEP;
    int see = 0;
    int clip = 0;
    int dark = 0;
    int flat = 0;
    for (int i = offset; i < offset + count; i++) {
      long p = argb[i];
      int r = (int) (p >> 32) & 0xFFFF;
      int g = (int) (p >> 16) & 0xFFFF;
      int b = (int) p & 0xFFFF;
      int highest = Math.max(r, Math.max(g, b));
      if (p >>> 48 != 0xFFFF) {
        see++;
      } else if (highest >= clipHere) {
        clip++;
      } else if (highest < darkHere) {
        dark++;
      } else {
        flat += Math.min(r, Math.min(g, b)) <= CRUSHED * DEEP ? 1 : 0;
        red.counts[r]++;
        green.counts[g]++;
        blue.counts[b]++;
      }
    }
    for (int i = draw.wanted(count); i >= 0; i = draw.wanted(count)) {
      draw.keep(argb[offset + i]);
    }
    crushed += flat;
    tally(see, clip, dark, count);
  }

  private void deepen() {
    if (transparent + clipped + nearBlack + used > 0) {
      throw new IllegalStateException("the region has rows of 8 bits a channel already");
    }
    red = new ChannelCounts(1 << 16);
    green = new ChannelCounts(1 << 16);
    blue = new ChannelCounts(1 << 16);
  }

  private void tally(int see, int clip, int dark, int count) {
    transparent += see;
    clipped += clip;
    nearBlack += dark;
    used += count - see - clip - dark;
    draw.passed(count);
  }

  /** Whether enough of the pixels seen so far tell a colour. */
  boolean tellsColour() {
    long all = transparent + clipped + nearBlack + used;
    return used >= RegionSample.FEWEST_PIXELS && used >= RegionSample.LEAST_USED * all;
  }

  /**
   * What the pixels seen so far come to.
   *
   * @throws IllegalArgumentException when too few of them tell a colour
   */
  public RegionSample result() {
    double all = transparent + clipped + nearBlack + used;
    PixelShares seen =
        new PixelShares(
            used / all, clipped / all, nearBlack / all, transparent / all, 0, crushed / all);
    if (!tellsColour()) {
      throw new IllegalArgumentException(
          "the region " + region.toText() + " tells no colour: " + reason(seen, all));
    }
    ChannelCounts.Mean r = red.mean(space, fenced);
    ChannelCounts.Mean g = green.mean(space, fenced);
    ChannelCounts.Mean b = blue.mean(space, fenced);
    double kept = Math.min(r.kept(), Math.min(g.kept(), b.kept()));
    PixelShares shares =
        new PixelShares(
            kept / all,
            seen.clipped(),
            seen.nearBlack(),
            seen.transparent(),
            (used - kept) / all,
            seen.crushed());
    LinearRgb mean = space.toLinearSrgb(r.mean(), g.mean(), b.mean());
    return new RegionSample(region, mean, shares, drawn());
  }

  /** Why too few pixels are left: the commonest cause first, then what became of the pixels. */
  private static String reason(PixelShares seen, double all) {
    String cause =
        all < RegionSample.FEWEST_PIXELS
            ? "it has fewer than " + RegionSample.FEWEST_PIXELS + " pixels"
            : seen.clipped() >= Math.max(seen.nearBlack(), seen.transparent())
                ? "it is overexposed or pure white, so that its brightness is lost"
                : seen.nearBlack() >= seen.transparent()
                    ? "it is too dark to tell from noise"
                    : "it is transparent";
    return cause + "; of its pixels " + seen.toText();
  }

  private List<LinearRgb> drawn() {
    List<LinearRgb> pixels = new ArrayList<>();
    for (long p : draw.pixels()) {
      int r = (int) (p >> 32) & 0xFFFF;
      int g = (int) (p >> 16) & 0xFFFF;
      int b = (int) p & 0xFFFF;
      int highest = Math.max(r, Math.max(g, b));
      if (p >>> 48 == 0xFFFF && highest < clippedFrom * DEEP && highest >= nearBlackBelow * DEEP) {
        pixels.add(space.toLinearSrgb(light(r), light(g), light(b)));
      }
    }
    return pixels;
  }

  private double light(int level) {
    return space.decode(level / 65535.0);
  }

  private static long widened(int argb) {
    long p = Integer.toUnsignedLong(argb);
    long a = p >> 24;
    long r = p >> 16 & 0xFF;
    long g = p >> 8 & 0xFF;
    long b = p & 0xFF;
    return DEEP * ((a << 48) | (r << 32) | (g << 16) | b);
  }
}
