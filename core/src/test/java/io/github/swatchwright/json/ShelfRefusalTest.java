package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.exchange.ReadLimits;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every refusal is one line that names the source, the place, the value and what is allowed. */
class ShelfRefusalTest {
  private static final String GREY = "\"name\":\"Grey\",\"medium\":\"acrylic\"";

  @ParameterizedTest(name = "{0} is refused at {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "hiding":{"coats":-1}|$.paints[0].hiding.coats: is -1.0, must be a finite number above 0
          "hiding":{"coats":1e999}|$.paints[0].hiding.coats: is 1e999, must be a finite number within ±1.7976931348623157E308
          "hiding":{"coats":NaN}|$.paints[0].hiding.coats: is NaN, must be a finite number within ±1.7976931348623157E308
          "hiding":{"coats":-Infinity}|$.paints[0].hiding.coats: is -Infinity, must be a finite number within ±1.7976931348623157E308
          "hiding":{"coats":"3"}|$.paints[0].hiding.coats: is "3", must be a number
          "hiding":{"coats":null}|$.paints[0].hiding.coats: is null, must be a number
          "hiding":{}|$.paints[0].hiding: has 0 fields, must have exactly one: coats, contrastRatio, scattering or word
          "hiding":{"coats":3,"scattering":1}|$.paints[0].hiding: has 2 fields, must have exactly one: coats, contrastRatio, scattering or word
          "hiding":{"layers":3}|$.paints[0].hiding.layers: is an unknown field; known here: coats, contrastRatio, scattering, word
          "hiding":{"contrastRatio":1.5}|$.paints[0].hiding.contrastRatio: is 1.5, must be within [0.0, 1.0]
          "hiding":{"scattering":0}|$.paints[0].hiding.scattering: is 0.0, must be within [1.0E-4, 100.0]
          "hiding":{"word":"thick"}|$.paints[0].hiding.word: is "thick", must be one of transparent, semi-transparent, semi-opaque, opaque
          "masstone":{"lab":[120,0,0]}|$.paints[0].masstone.lab[0]: is 120, must be within [0.0, 100.0]
          "masstone":{"lab":[50,0,-161]}|$.paints[0].masstone.lab[2]: is -161, must be within [-160.0, 160.0]
          "masstone":{"lab":[50,0]}|$.paints[0].masstone.lab: holds 2 items, must hold exactly 3
          "masstone":{"srgb":"#12345"}|$.paints[0].masstone.srgb: '#12345' is not a colour of the form #RRGGBB with six digits 0 to F
          "masstone":{"reflectance":{"from":400,"step":100,"values":[0.5,0.5,0.5,0.5]}}|$.paints[0].masstone.reflectance.step: is 100.0, must be within [0.0, 40.0]
          "masstone":{"reflectance":{"from":400,"step":40,"values":[0.5,0.5,0.5,0,0.5,0.5,0.5,0.5]}}|$.paints[0].masstone.reflectance.values[3]: is 0.0, must be a finite number above 0
          "masstone":{"reflectance":{"from":400,"values":[0.5]}}|$.paints[0].masstone.reflectance: has no field 'step', must have one
          "dropMillilitres":5|$.paints[0].dropMillilitres: is 5.0, must be within [0.001, 1.0]
          "swatchError":-1|$.paints[0].swatchError: is -1.0, must be a finite number above 0
          "finish":"shiny"|$.paints[0].finish: is "shiny", must be one of matt, satin, gloss
          "make":"unstated"|$.paints[0].make: is "unstated", must be one of single-pigment, ready-mixed
          "use":"glaze"|$.paints[0].use: is "glaze", must be one of paint, wash, filter, ink, primer, varnish, thinner
          "thinned":"yes"|$.paints[0].thinned: is "yes", must be true or false
          "effect":"glow"|$.paints[0].effect: is "glow", must be one of metallic, pearl, fluorescent
          "colour":"#123456"|$.paints[0].colour: is an unknown field; known here: name, medium, finish, masstone, make, hiding, drawdown, dropMillilitres, swatchError, effect, notes, optics, bottle, use, thinned
          "optics":{}|$.paints[0].optics: has no field 'from', must have one
          "odd field":1|$.paints[0]['odd field']: is an unknown field; known here: name, medium, finish, masstone, make, hiding, drawdown, dropMillilitres, swatchError, effect, notes, optics, bottle, use, thinned
          "notes":"a","notes":"b"|$.paints[0].notes: is given twice
          "notes":["a"]|$.paints[0].notes: is a list, must be a string
          "notes":true|$.paints[0].notes: is true, must be a string
          """)
  void refusesAFieldOfAPaint(String field, String message) {
    assertRefused(shelf("{" + GREY + "," + field + "}"), message);
  }

  @ParameterizedTest(name = "{0} is refused at {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          |$.paints: holds 0 items, must hold 1 to 10000
          {}|$.paints[0]: has no field 'name', must have one
          {"name":"","medium":"acrylic"}|$.paints[0].name: has 0 characters, must have 1 to 200 and not be blank
          {"name":"a\\nb","medium":"acrylic"}|$.paints[0].name: holds a line break or another control character
          {"name":"a","medium":"acryl"}|$.paints[0].medium: is "acryl", must be one of acrylic, lacquer, enamel, oil, water
          {"name":"a","medium":"oil"},{"name":"a","medium":"oil"}|$.paints[1].name: is "a", the name of $.paints[0] already, must be another
          7|$.paints[0]: is 7, must be an object
          """)
  void refusesPaints(String paints, String message) {
    assertRefused(shelf(paints == null ? "" : paints), message);
  }

