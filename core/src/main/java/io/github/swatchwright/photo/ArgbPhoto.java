package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.RgbSpace;

/** A picture in memory, 8 bits a channel. The pixels are shared, not copied. */
public final class ArgbPhoto implements Photo {
  private final int width;
  private final int height;
  private final int[] argb;
  private final RgbSpace space;

  /**
   * A picture.
   *
   * @param width columns
   * @param height rows
   * @param argb its pixels row by row, {@code 0xAARRGGBB}
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
    for (int y = region.y(); y < region.y() + region.height(); y++) {
      rows.argb(argb, y * width + region.x(), region.width());
    }
  }
}
