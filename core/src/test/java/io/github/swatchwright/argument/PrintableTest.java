package io.github.swatchwright.argument;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PrintableTest {
  @Test
  void aQuotationIsOneLineOfWhatCanBeSeen() {
    assertThat(Printable.quoted("red\r\n\u2028oxide\u202E\uD800")).isEqualTo("'red   oxide  '");
  }

  @Test
  void aLongQuotationIsCutBetweenCharacters() {
    String ship = "\uD83D\uDEA2";
    assertThat(Printable.quoted(ship.repeat(200))).isEqualTo("'" + ship.repeat(200) + "'");
    assertThat(Printable.quoted(ship.repeat(201))).isEqualTo("'" + ship.repeat(200) + "…'");
  }
}
