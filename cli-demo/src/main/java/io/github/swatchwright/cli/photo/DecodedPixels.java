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
import java.util.Optional;

/**
 * The pixels of a decoded picture, straight from its samples: what an image's own colour model says
 * of greys and profiles is not trusted. 16-bit samples stay, and so do results of a profile. Greys
 * have one channel, colours three, inks four.
 */
final class DecodedPixels {
  private static final int TO_16_BITS = 257;
  private static final int INKS = 4;

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
    if (model instanceof IndexColorModel palette) {
      BufferedImage image = palette.convertToIntDiscrete(decoded.getRaster(), true);
      return of(image.getRaster(), image.getColorModel().hasAlpha(), profile);
    }
    if (model.getColorSpace().getType() == ColorSpace.TYPE_CMYK && profile.isEmpty()) {
      throw inksWithoutProfile();
    }
    return of(decoded.getRaster(), model.hasAlpha(), profile);
  }

  /** Inks look as their printer makes them look, which the profile alone tells. */
  static IllegalArgumentException inksWithoutProfile() {
    return new PhotoRefusal(
        "is in CMYK without a colour profile, must have one or be saved as RGB");
  }

  /** Samples as they are stored; of inks, the highest is full ink. */
  static DecodedPixels of(Raster raster, boolean alpha, Optional<ICC_Profile> profile) {
    int type = raster.getDataBuffer().getDataType();
    boolean deep = type == DataBuffer.TYPE_USHORT && raster.getSampleModel().getSampleSize(0) == 16;
    for (int band = 0; band < raster.getNumBands(); band++) {
      int bits = raster.getSampleModel().getSampleSize(band);
      if (bits != (deep ? 16 : 8)) {
        throw new PhotoRefusal("has " + bits + " bits a channel, must have 8 or 16");
      }
    }
    int colours = raster.getNumBands() - (alpha ? 1 : 0);
    if (colours != 1 && colours != 3 && !(colours == INKS && profile.isPresent())) {
      throw new PhotoRefusal("has " + colours + " channels, must have 1 or 3");
    }
    return new DecodedPixels(
        raster, alpha, deep, profile.map(embedded -> toWide(embedded, colours)));
  }

  private static ColorConvertOp toWide(ICC_Profile profile, int colours) {
    if (profile.getNumComponents() != colours) {
      throw new PhotoRefusal(
          "has " + colours + " channels, but a profile for " + profile.getNumComponents());
    }
    ICC_Profile wide = ICC_Profile.getInstance(RgbProfile.of(RgbSpace.WIDE));
    return new ColorConvertOp(new ICC_Profile[] {profile, wide}, null);
  }

  /** Hands over the rows of the upright picture. */
  void handTo(PixelRows rows, Turn turn) {
    UprightRows upright = new UprightRows(raster, turn);
    int[] samples = new int[upright.width() * raster.getNumBands()];
    int colours = raster.getNumBands() - (alpha ? 1 : 0);
    Optional<ProfiledRow> profiled = toWide.map(op -> new ProfiledRow(op, colours, deep));
    int[] argb = new int[upright.width()];
    long[] deepArgb = new long[upright.width()];
    for (int y = 0; y < upright.height(); y++) {
      upright.row(y, samples);
      if (profiled.isPresent()) {
        pack(profiled.get().convert(samples, raster.getNumBands()), 3, samples, deepArgb);
        rows.deepArgb(deepArgb, 0, deepArgb.length);
      } else if (deep) {
        pack(samples, raster.getNumBands(), samples, deepArgb);
        rows.deepArgb(deepArgb, 0, deepArgb.length);
      } else {
        pack(samples, argb);
        rows.argb(argb, 0, argb.length);
      }
    }
  }

  private void pack(int[] samples, int[] argb) {
    int bands = raster.getNumBands();
    int next = bands >= 3 ? 1 : 0;
    for (int x = 0, at = 0; x < argb.length; x++, at += bands) {
      int opacity = alpha ? samples[at + bands - 1] : 0xFF;
      argb[x] =
          opacity << 24 | samples[at] << 16 | samples[at + next] << 8 | samples[at + 2 * next];
    }
  }

  private void pack(int[] colours, int step, int[] samples, long[] argb) {
    int bands = raster.getNumBands();
    int next = step >= 3 ? 1 : 0;
    for (int x = 0; x < argb.length; x++) {
      long opacity = 0xFFFF;
      if (alpha) {
        opacity = samples[x * bands + bands - 1] * (deep ? 1L : TO_16_BITS);
      }
      int at = x * step;
      argb[x] =
          opacity << 48
              | (long) colours[at] << 32
              | (long) colours[at + next] << 16
              | colours[at + 2 * next];
    }
  }
}
