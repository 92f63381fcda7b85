package io.github.swatchwright.coat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Swatch;

/** What further coats are to do to a colour. */
public sealed interface CoatGoal permits ShiftGoal, ColourGoal {

  /**
   * A shift in L*, a* and b*.
   *
   * @param deltaL lighter or darker in L*: -100 to 100
   * @param deltaA redder or greener in a*: -200 to 200
   * @param deltaB yellower (warmer) or bluer (cooler) in b*: -200 to 200
   * @throws IllegalArgumentException when a number is out of range, or all are 0
   */
  static CoatGoal ofShift(double deltaL, double deltaA, double deltaB) {
    return new ShiftGoal(deltaL, deltaA, deltaB);
  }

  /**
   * Reads a shift such as {@code b=-4} or {@code L=3, b=-4}; what isn't named stays as it is.
   *
   * @throws IllegalArgumentException when the text has another form, or names one twice
   */
  static CoatGoal parseShift(String text) {
    return ShiftGoal.parse(text);
  }

  /**
   * Part of the way towards a colour, in a straight line through CIELAB.
   *
   * @param colour the colour
   * @param share how far: above 0 to 1
   */
  static CoatGoal ofColour(Swatch colour, double share) {
    return new ColourGoal(colour, share);
  }

  /**
   * The colour that is wanted.
   *
   * @param now the colour before
   * @param predictor what looks at it: its light, its scale lightening
   */
  Lab target(Lab now, CoatPredictor predictor);
}
