package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TextWidthTest {

  // A figure of Helvetica is 556 thousandths wide, a space 278 (Adobe's metrics for the
  // standard fonts; PagePdfTest holds whole cards against PDFBox's copy of them).
  @Test
  void widthsAreHelveticas() {
    assertThat(TextWidth.of("10 20", false)).isCloseTo(4 * 0.556 + 0.278, within(1e-12));
  }

  @Test
  void breaksLinesBetweenWords() {
    double width = TextWidth.of("let it dry first", false) + 0.1;
    assertThat(TextWidth.lines("let it dry first and look", false, width))
        .containsExactly("let it dry first", "and look");
  }

  @Test
  void breaksWordsThatAreLongerThanALine() {
    assertThat(TextWidth.lines("ab 🎨🎨🎨🎨🎨 cd", false, 3.1))
        .containsExactly("ab", "🎨🎨🎨", "🎨🎨", "cd");
  }

  @Test
  void aLetterThatIsWiderThanALineIsALine() {
    assertThat(TextWidth.lines("🎨🎨", false, 0.1)).containsExactly("🎨", "🎨");
  }

  @Test
  void aShortTextIsALine() {
    assertThat(TextWidth.lines("", false, 10)).containsExactly("");
    assertThat(TextWidth.lines("dry", false, 10)).containsExactly("dry");
  }
}
