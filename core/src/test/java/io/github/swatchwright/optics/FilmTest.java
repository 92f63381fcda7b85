package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmTest {
  /** The worked figures carry six digits after the point, so half of the last one is allowed. */
  private static final double SIXTH_DIGIT = 5e-7;

  @ParameterizedTest(name = "Kubelka 1948, worked by hand: q = 0.25, SX = {0}")
  @CsvSource({
    "0.5, 0.299143, 0.658428, 0.58449",
    "1, 0.411383, 0.579253, 0.375205",
    "2, 0.481095, 0.518441, 0.169457"
  })
  void filmHasTheWorkedFigures(double sx, double r0, double overEighty, double transmittance) {
    Film film = new Film(0.25, 1, sx);
    assertThat(film.reflectanceOverBlack()).isCloseTo(r0, within(SIXTH_DIGIT));
    assertThat(film.reflectanceOver(0.8)).isCloseTo(overEighty, within(SIXTH_DIGIT));
    assertThat(film.transmittance()).isCloseTo(transmittance, within(SIXTH_DIGIT));
  }

  @Property
  void filmAgreesWithTheTextbookFormWithCoth(
      @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 20) double k,
      @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 5) double s,
      @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 3) double x,
      @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 1) double rg) {
    double a = 1 + k / s;
    double b = Math.sqrt(a * a - 1);
    double c = b / Math.tanh(b * s * x);
    double textbook = (1 - rg * (a - c)) / (a - rg + c);
    // a − c loses digits in the textbook form; at these arguments 1e-10 of them are left.
    assertThat(new Film(k, s, x).reflectanceOver(rg)).isCloseTo(textbook, within(1e-10));
  }

  @Property
  void weakExtinctionKeepsItsDigits(
      @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 0.02) double y) {
    // y² = K(K + 2S) for a film with S = 1 and X = 1; R0 = τ/((1 + K)τ + 1), solved for τ.
    double k = y * y / (1 + Math.sqrt(1 + y * y));
    double r0 = new Film(k, 1, 1).reflectanceOverBlack();
    double tau = r0 / (1 - (1 + k) * r0);
    // A dozen roundings; the last term of the series alone is 5e-14 at y = 0.01.
    assertThat(tau).isCloseTo(Math.tanh(y) / y, within(3e-15));
  }

  @Property
  void filmWithoutAbsorptionFollowsItsOwnFormula(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 50) double sx,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double rg) {
    double expected = ((1 - rg) * sx + rg) / ((1 - rg) * sx + 1);
    assertThat(new Film(0, 1, sx).reflectanceOver(rg)).isCloseTo(expected, within(1e-12));
  }

  @Property
  void clearFilmOnlyAbsorbsOnTheWayInAndOut(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 20) double kx,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double rg) {
    Film film = new Film(kx, 0, 1);
    assertThat(film.reflectanceOver(rg)).isCloseTo(rg * Math.exp(-2 * kx), within(1e-12));
    assertThat(film.reflectanceOverBlack()).isZero();
  }

  @Property
  void manyThinCoatsEqualOneThick(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 10) double k,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 5) double s,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 5) double x,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double rg) {
    double layered = rg;
    for (int coat = 0; coat < 16; coat++) {
      layered = new Film(k, s, x / 16).reflectanceOver(layered);
    }
    assertThat(layered).isCloseTo(new Film(k, s, x).reflectanceOver(rg), within(1e-9));
  }

  @Property
  void filmNeverCreatesEnergy(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e6) double k,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e6) double s,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e3) double x,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double rg) {
    Film film = new Film(k, s, x);
    assertThat(film.reflectanceOver(rg)).isBetween(0.0, 1.0);
    assertThat(film.reflectanceOverBlack() + film.transmittance()).isLessThanOrEqualTo(1 + 1e-12);
  }

  @Property
  void thickFilmIsTheOpaquePaint(
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 50) double q,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double rg) {
    assertThat(new Film(q, 1, 1000).reflectanceOver(rg))
        .isCloseTo(KubelkaMunk.reflectance(q), within(1e-12));
  }

  @Test
  void negativeThicknessIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Film(1, 1, -1))
        .withMessage("x is -1.0, must be a finite number of at least 0");
  }
}
