package io.github.swatchwright.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictTest {
  /** The steps 1, 2 and 5 are common practice, from memory. */
  @ParameterizedTest(name = "a difference of {0} is called {1}")
  @CsvSource({
    "0, MATCH",
    "0.999, MATCH",
    "1, CLOSE",
    "1.999, CLOSE",
    "2, VISIBLE",
    "5, VISIBLE",
    "5.001, DIFFERENT",
    "100, DIFFERENT"
  })
  void differencesAreCalledByTheirSize(double deltaE, Verdict expected) {
    assertThat(Verdict.of(deltaE)).isEqualTo(expected);
    assertThat(new ColourDifference(deltaE, 0, 0, 0).verdict()).isEqualTo(expected);
  }

  @Test
  void everyVerdictHasAWordAndASentence() {
    assertThat(Verdict.values())
        .allSatisfy(
            verdict -> {
              assertThat(verdict.word()).matches("[a-z]+");
              assertThat(verdict.sentence()).matches("[A-Z].*\\.");
            });
  }

  @Test
  void negativeDifferencesAndNaNAreRefused() {
    assertThatThrownBy(() -> Verdict.of(-0.1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Verdict.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
  }
}
