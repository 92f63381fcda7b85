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
    assertThat(rust.notation()).isEqualTo("#8A4B2A · L 39 a 24 b 31");
  }

  @Test
  void aColourThatNoScreenShowsIsWeakerAndSaysSo() {
    ScreenColour strong = new ScreenColour(Lab.ofD65(50, -60, -40));
    Lab shown = Srgb.parse(strong.hex()).toLab();
    assertThat(shown.chroma()).isLessThan(60);
    assertThat(strong.notation())
        .endsWith("L 50 a −60 b −40 · stronger than a screen can show; drawn weaker");
  }

  @Test
  void aZeroHasNoSign() {
    assertThat(new ScreenColour(Lab.ofD65(50, -0.2, -10.4)).notation()).endsWith("a 0 b −10");
  }
}
