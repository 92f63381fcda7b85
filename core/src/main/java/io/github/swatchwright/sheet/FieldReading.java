package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Drawdown;
import java.util.List;
import java.util.Optional;

/**
 * What a photo says of a field.
 *
 * @param field the field
 * @param read what was read; empty when the field is blank or can't be read, which {@code doubts}
 *     explains
 * @param leftOut the share of the stroke that was left out: gaps, streaks, glare, shadow; 0 to 1
 * @param leftOutAt where that is: the middles of squares of {@value #CELL} mm, in mm of the paper
 * @param doubts what a painter should know, each a clause
 */
public record FieldReading(
    SheetField field,
    Optional<Read> read,
    double leftOut,
    List<Spot> leftOutAt,
    List<String> doubts) {
  /** Strokes are read in squares of that side, mm. */
  public static final double CELL = 0.5;

  /** No colour is read more exactly than this, sd of L*, a* and b*. */
  static final double LEAST_ERROR = 0.3;

  /** Copies the lists. */
  public FieldReading {
    leftOutAt = List.copyOf(leftOutAt);
    doubts = List.copyOf(doubts);
  }

  /**
   * A stroke, colours relative to D65.
   *
   * @param drawdown its colours over the printed black and over the paper, and the bare bases
   * @param error sd of L*, a* and b* of the colours over black and over paper
   * @param interval the ΔE00 about the colour over paper that holds its true colour with 80 %
   * @param opaque what follows from both colours
   */
  public record Read(Drawdown drawdown, double error, double interval, Opaque opaque) {
    /** The stroke over the printed black. */
    public Lab overBlack() {
      return drawdown.black().measured().lab();
    }

    /** The stroke over the paper. */
    public Lab overPaper() {
      return drawdown.white().measured().lab();
    }

    /** The printed black, bare. */
    public Lab black() {
      return drawdown.black().base().lab();
    }

    /** The paper, bare. */
    public Lab paper() {
      return drawdown.white().base().lab();
    }
  }

  /**
   * The paint as it would be at full hiding.
   *
   * @param masstone its colour
   * @param error sd of L*, a* and b* of that
   * @param interval the ΔE00 about it that holds its true colour with 80 %
   * @param contrastRatio how well the stroke as it is hides: Y over black of Y = 5 % to Y over
   *     white of Y = 80 %
   */
  public record Opaque(Lab masstone, double error, double interval, double contrastRatio) {}

  static FieldReading unread(SheetField field, String why) {
    return new FieldReading(field, Optional.empty(), 1, List.of(), List.of(why));
  }

  static FieldReading of(SheetField field, FieldStroke stroke, Opaque opaque, List<String> doubts) {
    return new FieldReading(
        field,
        Optional.of(
            new Read(
                stroke.drawdown(),
                Math.max(LEAST_ERROR, stroke.error()),
                stroke.spread().radius(Prediction.INTERVAL_PROBABILITY),
                opaque)),
        stroke.leftOut(),
        stroke.leftOutAt(),
        doubts);
  }
}
