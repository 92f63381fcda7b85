package io.github.swatchwright.colour;

/** A 3 × 3 matrix, rows first, for the linear steps between colour spaces. */
record Matrix3(
    double m00,
    double m01,
    double m02,
    double m10,
    double m11,
    double m12,
    double m20,
    double m21,
    double m22) {

  /** This matrix times the column (x, y, z). */
  double[] times(double x, double y, double z) {
    return new double[] {
      m00 * x + m01 * y + m02 * z, m10 * x + m11 * y + m12 * z, m20 * x + m21 * y + m22 * z
    };
  }

  /** This matrix with its columns scaled by (x, y, z). */
  Matrix3 scaleColumns(double x, double y, double z) {
    return new Matrix3(
        m00 * x, m01 * y, m02 * z, m10 * x, m11 * y, m12 * z, m20 * x, m21 * y, m22 * z);
  }

  /** The inverse, by cofactors. */
  Matrix3 inverse() {
    double c00 = m11 * m22 - m12 * m21;
    double c01 = m12 * m20 - m10 * m22;
    double c02 = m10 * m21 - m11 * m20;
    double d = m00 * c00 + m01 * c01 + m02 * c02;
    return new Matrix3(
        c00 / d,
        (m02 * m21 - m01 * m22) / d,
        (m01 * m12 - m02 * m11) / d,
        c01 / d,
        (m00 * m22 - m02 * m20) / d,
        (m02 * m10 - m00 * m12) / d,
        c02 / d,
        (m01 * m20 - m00 * m21) / d,
        (m00 * m11 - m01 * m10) / d);
  }
}
