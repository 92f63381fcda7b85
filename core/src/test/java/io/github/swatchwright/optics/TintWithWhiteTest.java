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
      @ForAll @Scale(9) @DoubleRange(min = 0.5, max = 50) double whiteToColourant) {
    double qTint = (whiteToColourant * 0.0005 + k) / (whiteToColourant + s);
    TintWithWhite solved = TintWithWhite.of(k / s, qTint, whiteToColourant, 0.0005, 1);
    // The quotient loses up to five digits where tint and masstone nearly agree.
    assertThat(solved.k() / k).isCloseTo(1, within(1e-9));
    assertThat(solved.s() / s).isCloseTo(1, within(1e-9));
  }

  @Test
  void tintOutsideItsPartsIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TintWithWhite.of(2, 3, 5, 0.001, 1))
        .withMessage("qTint is 3.0, must lie between the white's 0.001 and the masstone's 2.0");
  }
}
