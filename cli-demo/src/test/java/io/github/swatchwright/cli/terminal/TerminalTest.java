package io.github.swatchwright.cli.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TerminalTest {

  private static Map<String, String> environment(String settings) {
    Map<String, String> environment = new HashMap<>();
    for (String setting : settings.split(" ", -1)) {
      environment.put(
          setting.substring(0, setting.indexOf('=')), setting.substring(setting.indexOf('=') + 1));
    }
    return environment;
  }

  @ParameterizedTest(name = "{0} shows {1}")
  @CsvSource({
    "TERM=xterm-256color COLORTERM=truecolor, TRUE",
    "TERM=xterm-256color COLORTERM=24bit, TRUE",
    "TERM=xterm-direct, TRUE",
    "WT_SESSION=1, TRUE",
    "TERM=xterm-256color, INDEXED",
    "TERM=screen, INDEXED",
    "TERM=linux, NONE",
    "TERM=vt100, NONE",
    "TERM=dumb COLORTERM=truecolor, NONE",
    "TERM=, NONE",
    "HOME=x, NONE",
    "TERM=xterm-256color COLORTERM=truecolor NO_COLOR=1, NONE",
    "TERM=xterm-256color COLORTERM=truecolor NO_COLOR=, TRUE",
  })
  void toldByTheEnvironment(String settings, TerminalColours colours) {
    assertThat(TerminalColours.of(environment(settings), true)).isEqualTo(colours);
    assertThat(TerminalColours.of(environment(settings), false)).isEqualTo(TerminalColours.NONE);
  }

  @ParameterizedTest(name = "{0}, on a terminal {1}: {2} characters")
  @CsvSource({
    "COLUMNS=72, true, 72",
    "COLUMNS=72, false, 72",
    "COLUMNS=3, true, 40",
    "COLUMNS=wide, true, 100",
    "COLUMNS=-1, true, 100",
    "HOME=x, true, 100",
    "HOME=x, false, 2147483647",
  })
  void theWidthIsToldByTheEnvironment(String settings, boolean isTerminal, int width) {
    assertThat(Terminal.of(environment(settings), isTerminal).width()).isEqualTo(width);
  }

  // The palette of xterm (its file 256colres.h, from memory): 16 + 36r + 6g + b, greys 8 + 10i.
  @ParameterizedTest(name = "{0} is index {1}")
  @CsvSource({
    "#000000, 16",
    "#FFFFFF, 231",
    "#5F87AF, 67",
    "#080808, 232",
    "#808080, 244",
    "#EEEEEE, 255",
    "#FF0000, 196",
    "#00FF00, 46",
    "#0000FF, 21"
  })
  void aColourOfThePaletteIsItself(String hex, int index) {
    assertThat(TerminalColours.indexed(index)).isEqualTo(Srgb.parse(hex));
    assertThat(TerminalColours.nearest(Srgb.parse(hex))).isEqualTo(index);
  }

  @Test
  void otherColoursTakeTheNearestByDeltaE00() {
    Srgb rust = Srgb.parse("#8A4B2A");
    double nearest =
        Ciede2000.deltaE(
            rust.toLab(), TerminalColours.indexed(TerminalColours.nearest(rust)).toLab());

    for (int index = 16; index < 256; index++) {
      assertThat(nearest)
          .isLessThanOrEqualTo(
              Ciede2000.deltaE(rust.toLab(), TerminalColours.indexed(index).toLab()));
    }
    assertThat(TerminalColours.INDEXED.block(Srgb.parse("#0000FF")))
        .isEqualTo("\u001B[48;5;21m      \u001B[0m ");
    assertThat(TerminalColours.NONE.block(Srgb.parse("#0000FF"))).isEmpty();
  }

  @Test
  void breaksLinesBetweenWords() {
    assertThat(Lines.of("  one two  three four", 11))
        .containsExactly("  one two", "    three", "    four");
    assertThat(Lines.of("one two", 7)).containsExactly("one two");
    assertThat(Lines.of("unbreakable", 4)).containsExactly("unbreakable");
    assertThat(Lines.of("", 4)).isEqualTo(List.of(""));
  }

  // The nearest of the 256 to this brown is a fire red; ΔE00 from 5 on is another colour (facts of
  // common practice, from memory).
  @Test
  void aColourThatIsFarFromAllIndexedOnesIsLeftBlank() {
    Srgb rust = Srgb.parse("#8A4B2A");
    Srgb nearest = TerminalColours.indexed(TerminalColours.nearest(rust));
    assertThat(Ciede2000.deltaE(rust.toLab(), nearest.toLab())).isGreaterThan(5);
    assertThat(TerminalColours.INDEXED.block(rust)).isEqualTo("       ");
    assertThat(TerminalColours.INDEXED.block(Srgb.parse("#AF5F00"))).contains("48;5;130m");
  }
}
