package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.terminal.Terminal;
import io.github.swatchwright.cli.terminal.TerminalColours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NarrowTerminalTest {

  @ParameterizedTest(name = "shelf fits in {0} characters")
  @ValueSource(ints = {64, 72, 80, 100})
  void tablesFitTheWidth(int width) {
    Run run = Run.of(new Terminal(TerminalColours.NONE, width), "shelf");

    assertThat(run.out().lines().filter(line -> !line.contains("too strong")))
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
  }

  @Test
  void numbersGoBeforeNamesAreCut() {
    String name = "Bucket-chain rust";
    String numbers = "lab(";

    assertThat(Run.of("shelf").out()).contains(name).contains(numbers);
    assertThat(Run.of(new Terminal(TerminalColours.NONE, 70), "shelf").out().split("\n\n", -1)[1])
        .contains(name)
        .doesNotContain(numbers);
    assertThat(Run.of(new Terminal(TerminalColours.NONE, 50), "shelf").out()).doesNotContain(name);
  }

  @Test
  void helpFitsTheWidth() {
    Run run = Run.of(new Terminal(TerminalColours.NONE, 60), "match", "--help");

    assertThat(run.out().lines().filter(line -> !line.contains("swatchwright match")))
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(60));
  }
}
