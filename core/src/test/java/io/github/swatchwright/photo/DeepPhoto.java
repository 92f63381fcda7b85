package io.github.swatchwright.photo;

import io.github.swatchwright.colour.RgbSpace;

/**
 * A picture of 8 bits a channel, handed out with 16: each level 257 times as high, which is the
 * same light.
 *
 * @param shallow the picture
 */
record DeepPhoto(ArgbPhoto shallow) implements Photo {
  @Override
  public int width() {
    return shallow.width();
  }

  @Override
  public int height() {
    return shallow.height();
  }

  @Override
  public RgbSpace space() {
    return shallow.space();
  }

  @Override
  public void read(Region region, PixelRows rows) {
    shallow.read(
        region,
        new PixelRows() {
          @Override
          public void argb(int[] argb, int offset, int count) {
            long[] deep = new long[count];
            for (int i = 0; i < count; i++) {
              for (int shift = 24; shift >= 0; shift -= 8) {
                deep[i] = deep[i] << 16 | 257L * (argb[offset + i] >>> shift & 0xFF);
              }
            }
            rows.deepArgb(deep, 0, count);
          }

          @Override
          public void deepArgb(long[] argb, int offset, int count) {
            throw new IllegalStateException("the picture has 8 bits a channel");
          }
        });
  }
}
