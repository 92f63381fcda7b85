package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PixelRows;
import io.github.swatchwright.photo.Region;
import java.util.Locale;

/**
 * A photo of a sheet in memory, 8 bits a channel, decoded once: four bytes a pixel. A photo of more
 * than {@value #MOST_PIXELS} pixels is made smaller while its rows come, by leaving out rows and
 * columns. Immutable.
 */
public final class SheetPhoto {
  /** The most pixels that are kept. */
  public static final int MOST_PIXELS = 25_000_000;

  /** In smaller photos marks can't be distinguished from dust. */
  public static final int FEWEST_ACROSS = 400;

  /** From that shorter side on, pixels, sheets are read about as surely as in larger photos. */
  private static final int AMPLE_ACROSS = 1800;

  /** A channel from this level on is clipped. */
  private static final int CLIPPED = 254;

  private final int width;
  private final int height;
  private final int[] argb;
  private final double[] light = new double[256];
  private final Photo photo;

  private SheetPhoto(Photo photo, int step) {
    this.photo = photo;
    width = photo.width() / step;
    height = photo.height() / step;
    argb = new int[width * height];
    for (int level = 0; level < light.length; level++) {
      light[level] = photo.space().decode(level / 255.0);
    }
  }

  /**
   * Reads a photo.
   *
   * @throws IllegalArgumentException when it is too small to show a sheet
   */
  public static SheetPhoto of(Photo photo) {
    if (Math.min(photo.width(), photo.height()) < FEWEST_ACROSS) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the photo has %d x %d pixels, must have at least %d each way; %d or more are best",
              photo.width(),
              photo.height(),
              FEWEST_ACROSS,
              AMPLE_ACROSS));
    }
    long pixels = (long) photo.width() * photo.height();
    int step = Math.max(1, (int) Math.ceil(Math.sqrt((double) pixels / MOST_PIXELS)));
    SheetPhoto sheet = new SheetPhoto(photo, step);
    photo.read(
        new Region(0, 0, photo.width(), photo.height()), new Rows(sheet.argb, sheet.width, step));
    return sheet;
  }

  /** What to add where a sheet isn't read: how large photos should be, when this one is small. */
  public String sizeAdvice() {
    return Math.min(width, height) >= AMPLE_ACROSS
        ? ""
        : String.format(
            Locale.ROOT,
            "; it has %d x %d pixels, photos of %d and more each way are read more surely",
            width,
            height,
            AMPLE_ACROSS);
  }

  /** Takes every step-th pixel of every step-th row. */
  private static final class Rows implements PixelRows {
    private final int[] argb;
    private final int width;
    private final int step;
    private int row;

    Rows(int[] argb, int width, int step) {
      this.argb = argb;
      this.width = width;
      this.step = step;
    }

    @Override
    public void argb(int[] from, int offset, int count) {
      int at = start();
      for (int x = 0; at >= 0 && x < width; x++) {
        argb[at + x] = from[offset + x * step];
      }
    }

    @Override
    public void deepArgb(long[] from, int offset, int count) {
      int at = start();
      for (int x = 0; at >= 0 && x < width; x++) {
        long p = from[offset + x * step];
        argb[at + x] =
            0xFF000000
                | ((int) (p >> 40) & 0xFF) << 16
                | ((int) (p >> 24) & 0xFF) << 8
                | ((int) (p >> 8) & 0xFF);
      }
    }

    /** Where the row goes, or -1. */
    private int start() {
      int here = row++;
      int at = here / step * width;
      return here % step == 0 && at + width <= argb.length ? at : -1;
    }
  }

  /** Columns that are kept. */
  public int width() {
    return width;
  }

  /** Rows that are kept. */
  public int height() {
    return height;
  }

  /** The grey level of a pixel, 0 to 255, as it is encoded. */
  public int grey(int x, int y) {
    return grey(argb[y * width + x]);
  }

  private static int grey(int p) {
    return (77 * (p >> 16 & 0xFF) + 151 * (p >> 8 & 0xFF) + 28 * (p & 0xFF)) >> 8;
  }

  /** A pixel as the file has it, {@code 0xAARRGGBB}; the nearest one to a place outside. */
  public int argb(double x, double y) {
    int column = (int) Math.max(0, Math.min(width - 1, Math.floor(x)));
    int row = (int) Math.max(0, Math.min(height - 1, Math.floor(y)));
    return argb[row * width + column];
  }

  /** The grey level between pixels, 0 to 255. */
  public double greyBetween(double x, double y) {
    double u = x - 0.5 - Math.floor(x - 0.5);
    double v = y - 0.5 - Math.floor(y - 0.5);
    double upper = (1 - u) * grey(argb(x - 0.5, y - 0.5)) + u * grey(argb(x + 0.5, y - 0.5));
    double lower = (1 - u) * grey(argb(x - 0.5, y + 0.5)) + u * grey(argb(x + 0.5, y + 0.5));
    return (1 - v) * upper + v * lower;
  }

  /**
   * The mean of a square of pixels.
   *
   * @param x its middle
   * @param y its middle
   * @param half pixels to each side of the middle one
   * @param into receives the mean linear light by channel, in the photo's own space
   * @return false when the square reaches outside, or one of its pixels is clipped
   */
  boolean mean(double x, double y, int half, double[] into) {
    int left = (int) Math.floor(x) - half;
    int top = (int) Math.floor(y) - half;
    int side = 2 * half + 1;
    into[0] = 0;
    into[1] = 0;
    into[2] = 0;
    if (left < 0 || top < 0 || left + side > width || top + side > height) {
      return false;
    }
    boolean clipped = false;
    for (int row = top; row < top + side; row++) {
      for (int at = row * width + left; at < row * width + left + side; at++) {
        int p = argb[at];
        int r = p >> 16 & 0xFF;
        int g = p >> 8 & 0xFF;
        int b = p & 0xFF;
        clipped |= Math.max(r, Math.max(g, b)) >= CLIPPED;
        into[0] += light[r];
        into[1] += light[g];
        into[2] += light[b];
      }
    }
    for (int channel = 0; channel < 3; channel++) {
      into[channel] /= side * side;
    }
    LinearRgb seen = photo.space().toLinearSrgb(into[0], into[1], into[2]);
    into[0] = seen.red();
    into[1] = seen.green();
    into[2] = seen.blue();
    return !clipped;
  }
}
