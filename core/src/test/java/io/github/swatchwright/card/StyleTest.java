package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StyleTest {

  @ParameterizedTest
  @EnumSource
  void needsNoEscapingAndNothingFromElsewhere(Style style) {
    assertThat(Markup.escaped(style.text())).isEqualTo(style.text());
    assertThat(style.text()).doesNotContain("url(", "@import", "http");
  }
}
