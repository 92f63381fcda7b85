package io.github.swatchwright.colour;

/**
 * The linear Bradford transform: von Kries scaling in a sharpened cone space, as used by ICC
 * profiles and CSS Color 4 (matrix of ICC.1:2022, annex E).
 */
final class Bradford {
  private static final Matrix3 TO_CONES =
      new Matrix3(0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296);
  private static final Matrix3 FROM_CONES = TO_CONES.inverse();

  private Bradford() {}

  static Xyz adapt(Xyz colour, WhitePoint target) {
    WhitePoint source = colour.white();
    double[] from = TO_CONES.times(source.xn(), source.yn(), source.zn());
    double[] to = TO_CONES.times(target.xn(), target.yn(), target.zn());
    double[] cones = TO_CONES.times(colour.x(), colour.y(), colour.z());
    double[] xyz =
        FROM_CONES.times(
            cones[0] * to[0] / from[0], cones[1] * to[1] / from[1], cones[2] * to[2] / from[2]);
    return new Xyz(xyz[0], xyz[1], xyz[2], target);
  }
}
