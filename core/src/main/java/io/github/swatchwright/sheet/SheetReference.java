package io.github.swatchwright.sheet;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.photo.Chart;

/** What on the sheet has known colours, so that a photo's can be corrected. */
public sealed interface SheetReference {
  /** White copying paper, in the middle of what is sold (from memory): Y = 86 %, a little blue. */
  Lab USUAL_PAPER = Lab.ofD65(94.3, 0.8, -2.5);

  /**
   * The paper alone.
   *
   * @param colour its colour, relative to D65
   */
  record PaperWhite(Lab colour) implements SheetReference {
    /** Refuses what isn't white. */
    public PaperWhite {
      Require.within("L* of the paper", colour.l(), 70, 100);
    }
  }

  /**
   * A grey card on the place for it.
   *
   * @param luminance its Y, 1 to 100; 18 for most
   */
  record GreyCard(double luminance) implements SheetReference {
    /** Refuses what no neutral surface has. */
    public GreyCard {
      Require.within("luminance of the grey card in %", luminance, 1, 100);
    }
  }

  /**
   * A colour chart that fills the place for it.
   *
   * @param chart its patches
   */
  record ColourChart(Chart chart) implements SheetReference {}
}
