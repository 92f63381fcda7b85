package io.github.swatchwright.spectrum;

/**
 * How a surface turns the reflectance inside a paint into the one that is seen: a smooth, strictly
 * increasing map of [0, 1] into [0, 1], the same at every wavelength.
 */
public interface SurfaceMap {

  /** No surface: what is inside is what is seen. */
  SurfaceMap NONE =
      new SurfaceMap() {
        @Override
        public double seen(double internal) {
          return internal;
        }

        @Override
        public double slope(double internal) {
          return 1;
        }

        @Override
        public double curvature(double internal) {
          return 0;
        }

        @Override
        public String toString() {
          return "SurfaceMap.NONE";
        }
      };

  /** The reflectance seen over an internal reflectance, both 0 to 1. */
  double seen(double internal);

  /** The first derivative of {@link #seen}, above 0. */
  double slope(double internal);

  /**
   * The second derivative of {@link #seen}; unless overridden, from differences of {@link #slope}.
   */
  default double curvature(double internal) {
    double step = 1e-5;
    double below = Math.max(0, internal - step);
    double above = Math.min(1, internal + step);
    return (slope(above) - slope(below)) / (above - below);
  }
}
