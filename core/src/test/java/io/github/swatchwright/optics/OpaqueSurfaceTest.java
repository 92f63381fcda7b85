package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpaqueSurfaceTest {
  /** Rounding alone parts the two ways, a few units in the last of 16 digits. */
  private static final double ROUNDING = 1e-14;

  @ParameterizedTest(name = "K {0}, S {1} under k1 {2}, k2 {3}")
  @CsvSource({
    "0, 1, 0.04, 0.6",
    "0.25, 1, 0.04, 0.4",
    "0.0005, 0.9, 0.04, 0.6",
    "7.147, 0.698, 0.01, 0.4",
    "4000, 0.001, 0, 0.596",
    "1e-9, 1e-9, 0.04, 0"
  })
  void theShortWayGivesWhatKubelkaMunkAndSaundersonGive(double k, double s, double k1, double k2) {
    Saunderson surface = new Saunderson(k1, k2);
    assertThat(OpaqueSurface.of(surface).seen(k, s))
        .isCloseTo(surface.seen(KubelkaMunk.reflectance(k / s)), within(ROUNDING));
  }
}
