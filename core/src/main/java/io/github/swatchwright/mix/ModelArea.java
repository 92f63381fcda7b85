package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;

/**
 * The painted area of a model from its length, roughly: that of a box a third as wide and a quarter
 * as high as it is long, without its bottom. Top, sides and ends are 1/3 + 2/4 + 2/12 = 1 of the
 * length squared. A slim hull has half of that, a lorry with all its sides more: measure where it
 * matters.
 */
public final class ModelArea {
  private static final double CENTIMETRES = 100;

  private ModelArea() {}

  /**
   * Area in cm² of a model of that length.
   *
   * @param centimetres the model's length, above 0 to 1000
   */
  public static double ofLength(double centimetres) {
    Require.positive("length", centimetres);
    Require.within("length", centimetres, 0, 1000);
    return centimetres * centimetres;
  }

  /**
   * Area in cm² of a model of something that long.
   *
   * @param metres length of the original, above 0
   * @param scale what the original is divided by, such as 72: at least 1
   */
  public static double ofOriginal(double metres, double scale) {
    Require.positive("length", metres);
    Require.within("scale", scale, 1, 1e5);
    return ofLength(metres * CENTIMETRES / scale);
  }
}
