package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;

/** See {@link CoatGoal#ofShift}. */
record ShiftGoal(double deltaL, double deltaA, double deltaB) implements CoatGoal {
  /** Refuses numbers out of range, and no shift at all. */
  ShiftGoal {
    Require.within("shift in L*", deltaL, -100, 100);
    Require.within("shift in a*", deltaA, -200, 200);
    Require.within("shift in b*", deltaB, -200, 200);
    if (deltaL == 0 && deltaA == 0 && deltaB == 0) {
      throw new IllegalArgumentException("the shift is 0, must move L*, a* or b*");
    }
  }

  /**
   * Reads {@code b=-4} or {@code L=3, b=-4}.
   *
   * @throws IllegalArgumentException when the text has another form, or names one twice
   */
  static ShiftGoal parse(String text) {
    double[] moves = new double[3];
    boolean[] named = new boolean[3];
    for (String piece : text.split(",", -1)) {
      String[] sides = piece.trim().split("\\s*=\\s*", 2);
      int axis = sides.length == 2 ? "Lab".indexOf(sides[0]) : -1;
      if (axis < 0 || sides[0].length() != 1 || named[axis]) {
        throw new IllegalArgumentException(
            "the shift "
                + Printable.quoted(text)
                + " is not of the form L=1, a=2, b=-3 (each at most once)");
      }
      named[axis] = true;
      moves[axis] = number(sides[1], text);
    }
    return new ShiftGoal(moves[0], moves[1], moves[2]);
  }

  private static double number(String digits, String text) {
    try {
      return Double.parseDouble(digits);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          Printable.quoted(digits) + " in the shift " + Printable.quoted(text) + " is not a number",
          e);
    }
  }

  @Override
  public Lab target(Lab now, CoatPredictor predictor) {
    double l = Require.within("L* after the shift", now.l() + deltaL, 0, 100);
    return new Lab(l, now.a() + deltaA, now.b() + deltaB, now.white());
  }
}
