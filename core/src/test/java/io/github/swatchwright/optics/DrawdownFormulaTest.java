package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class DrawdownFormulaTest {

  @Property
  void drawdownOfAFilmGivesTheFilmBack(
      @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 5) double q,
      @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 1.5) double sx) {
    Film film = new Film(q, 1, sx);
    DrawdownFormula solved =
        DrawdownFormula.of(film.reflectanceOverBlack(), film.reflectanceOver(0.8), 0.8);
    // Relative; the difference over black and white holds few digits for a film that nearly hides.
    assertThat(solved.q() / q).isCloseTo(1, within(1e-6));
    assertThat(solved.sx() / sx).isCloseTo(1, within(1e-6));
  }

  @Property
  void drawdownOfAFilmWithoutAbsorptionIsSolvedToo(
      @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 5) double sx) {
    Film film = new Film(0, 1, sx);
    double r0 = film.reflectanceOverBlack();
    double r = film.reflectanceOver(0.8);
    // Rounding may leave a just below 1, which no film has; then the refusal is the right answer.
    try {
      DrawdownFormula solved = DrawdownFormula.of(r0, r, 0.8);
      assertThat(solved.q()).isCloseTo(0, within(1e-12));
      assertThat(solved.sx() / sx).isCloseTo(1, within(1e-6));
    } catch (IllegalArgumentException refused) {
      assertThat(refused).hasMessageStartingWith("no film reflects");
    }
  }

  @Test
  void reflectancesThatNoFilmHasAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DrawdownFormula.of(0.5, 0.99, 0.8))
        .withMessageStartingWith("no film reflects r0 = 0.5 over black and r = 0.99");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DrawdownFormula.of(0.5, 0.4, 0.8))
        .withMessageStartingWith("r is 0.4");
  }

  @Test
  void filmThatHidesFullyTellsNoThickness() {
    double opaque = KubelkaMunk.reflectance(0.5);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DrawdownFormula.of(opaque, opaque, 0.8))
        .withMessageContaining("hides fully");
  }
}
