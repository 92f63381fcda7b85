package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SheetTest {

  @Test
  void breaksLinesBetweenWords() {
    assertThat(Sheet.broken("let it dry and look", 10)).containsExactly("let it dry", "and look");
  }

  @Test
  void breaksWordsThatAreLongerThanALine() {
    assertThat(Sheet.broken("ab 🎨🎨🎨🎨🎨 cd", 3)).containsExactly("ab", "🎨🎨🎨", "🎨🎨", "cd");
  }

  @Test
  void aShortTextIsALine() {
    assertThat(Sheet.broken("", 10)).containsExactly("");
    assertThat(Sheet.broken("dry", 10)).containsExactly("dry");
  }
}
