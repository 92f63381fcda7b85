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

  private boolean exchanges() {
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

  /** Where a region of the upright picture is stored. */
  Rectangle stored(Region region) {
    boolean fromRight =
        exchanges() ? orientation == 7 || orientation == 8 : orientation == 2 || orientation == 3;
    boolean fromBottom =
        exchanges() ? orientation == 6 || orientation == 7 : orientation == 3 || orientation == 4;
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
