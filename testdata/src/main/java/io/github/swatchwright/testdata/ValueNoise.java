package io.github.swatchwright.testdata;

/**
 * A random landscape: values at the points of a lattice, smoothed between them, and octaves of it.
 * The same seed gives the same landscape on every platform.
 *
 * @param seed which landscape
 */
record ValueNoise(long seed) {

  /** Four octaves, each half as strong as the one before; 0 to 1, mostly near the middle. */
  double at(double x, double y) {
    double sum = 0;
    double weight = 0.5;
    for (int octave = 0; octave < 4; octave++) {
      double scale = 1 << octave;
      sum += weight * smooth(x * scale, y * scale, octave);
      weight /= 2;
    }
    return sum / (1 - 2 * weight / 2);
  }

  private double smooth(double x, double y, int octave) {
    int left = (int) Math.floor(x);
    int top = (int) Math.floor(y);
    double u = eased(x - left);
    double v = eased(y - top);
    double upper = (1 - u) * lattice(left, top, octave) + u * lattice(left + 1, top, octave);
    double lower =
        (1 - u) * lattice(left, top + 1, octave) + u * lattice(left + 1, top + 1, octave);
    return (1 - v) * upper + v * lower;
  }

  private static double eased(double t) {
    return t * t * (3 - 2 * t);
  }

  /** The finaliser of SplitMix64 (Steele, Lea and Flood 2014) as a number from 0 to 1. */
  double lattice(int x, int y, int octave) {
    long z = seed * 0x9E3779B97F4A7C15L + ((long) x << 34 ^ (long) y << 8 ^ octave);
    z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
    z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
    return ((z ^ z >>> 31) >>> 11) * 0x1p-53;
  }
}
