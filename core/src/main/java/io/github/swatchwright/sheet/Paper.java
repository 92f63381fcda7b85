package io.github.swatchwright.sheet;

/** A size of paper, upright (ISO 216; ANSI/ASME Y14.1 for Letter). */
public enum Paper {
  /** 210 × 297 mm. */
  A4(210, 297),
  /** 148 × 210 mm. */
  A5(148, 210),
  /** 8.5 × 11 inches. */
  LETTER(215.9, 279.4);

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** Its width in millimetres. */
  public double width() {
    return width;
  }

  /** Its height in millimetres. */
  public double height() {
    return height;
  }

  /** Its name, as people write it: A4, A5 or Letter. */
  public String word() {
    return this == LETTER ? "Letter" : name();
  }
}
