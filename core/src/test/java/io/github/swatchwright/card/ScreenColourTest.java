package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import org.junit.jupiter.api.Test;

class ScreenColourTest {

  @Test
  void isTheColourItself() {
    ScreenColour rust = new ScreenColour(Srgb.parse("#8A4B2A").toLab());
    assertThat(rust.hex()).isEqualTo("#8A4B2A");
    assertThat(rust.notation())
        .containsExactly("#8A4B2A", "L\u00A039\u00A0a\u00A024\u00A0b\u00A031");
  }

  @Test
  void aColourThatNoScreenShowsIsWeakerAndSaysSo() {
    ScreenColour strong = new ScreenColour(Lab.ofD65(50, -60, -40));
    Lab shown = Srgb.parse(strong.hex()).toLab();
    assertThat(shown.chroma()).isLessThan(60);
    assertThat(strong.notation())
        .containsExactly(
            strong.hex(),
            "L\u00A050\u00A0a\u00A0−60\u00A0b\u00A0−40",
            "stronger than a screen can show; drawn weaker");
  }

  @Test
  void aZeroHasNoSign() {
    assertThat(new ScreenColour(Lab.ofD65(50, -0.2, -10.4)).notation())
        .contains("L\u00A050\u00A0a\u00A00\u00A0b\u00A0−10");
  }
}
