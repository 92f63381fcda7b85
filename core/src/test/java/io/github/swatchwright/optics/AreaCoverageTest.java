package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AreaCoverageTest {
  @ParameterizedTest(name = "Yule & Nielsen 1951, worked by hand: a = 0.3, n = {0}, R = {1}")
  @CsvSource({"1, 0.61", "1.7, 0.5291", "2, 0.5076"})
  void tintHasTheWorkedReflectance(double n, double reflectance) {
    // Four digits are given, so half of the last one is allowed.
    assertThat(AreaCoverage.yuleNielsen(0.3, 0.05, 0.85, n)).isCloseTo(reflectance, within(5e-5));
  }

  @Test
  void murrayDaviesIsAPlainMeanByArea() {
    assertThat(AreaCoverage.murrayDavies(0.3, 0.05, 0.85)).isCloseTo(0.61, within(1e-15));
    assertThat(AreaCoverage.murrayDavies(0, 0.05, 0.85)).isEqualTo(0.85);
    assertThat(AreaCoverage.murrayDavies(1, 0.05, 0.85)).isEqualTo(0.05);
  }

  @Test
  void demichelSharesOfTwoPassesAreTheProducts() {
    assertThat(AreaCoverage.demichel(0.25, 0.5)).containsExactly(0.375, 0.125, 0.375, 0.125);
  }

  @Property
  void demichelSharesSumToOneAndGiveTheCoveragesBack(
      @ForAll @Size(min = 1, max = 8)
          List<@Scale(9) @DoubleRange(min = 0, max = 1) Double> passes) {
    double[] coverages = passes.stream().mapToDouble(Double::doubleValue).toArray();
    double[] shares = AreaCoverage.demichel(coverages);
    assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-12));
    for (int pass = 0; pass < coverages.length; pass++) {
      double covered = 0;
      for (int overlap = 0; overlap < shares.length; overlap++) {
        covered += (overlap >> pass & 1) == 1 ? shares[overlap] : 0;
      }
      assertThat(covered).isCloseTo(coverages[pass], within(1e-12));
    }
  }

  @Test
  void neugebauerOfTwoPrimariesIsMurrayDavies() {
    double mixed = AreaCoverage.neugebauer(new double[] {0.7, 0.3}, new double[] {0.85, 0.05}, 1);
    assertThat(mixed).isCloseTo(AreaCoverage.murrayDavies(0.3, 0.05, 0.85), within(1e-15));
  }

  @Test
  void sharesThatDoNotSumToOneAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> AreaCoverage.neugebauer(new double[] {0.5, 0.4}, new double[] {0.1, 0.2}, 1))
        .withMessageStartingWith("sum of shares is 0.9");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AreaCoverage.murrayDavies(1.2, 0.1, 0.9))
        .withMessage("coverage is 1.2, must be within [0.0, 1.0]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AreaCoverage.demichel(0.5, 1.5))
        .withMessage("coverages[1] is 1.5, must be within [0.0, 1.0]");
  }
}
