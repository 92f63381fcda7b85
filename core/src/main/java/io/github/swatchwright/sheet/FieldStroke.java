package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Drawdown;
import io.github.swatchwright.paint.Swatch;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a photo shows of one field's stroke, before anything is worked out from it.
 *
 * @param overBlack its colour over the printed black
 * @param overPaper its colour over the paper
 * @param black the printed black, bare
 * @param paper the paper, bare
 * @param spread the error of {@code overPaper}
 * @param leftOut the share of it that was left out, 0 to 1
 * @param leftOutAt the middles of the cells that were left out, mm
 * @param doubts what may be wrong with it
 */
record FieldStroke(
    Lab overBlack,
    Lab overPaper,
    Lab black,
    Lab paper,
    ColourSpread spread,
    double leftOut,
    List<Spot> leftOutAt,
    List<String> doubts) {

  /**
   * The error as one figure: the sd, the same for L*, a* and b*, whose 80 % are as wide in ΔE00.
   * Photos err most in the chroma of strong colours, which ΔE00 counts least.
   */
  double error() {
    ColourSpread unit =
        ColourSpread.of(spread.centre(), new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}});
    return spread.radius(Prediction.INTERVAL_PROBABILITY)
        / unit.radius(Prediction.INTERVAL_PROBABILITY);
  }

  /** As evidence: one stroke of unknown thickness. */
  Drawdown drawdown() {
    return new Drawdown(
        OptionalDouble.empty(),
        new Drawdown.Half(new Swatch.OfLab(black), new Swatch.OfLab(overBlack)),
        new Drawdown.Half(new Swatch.OfLab(paper), new Swatch.OfLab(overPaper)));
  }
}
