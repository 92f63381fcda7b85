package io.github.swatchwright.sheet;

import io.github.swatchwright.argument.Printable;

/**
 * A field of a sheet: a printed black bar with bare paper at its right, and the zone for one stroke
 * of paint across both.
 *
 * @param label the name of a paint, or a mix behind {@value SheetPage#MIX}
 * @param black the printed black bar
 * @param paper the bare paper beside it
 * @param stroke where to paint: partly over the bar, partly over the paper, above and below both
 *     stay bare
 */
public record SheetField(String label, Area black, Area paper, Area stroke) {
  /** Strokes are ragged at their ends and sides. */
  private static final double RAGGED = 1.6;

  /** Refuses a stroke that leaves no bare black, or doesn't cross both halves. */
  public SheetField {
    if (stroke.top() <= black.top()
        || stroke.bottom() >= black.bottom()
        || stroke.left() >= black.right() - 3 * RAGGED
        || stroke.right() <= paper.left() + 3 * RAGGED
        || stroke.left() <= black.left()
        || paper.left() < black.right() - 1e-6) {
      throw new IllegalArgumentException(
          "the stroke of field "
              + Printable.quoted(label)
              + " must cross the black bar and the paper at its right, and leave black bare above"
              + " and below");
    }
  }

  /** Whether it is for a mix instead of a paint. */
  public boolean isMix() {
    return label.startsWith(SheetPage.MIX);
  }

  /** Paint over black that is read. */
  public Area readOverBlack() {
    return new Area(stroke.left(), stroke.top(), black.right() - stroke.left(), stroke.height())
        .inset(RAGGED, RAGGED);
  }

  /** Paint over paper that is read. */
  public Area readOverPaper() {
    return new Area(paper.left(), stroke.top(), stroke.right() - paper.left(), stroke.height())
        .inset(RAGGED, RAGGED);
  }
}
