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

  @Test
  void emojiAndPersianKeepTheirJoiners() {
    String names = "\uD83D\uDC69\u200D\uD83C\uDFA8 \u0646\u0645\u06CC\u200C";
    assertThat(Printable.oneLine(names)).isEqualTo(names);
  }

  @Test
  void jsonIsEscapedAndKeepsItsContent() {
    assertThat(Printable.json("{\n\"a\":\"\u009B\u202E\uDB40\uDC01x\"}"))
        .isEqualTo("{\n\"a\":\"\\u009b\\u202e\\udb40\\udc01x\"}");
  }
}
