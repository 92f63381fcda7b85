package io.github.swatchwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.Mutations;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A bounded run of spoilt inputs; the long run by a coverage-guided fuzzer is the profile {@code
 * fuzz}. What either finds becomes a test of its own beside what it was found in.
 */
class FuzzTest {
  private static final int INPUTS = 4000;

  @ParameterizedTest
  @EnumSource
  void readsOrRefusesWhateverComes(FuzzTarget target) {
    for (byte[] seed : target.seeds()) {
      assertThat(target.feed(seed)).as(new String(seed, StandardCharsets.UTF_8)).isTrue();
    }
    Mutations mutations = new Mutations(target.seeds(), FuzzTarget.WORDS, target.name().hashCode());
    int taken = 0;
    for (int i = 0; i < INPUTS; i++) {
      taken += target.feed(mutations.next()) ? 1 : 0;
    }
    // Both ways are walked: spoilt inputs that are still good, and refusals.
    assertThat(taken).isBetween(1, INPUTS - 1);
  }
}
