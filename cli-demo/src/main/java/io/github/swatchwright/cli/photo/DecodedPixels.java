package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.photo.PixelRows;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Optional;

/**
 * The pixels of a decoded picture, straight from its samples: what an image's own colour model says
 * of greys and profiles is not trusted. 16-bit samples stay, and so do results of a profile.
 */
final class DecodedPixels {
  private static final int TO_16_BITS = 257;

  private final Raster raster;
  private final boolean alpha;
  private final boolean deep;
  private final Optional<ColorConvertOp> toWide;

  private DecodedPixels(
      Raster raster, boolean alpha, boolean deep, Optional<ColorConvertOp> toWide) {
    this.raster = raster;
    this.alpha = alpha;
    this.deep = deep;
    this.toWide = toWide;
  }

  static DecodedPixels of(BufferedImage decoded, Optional<ICC_Profile> profile) {
    ColorModel model = decoded.getColorModel();
    if (model.getColorSpace().getType() == ColorSpace.TYPE_CMYK) {
      throw new IllegalArgumentException("is in CMYK, must be saved as RGB");
    }
    BufferedImage image = decoded;
    if (model instanceof IndexColorModel palette) {
      image = palette.convertToIntDiscrete(decoded.getRaster(), true);
    }
    Raster raster = image.getRaster();
    int type = raster.getDataBuffer().getDataType();
    boolean deep = type == DataBuffer.TYPE_USHORT && raster.getSampleModel().getSampleSize(0) == 16;
    for (int band = 0; band < raster.getNumBands(); band++) {
      int bits = raster.getSampleModel().getSampleSize(band);
      if (bits != (deep ? 16 : 8)) {
        throw new IllegalArgumentException("has " + bits + " bits a channel, must have 8 or 16");
      }
    }
    boolean alpha = image.getColorModel().hasAlpha();
    int colours = raster.getNumBands() - (alpha ? 1 : 0);
    if (colours != 1 && colours != 3) {
      throw new IllegalArgumentException("has " + colours + " channels, must have 1 or 3");
    }
    return new DecodedPixels(
        raster, alpha, deep, profile.map(embedded -> toWide(embedded, colours)));
  }

  private static ColorConvertOp toWide(ICC_Profile profile, int colours) {
    if (profile.getNumComponents() != colours) {
      throw new IllegalArgumentException(
          "has " + colours + " channels, but a profile for " + profile.getNumComponents());
    }
    ICC_Profile wide = ICC_Profile.getInstance(RgbProfile.of(RgbSpace.WIDE));
    return new ColorConvertOp(new ICC_Profile[] {profile, wide}, null);
  }

  void handTo(PixelRows rows) {
    int width = raster.getWidth();
    int bands = raster.getNumBands();
    int[] samples = new int[width * bands];
    int[] converted = new int[width * 3];
    int[] argb = new int[width];
    long[] deepArgb = new long[width];
    WritableRaster wide = Raster.createInterleavedRaster(DataBuffer.TYPE_USHORT, width, 1, 3, null);
    for (int y = 0; y < raster.getHeight(); y++) {
      raster.getPixels(raster.getMinX(), raster.getMinY() + y, width, 1, samples);
      if (toWide.isPresent()) {
        toWide.get().filter(colourBands(y), wide);
        wide.getPixels(0, 0, width, 1, converted);
        for (int x = 0; x < width; x++) {
          long opacity = alpha ? samples[x * bands + bands - 1] * (deep ? 1L : TO_16_BITS) : 0xFFFF;
          deepArgb[x] = packed(opacity, converted, 3 * x, 1);
        }
        rows.deepArgb(deepArgb, 0, width);
      } else {
        int next = bands >= 3 ? 1 : 0;
        for (int x = 0; x < width; x++) {
          long opacity = alpha ? samples[x * bands + bands - 1] : deep ? 0xFFFF : 0xFF;
          if (deep) {
            deepArgb[x] = packed(opacity, samples, x * bands, next);
          } else {
            int at = x * bands;
            argb[x] =
                ((int) opacity << 24)
                    | (samples[at] << 16)
                    | (samples[at + next] << 8)
                    | samples[at + 2 * next];
          }
        }
        if (deep) {
          rows.deepArgb(deepArgb, 0, width);
        } else {
          rows.argb(argb, 0, width);
        }
      }
    }
  }

  private Raster colourBands(int y) {
    int[] bands = raster.getNumBands() >= 3 ? new int[] {0, 1, 2} : new int[] {0};
    return raster.createChild(
        raster.getMinX(), raster.getMinY() + y, raster.getWidth(), 1, 0, 0, bands);
  }

  private static long packed(long opacity, int[] samples, int at, int next) {
    return (opacity << 48)
        | ((long) samples[at] << 32)
        | ((long) samples[at + next] << 16)
        | samples[at + 2 * next];
  }
}
