package io.github.swatchwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.FuzzRun;
import io.github.swatchwright.testdata.Mutations;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A bounded run of spoilt inputs, as {@code FuzzTest} in core has it. */
class CliFuzzTest {
  private static final int INPUTS = 1300;

  @ParameterizedTest
  @EnumSource
  void readsOrRefusesWhateverComes(CliFuzzTarget target) {
    assertThat(target.seeds()).allMatch(target::feed);
    Mutations mutations =
        new Mutations(target.seeds(), CliFuzzTarget.WORDS, target.name().hashCode());
    int taken = 0;
    for (int i = 0; i < INPUTS; i++) {
      taken += target.feed(mutations.next()) ? 1 : 0;
    }
    // Both ways are walked: spoilt inputs that are still good, and refusals.
    assertThat(taken).isBetween(1, INPUTS - 1);
  }

  @Test
  void aRunOverAllChoosesByTheFirstByteAndCounts() {
    FuzzRun run = FuzzRun.of(FuzzRun.ALL, CliFuzzTarget.values());
    run.feed(new byte[0]);
    run.feed(new byte[] {0, 1, 2});
    run.feed("\u0001--help".getBytes(UTF_8));
    run.feed("\u0003--help".getBytes(UTF_8));
    assertThat(run.report().lines())
        .anyMatch(line -> line.matches("PHOTO +1 +0 .*"))
        .anyMatch(line -> line.matches("ARGUMENTS +2 +2 .*"))
        .anyMatch(line -> line.matches("all +3 +2 .*"))
        .anyMatch(line -> line.matches("heap at most \\d+ MB of \\d+ MB"));
  }
}
