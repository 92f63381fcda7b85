package io.github.swatchwright.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SurfaceMapTest {

  /** Any curve will do here; its second derivative is 0.6·r. */
  private static final SurfaceMap CUBIC =
      new SurfaceMap() {
        @Override
        public double seen(double internal) {
          return 0.5 * internal + 0.1 * internal * internal * internal;
        }

        @Override
        public double slope(double internal) {
          return 0.5 + 0.3 * internal * internal;
        }
      };

  @Test
  void withoutASurfaceTheInsideIsSeen() {
    assertThat(SurfaceMap.NONE.seen(0.3)).isEqualTo(0.3);
    assertThat(SurfaceMap.NONE.slope(0.3)).isEqualTo(1);
    assertThat(SurfaceMap.NONE.curvature(0.3)).isZero();
    assertThat(SurfaceMap.NONE).hasToString("SurfaceMap.NONE");
  }

  @Test
  void curvatureComesFromTheSlopeUpToTheEnds() {
    for (double r : new double[] {0, 1e-7, 0.25, 0.5, 1}) {
      // One-sided differences at the ends are off by half a step of 1e-5.
      assertThat(CUBIC.curvature(r)).isCloseTo(0.6 * r, within(1e-5));
    }
  }
}
