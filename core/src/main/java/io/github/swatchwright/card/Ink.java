package io.github.swatchwright.card;

import io.github.swatchwright.colour.Lab;

/**
 * What a shape is filled with: the colour of a paint, which stays as it is, or an ink of the page,
 * which on a screen follows the reader's light or dark setting.
 *
 * @param hex on white paper, {@code #RRGGBB}
 * @param style what it is, in a word: {@code ink}, {@code faint}, {@code line}, {@code sheet}, or
 *     for a paint's colour {@code swatch}, {@code dot} or nothing
 * @param isPaint whether it is the colour of a paint
 */
public record Ink(String hex, String style, boolean isPaint) {
  /** Of letters. */
  public static final Ink BLACK = new Ink("#000000", "ink", false);

  /** Of letters that matter less. */
  public static final Ink SOFT = new Ink("#3A3A3A", "faint", false);

  /** Of thin lines. */
  public static final Ink RULE = new Ink("#8A8A8A", "line", false);

  /** The paper. */
  public static final Ink PAPER = new Ink("#FFFFFF", "sheet", false);

  /** A paint's colour, as a swatch, as drops, or as marks. */
  static Ink ofPaint(String hex, String style) {
    return new Ink(hex, style, true);
  }

  /** A paint's colour as a screen shows it. */
  static Ink ofPaint(Lab colour, String style) {
    return ofPaint(new ScreenColour(colour).hex(), style);
  }
}
