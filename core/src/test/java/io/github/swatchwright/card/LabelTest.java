package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LabelTest {

  @Test
  void keepsNamesOfAnyScript() {
    assertThat(Label.of("Grün, dunkel 水 🎨")).isEqualTo("Grün, dunkel 水 🎨");
  }

  @Test
  void hiddenCharactersBecomeSpaces() {
    assertThat(Label.of("a\u202Eb\u2066c\nd\te\u2028f\u200Bg\uD800h")).isEqualTo("a b c d e f g h");
  }

  @Test
  void cutsOffWhatIsLongWithoutCuttingCharacters() {
    assertThat(Label.of("🎨".repeat(10_000))).isEqualTo("🎨".repeat(80) + "…");
    assertThat(Label.of("x".repeat(80))).hasSize(80);
  }
}
