package io.github.swatchwright.estimate;

/**
 * Another batch of a paint than the one that the shelf describes. Its K and S are those of the
 * paint times one strength, which is unknown: e^b with b ~ N(0, {@value #STRENGTH_ERROR}²).
 *
 * @param paint the paint's name
 * @param label what tells the batch from others
 */
record PaintBatch(String paint, String label) {

  /** Sd of ln strength before any card: a setting; no published figure was at hand. */
  static final double STRENGTH_ERROR = 0.15;

  /** What it goes by among the unknowns: no paint's name holds a line break. */
  String key() {
    return paint + '\n' + label;
  }

  /** What is believed of ln strength before any card. */
  static GaussianBelief unseen() {
    return GaussianBelief.of(new double[1], new double[][] {{STRENGTH_ERROR * STRENGTH_ERROR}});
  }
}
