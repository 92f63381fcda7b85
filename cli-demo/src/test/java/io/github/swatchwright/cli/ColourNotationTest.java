package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourNotationTest {
  @ParameterizedTest(name = "{0} is read as {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "#8A4B2A | SRGB",
        "#12 | SRGB",
        "lab(45, 5, 12) | LAB",
        "LAB(45 5 12) | LAB",
        "barge.jpg@10,20,30,40 | PHOTO",
        "a@b.png@10%,20%,5%,5% | PHOTO",
        "C:\\photos\\barge.jpg@x,y,w,h | PHOTO",
        "barge.jpg@10,20,30 | NAME",
        "@10,20,30,40 | NAME",
        "Red oxide | NAME",
        "White:3, Red oxide:1 | NAME",
        "labrador grey | NAME"
      })
  void aTextIsToldApartByHowItLooks(String text, ColourNotation notation) {
    assertThat(ColourNotation.of(text)).isEqualTo(notation);
    assertThat(ColourNotation.of("  " + text + " ")).isEqualTo(notation);
  }
}
