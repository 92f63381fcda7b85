package io.github.swatchwright.colour;

/**
 * The transfer curve of IEC 61966-2-1, mirrored for negative values as CSS Color 4 extends it, so
 * that nothing outside a display's range is lost on the way.
 */
final class SrgbCurve {
  private SrgbCurve() {}

  /** Encoded value of linear light. */
  static double encode(double linear) {
    double size = Math.abs(linear);
    double encoded = size <= 0.0031308 ? 12.92 * size : 1.055 * Math.pow(size, 1 / 2.4) - 0.055;
    return Math.copySign(encoded, linear);
  }

  /** Linear light of an encoded value. */
  static double decode(double encoded) {
    double size = Math.abs(encoded);
    double linear = size <= 0.04045 ? size / 12.92 : Math.pow((size + 0.055) / 1.055, 2.4);
    return Math.copySign(linear, encoded);
  }
}
