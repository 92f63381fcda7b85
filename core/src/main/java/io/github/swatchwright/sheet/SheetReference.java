package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.photo.Chart;

/** What on the sheet has known colours, so that a photo's can be corrected. */
public sealed interface SheetReference permits PaperWhite, GreyCard, ColourChart {
  /** White copying paper, in the middle of what is sold (from memory): Y = 86 %, a little blue. */
  Lab USUAL_PAPER = Lab.ofD65(94.3, 0.8, -2.5);

  /**
   * The paper alone.
   *
   * @param colour its colour, relative to D65; L* from 70 to 100
   */
  static SheetReference ofPaper(Lab colour) {
    return new PaperWhite(colour);
  }

  /**
   * A grey card on the place for it.
   *
   * @param luminance its Y, 1 to 100; 18 for most
   */
  static SheetReference ofGreyCard(double luminance) {
    return new GreyCard(luminance);
  }

  /**
   * A colour chart that fills the place for it.
   *
   * @param chart its patches
   */
  static SheetReference ofChart(Chart chart) {
    return new ColourChart(chart);
  }
}
