package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import java.util.Locale;
import java.util.Optional;

/**
 * A rectangle of a picture, in pixels of the upright picture.
 *
 * @param x column of its left edge, from 0
 * @param y row of its top edge, from 0
 * @param width columns, at least 1
 * @param height rows, at least 1
 */
public record Region(int x, int y, int width, int height) {

  private static final int LARGEST = 1 << 20;

  /** Refuses a rectangle without area, and one that no picture holds. */
  public Region {
    Require.within("x of the region", x, 0, LARGEST);
    Require.within("y of the region", y, 0, LARGEST);
    Require.within("width of the region", width, 1, LARGEST);
    Require.within("height of the region", height, 1, LARGEST);
  }

  /**
   * Reads {@code x,y,w,h}: pixels, or percent of the picture's width and height where a number ends
   * with {@code %}.
   *
   * @param text the four numbers
   * @param pictureWidth of the picture, pixels
   * @param pictureHeight of the picture, pixels
   * @throws IllegalArgumentException when the text has another form, or the region is empty or not
   *     wholly inside the picture
   */
  public static Region parse(String text, int pictureWidth, int pictureHeight) {
    String[] parts = text.split(",", -1);
    if (parts.length != 4) {
      throw new IllegalArgumentException(
          Printable.quoted(text) + " is not a region of the form x,y,w,h in pixels or percent");
    }
    double left = pixels(parts[0], text, pictureWidth);
    double top = pixels(parts[1], text, pictureHeight);
    long x = Math.round(left);
    long y = Math.round(top);
    long right = Math.round(left + pixels(parts[2], text, pictureWidth));
    long bottom = Math.round(top + pixels(parts[3], text, pictureHeight));
    if (right <= x || bottom <= y) {
      throw new IllegalArgumentException(
          "the region "
              + Printable.quoted(text)
              + " is empty, must be at least 1 pixel wide and high");
    }
    if (x < 0 || y < 0 || right > pictureWidth || bottom > pictureHeight) {
      throw outside(text, pictureWidth, pictureHeight);
    }
    return new Region((int) x, (int) y, (int) (right - x), (int) (bottom - y));
  }

  private static double pixels(String part, String text, int full) {
    String trimmed = part.trim();
    boolean percent = trimmed.endsWith("%");
    try {
      double number =
          Double.parseDouble(percent ? trimmed.substring(0, trimmed.length() - 1) : trimmed);
      double pixels = percent ? number / 100 * full : number;
      return Require.within(
          Printable.quoted(part) + " in the region " + Printable.quoted(text), pixels, -1e9, 1e9);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          Printable.quoted(part)
              + " in the region "
              + Printable.quoted(text)
              + " is not a number of pixels or percent",
          e);
    }
  }

  /**
   * The square about a pixel, as far as it lies inside a picture; empty when the pixel doesn't.
   *
   * @param x column of the pixel
   * @param y row of the pixel
   * @param reach pixels to either side, 0 to 1000
   * @param pictureWidth of the picture, pixels
   * @param pictureHeight of the picture, pixels
   */
  public static Optional<Region> around(
      int x, int y, int reach, int pictureWidth, int pictureHeight) {
    Require.within("reach", reach, 0, 1000);
    if (x < 0 || y < 0 || x >= pictureWidth || y >= pictureHeight) {
      return Optional.empty();
    }
    int left = Math.max(0, x - reach);
    int top = Math.max(0, y - reach);
    return new Region(left, top, x + reach + 1 - left, y + reach + 1 - top)
        .clippedTo(pictureWidth, pictureHeight);
  }

  /**
   * The part of this region that lies inside a picture; empty when none of it does.
   *
   * @param pictureWidth of the picture, pixels
   * @param pictureHeight of the picture, pixels
   */
  public Optional<Region> clippedTo(int pictureWidth, int pictureHeight) {
    int right = Math.min(x + width, pictureWidth);
    int bottom = Math.min(y + height, pictureHeight);
    return right > x && bottom > y
        ? Optional.of(new Region(x, y, right - x, bottom - y))
        : Optional.empty();
  }

  /** Refuses a region that isn't wholly inside a picture of that many pixels. */
  void checkInside(int pictureWidth, int pictureHeight) {
    if (x + width > pictureWidth || y + height > pictureHeight) {
      throw outside(toText(), pictureWidth, pictureHeight);
    }
  }

  private static IllegalArgumentException outside(String text, int width, int height) {
    return new IllegalArgumentException(
        "the region "
            + Printable.quoted(text)
            + " reaches outside the picture, which is "
            + width
            + " x "
            + height
            + " pixels");
  }

  /** How many pixels it has. */
  public long pixels() {
    return (long) width * height;
  }

  /** The region as {@link #parse} reads it. */
  public String toText() {
    return String.format(Locale.ROOT, "%d,%d,%d,%d", x, y, width, height);
  }
}
