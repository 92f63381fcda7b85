package io.github.swatchwright.cli.photo;

import io.github.swatchwright.photo.Region;
import java.awt.Rectangle;

/**
 * From the upright picture to the stored one (EXIF 2.32, tag Orientation): 2 to 4 mirror and turn
 * by half, 5 to 8 exchange rows and columns.
 *
 * @param orientation 1 to 8
 * @param storedWidth columns as stored
 * @param storedHeight rows as stored
 */
record Turn(int orientation, int storedWidth, int storedHeight) {

  /** Whether rows are stored as columns. */
  boolean exchanges() {
    return orientation >= 5;
  }

  /** Columns of the upright picture. */
  int width() {
    return exchanges() ? storedHeight : storedWidth;
  }

  /** Rows of the upright picture. */
  int height() {
    return exchanges() ? storedWidth : storedHeight;
  }

  /** Whether stored columns, or stored rows, run against the upright picture. */
  boolean fromEnd(boolean rows) {
    return switch (orientation) {
      case 2, 8 -> !rows;
      case 3, 7 -> true;
      case 4, 6 -> rows;
      default -> false;
    };
  }

  /** Where a region of the upright picture is stored. */
  Rectangle stored(Region region) {
    boolean fromRight = fromEnd(false);
    boolean fromBottom = fromEnd(true);
    int along = exchanges() ? region.y() : region.x();
    int down = exchanges() ? region.x() : region.y();
    int columns = exchanges() ? region.height() : region.width();
    int rows = exchanges() ? region.width() : region.height();
    return new Rectangle(
        fromRight ? storedWidth - along - columns : along,
        fromBottom ? storedHeight - down - rows : down,
        columns,
        rows);
  }
}
