package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.RgbSpace;
import java.util.Arrays;

/** A picture in memory, 8 bits a channel. The pixels are shared, not copied. */
public final class ArgbPhoto implements Photo {
  private final int width;
  private final int height;
  private final int[] argb;
  private final RgbSpace space;

  /**
   * A picture whose pixels may be transparent.
   *
   * @param width columns
   * @param height rows
   * @param argb its pixels row by row, {@code 0xAARRGGBB}; see {@link #opaque} for pixels without
   *     an alpha byte
   * @param space their colour space
   */
  public ArgbPhoto(int width, int height, int[] argb, RgbSpace space) {
    this.width = Require.within("width", width, 1, Integer.MAX_VALUE);
    this.height = Require.within("height", height, 1, Integer.MAX_VALUE);
    if (argb.length != (long) width * height) {
      throw new IllegalArgumentException(
          "argb has " + argb.length + " pixels, must have " + (long) width * height);
    }
    this.argb = argb;
    this.space = space;
  }

  /**
   * A picture without transparency, from pixels whose highest byte means nothing, as many image
   * types have them. The pixels are copied.
   *
   * @param width columns
   * @param height rows
   * @param rgb its pixels row by row, {@code 0x??RRGGBB}
   * @param space their colour space
   */
  public static ArgbPhoto opaque(int width, int height, int[] rgb, RgbSpace space) {
    return new ArgbPhoto(
        width, height, Arrays.stream(rgb).map(pixel -> pixel | 0xFF000000).toArray(), space);
  }

  @Override
  public int width() {
    return width;
  }

  @Override
  public int height() {
    return height;
  }

  @Override
  public RgbSpace space() {
    return space;
  }

  @Override
  public void read(Region region, PixelRows rows) {
    region.checkInside(width, height);
    for (int y = region.y(); y < region.y() + region.height(); y++) {
      rows.argb(argb, y * width + region.x(), region.width());
    }
  }
}
