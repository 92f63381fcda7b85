package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class TintWithWhiteTest {

  @Property
  void constantsThatMadeTheTintComeBack(
      @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 20) double k,
      @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 2) double s,
      @ForAll @Scale(9) @DoubleRange(min = 0.5, max = 50) double whiteToColourant,
      @ForAll @Scale(9) @DoubleRange(min = 0.5, max = 2) double sWhite) {
    double qTint = (whiteToColourant * 0.0005 + k) / (whiteToColourant * sWhite + s);
    TintWithWhite solved = TintWithWhite.of(k / s, qTint, whiteToColourant, 0.0005, sWhite);
    // The quotient loses up to five digits where tint and masstone nearly agree.
    assertThat(solved.k() / k).isCloseTo(1, within(1e-9));
    assertThat(solved.s() / s).isCloseTo(1, within(1e-9));
  }

  @Test
  void tintOutsideItsPartsIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TintWithWhite.of(2, 3, 5, 0.001, 1))
        .withMessage("qTint is 3.0, must lie between the white's 0.001 and the masstone's 2.0");
    // Half of the white's S, so twice its K for q; a tint like either end tells nothing.
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TintWithWhite.of(2, 0.25, 5, 0.125, 0.5))
        .withMessage("qTint is 0.25, must lie between the white's 0.25 and the masstone's 2.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TintWithWhite.of(2, 2, 5, 0.125, 0.5))
        .withMessage("qTint is 2.0, must lie between the white's 0.25 and the masstone's 2.0");
  }
}
