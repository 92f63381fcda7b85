package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.Region;
import java.util.Locale;

/** A square of a photo, given by its middle and half its side. */
final class SquareAt {
  /** No picture is larger, pixels. */
  private static final double LARGEST = 1e6;

  private SquareAt() {}

  /**
   * Reads a place.
   *
   * @param text {@code x,y} in pixels or percent
   * @param radius half the side, in pixels or in percent of the shorter side
   * @throws IllegalArgumentException when either has another form, or the square reaches out of the
   *     picture
   */
  static Region parse(String text, String radius, Photo photo) {
    String[] parts = text.split(",", -1);
    if (parts.length != 2) {
      throw new IllegalArgumentException(
          "--at: " + Printable.quoted(text) + " isn't of the form x,y in pixels or percent");
    }
    double half =
        Math.max(0.5, pixels("--radius", radius, Math.min(photo.width(), photo.height())));
    double left = pixels("--at", parts[0], photo.width()) - half;
    double top = pixels("--at", parts[1], photo.height()) - half;
    if (left < 0 || top < 0 || left + 2 * half > photo.width() || top + 2 * half > photo.height()) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "--at: %s, %.0f pixels to each side, reaches outside the picture, which is %d x %d"
                  + " pixels",
              Printable.quoted(text),
              half,
              photo.width(),
              photo.height()));
    }
    String square = String.format(Locale.ROOT, "%f,%f,%f,%f", left, top, 2 * half, 2 * half);
    return Region.parse(square, photo.width(), photo.height());
  }

  private static double pixels(String option, String text, int whole) {
    String number = text.strip();
    boolean isShare = number.endsWith("%");
    try {
      double value =
          Double.parseDouble(isShare ? number.substring(0, number.length() - 1) : number);
      if (!(Math.abs(value) <= LARGEST)) {
        throw new IllegalArgumentException(
            option + ": " + Printable.quoted(text) + " is too large, or no number");
      }
      return isShare ? value / 100 * whole : value;
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          option + ": " + Printable.quoted(text) + " is not a number of pixels or percent", e);
    }
  }
}
