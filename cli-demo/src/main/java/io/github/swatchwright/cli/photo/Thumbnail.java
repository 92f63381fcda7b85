package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PixelRows;
import io.github.swatchwright.photo.Region;
import java.awt.image.BufferedImage;

/** A photo made small: the mean light of squares of pixels, as sRGB for a screen. */
final class Thumbnail implements PixelRows {
  private final RgbSpace space;
  private final int step;
  private final BufferedImage image;
  private final double[] sums;
  private double[] light = new double[0];
  private int row;

  private Thumbnail(Photo photo, int longest) {
    space = photo.space();
    step = Math.max(1, (Math.max(photo.width(), photo.height()) + longest - 1) / longest);
    int width = Math.max(1, photo.width() / step);
    int height = Math.max(1, photo.height() / step);
    image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    sums = new double[3 * width];
  }

  /**
   * A photo in an image.
   *
   * @param photo the photo
   * @param longest its longer side at most, pixels
   */
  static BufferedImage of(Photo photo, int longest) {
    Thumbnail thumbnail = new Thumbnail(photo, longest);
    photo.read(new Region(0, 0, photo.width(), photo.height()), thumbnail);
    return thumbnail.image;
  }

  @Override
  public void argb(int[] argb, int offset, int count) {
    levels(255);
    for (int x = 0; x / step < image.getWidth() && x < count; x++) {
      int p = argb[offset + x];
      add(x, p >> 16 & 0xFF, p >> 8 & 0xFF, p & 0xFF);
    }
    end();
  }

  @Override
  public void deepArgb(long[] argb, int offset, int count) {
    levels(0xFFFF);
    for (int x = 0; x / step < image.getWidth() && x < count; x++) {
      long p = argb[offset + x];
      add(x, (int) (p >> 32) & 0xFFFF, (int) (p >> 16) & 0xFFFF, (int) p & 0xFFFF);
    }
    end();
  }

  private void levels(int highest) {
    if (light.length == 0) {
      light = new double[highest + 1];
      for (int level = 0; level <= highest; level++) {
        light[level] = space.decode((double) level / highest);
      }
    }
  }

  private void add(int x, int r, int g, int b) {
    int at = 3 * (x / step);
    sums[at] += light[r];
    sums[at + 1] += light[g];
    sums[at + 2] += light[b];
  }

  private void end() {
    row++;
    int y = row / step - 1;
    if (row % step != 0 || y >= image.getHeight()) {
      return;
    }
    double pixels = (double) step * step;
    for (int x = 0; x < image.getWidth(); x++) {
      int at = 3 * x;
      LinearRgb mean =
          space.toLinearSrgb(sums[at] / pixels, sums[at + 1] / pixels, sums[at + 2] / pixels);
      image.setRGB(
          x,
          y,
          new LinearRgb(held(mean.red()), held(mean.green()), held(mean.blue()))
              .encode()
              .toPacked());
      sums[at] = 0;
      sums[at + 1] = 0;
      sums[at + 2] = 0;
    }
  }

  private static double held(double light) {
    return Math.max(0, Math.min(1, light));
  }
}
