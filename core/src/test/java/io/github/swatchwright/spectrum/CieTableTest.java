package io.github.swatchwright.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CieTableTest {

  @Test
  void theObserverHasItsPrintedFigures() {
    double[][] columns = new CieTable("cie-1931-observer.csv", 3).columns();
    assertThat(columns).hasDimensions(3, 81);
    // ISO/CIE 11664-1, printed to six decimals: first row, 445 nm, ȳ at 555 nm, 600 nm, last row.
    assertThat(columns[0][0]).isCloseTo(0.001368, within(5e-7));
    assertThat(columns[1][0]).isCloseTo(0.000039, within(5e-7));
    assertThat(columns[2][0]).isCloseTo(0.006450, within(5e-7));
    assertThat(columns[2][13]).isCloseTo(1.782600, within(5e-7));
    assertThat(columns[1][35]).isCloseTo(1.0, within(5e-7));
    assertThat(columns[0][44]).isCloseTo(1.062200, within(5e-7));
    assertThat(columns[2][80]).isZero();
    assertThat(columns[0][80]).isCloseTo(0.000042, within(5e-7));
  }

  @Test
  void aTableIsReadOnceAndKept() {
    CieTable table = new CieTable("illuminant-a.csv", 1);
    assertThat(table.columns()).isSameAs(table.columns());
    // By definition 100 at 560 nm.
    assertThat(table.columns()[0][36]).isEqualTo(100);
  }

  @Test
  void aMissingTableIsNamed() {
    assertThatIllegalStateException()
        .isThrownBy(() -> new CieTable("illuminant-x.csv", 1).columns())
        .withMessage("resource illuminant-x.csv is missing");
  }
}