  @ParameterizedTest(name = "{0} is refused at {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {}|$: has no field 'format', must have one
          {"format":"other"}|$.format: is "other", must be "swatchwright-shelf"
          {"format":"swatchwright-shelf","version":2}|$.version: is 2, must be 1, the version that is known
          {"format":"swatchwright-shelf","version":1,"name":"s","surface":{"k1":1,"k2":0},"paints":[{}]}|$.surface.k1: is 1.0, must be within [0.0, 0.9999999999999999]
          {"format":1}|$.format: is 1, must be a string
          "shelf"|$: is "shelf", must be an object
          {"name":|line 1, column 9: the text ends too early: a } or ] is missing, or a quotation mark
          {"name" 1}|line 1, column 9: a colon is missing between a name and its value, before 1
          {"a":1,}|line 1, column 8: there is a comma before the closing }, which has to go
          {"a":[1,]}|line 1, column 9: there is a comma before the closing ], which has to go
          {"a":1 "b":2}|line 1, column 8: a comma is missing before "
          {'a':1}|line 1, column 2: text and names stand in straight quotation marks, "…", not in '
          {“a”:1}|line 1, column 2: text and names stand in straight quotation marks, "…", not in “
          {"a":}|line 1, column 6: a value must stand here, not }
          {a:1}|line 1, column 2: a name in quotation marks, "…", must stand here, not a
          {"a":matt}|line 1, column 6: 'matt' is no number: text stands in quotation marks, "…"
          // a shelf|line 1, column 1: JSON has no comments; a paint has a field "notes"
          {} {}|line 1, column 4: more text after the end of the document
          """)
  void refusesADocument(String text, String message) {
    assertRefused(text, message);
  }

  @Test
  void refusesAnEmptyDocument() {
    assertRefused(" ", "$: is empty, must hold a JSON object");
  }

  @Test
  void keepsMessagesToOneLineWhateverTheInputHolds() {
    assertRefused(
        shelf("{" + GREY + ",\"finish\":\"a\\nb\\u2028c\"}"),
        "$.paints[0].finish: is \"a b c\", must be one of matt, satin, gloss");
    assertRefused(
        shelf("{" + GREY + ",\"finish\":\"" + "x".repeat(500) + "\"}"),
        "$.paints[0].finish: is \"" + "x".repeat(60) + "…\", must be one of matt, satin, gloss");
  }

  @Test
  void refusesAFileBeyondTheLimitWithoutReadingItAll() {
    byte[] bytes = " ".repeat(50_000_000).getBytes(StandardCharsets.UTF_8);
    ByteArrayInputStream in = new ByteArrayInputStream(bytes);

    assertThatThrownBy(() -> ShelfJson.read(in, "big.json"))
        .isInstanceOf(JsonInputException.class)
        .hasMessage("big.json: $: is longer than 10000000 bytes, the most that is read");
    assertThat(in.available()).isGreaterThan(39_000_000);
  }

  @Test
  void refusesWhatIsTooDeepOrTooLong() {
    assertRefusedAt(
        "[".repeat(17),
        "line 1, column 18: Document nesting depth (17) exceeds the maximum allowed (16)");
    assertRefusedAt(
        shelf("{" + GREY + ",\"notes\":\"" + "x".repeat(20_001) + "\"}"),
        "String value length (20001) exceeds the maximum allowed (20000)");
    assertRefusedAt(
        shelf("{" + GREY + ",\"swatchError\":" + "1".repeat(101) + "}"),
        "Number value length (101) exceeds the maximum allowed (100)");
  }

  private static String shelf(String paints) {
    return "{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"s\",\"paints\":["
        + paints
        + "]}";
  }

  private static void assertRefused(String text, String message) {
    assertThatThrownBy(() -> ShelfJson.parse(text, "my.json"))
        .isInstanceOf(JsonInputException.class)
        .hasMessage("my.json: " + message);
  }

  private static void assertRefusedAt(String text, String end) {
    assertThatThrownBy(() -> ShelfJson.parse(text, "my.json"))
        .isInstanceOf(JsonInputException.class)
        .hasMessageStartingWith("my.json: line 1, column ")
        .hasMessageEndingWith(end)
        .hasMessageNotContaining("\n");
  }

  @Test
  void anEmbedderCanTakeInLess() {
    byte[] shelf = ("{\"format\":\"" + "x".repeat(50) + "\"}").getBytes(StandardCharsets.UTF_8);
    ReadLimits small = ReadLimits.USUAL.withMostBytes(20);
    assertThatThrownBy(() -> ShelfJson.read(new ByteArrayInputStream(shelf), "s", small))
        .isInstanceOf(JsonInputException.class)
        .hasMessage("s: $: is longer than 20 bytes, the most that is read");
    assertThatThrownBy(() -> CardsJson.read(new ByteArrayInputStream(shelf), "c", small))
        .hasMessage("c: $: is longer than 20 bytes, the most that is read");
  }
}
