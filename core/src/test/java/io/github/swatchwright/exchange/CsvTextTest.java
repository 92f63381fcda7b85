package io.github.swatchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.exchange.BadLinesException.BadLine;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTextTest {

  private static List<List<String>> read(String text) {
    List<BadLine> bad = new ArrayList<>();
    List<CsvRecord> records = CsvText.read(text, bad);
    assertThat(bad).isEmpty();
    return records.stream().map(CsvRecord::fields).toList();
  }

  @DisplayName("The examples of RFC 4180, section 2")
  @ParameterizedTest(name = "example {index}")
  @ValueSource(
      strings = {
        "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
        "aaa,bbb,ccc\r\nzzz,yyy,xxx",
        "\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"
      })
  void readsTheExamplesOfTheStandard(String text) {
    assertThat(read(text))
        .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
  }

  @DisplayName("RFC 4180, section 2, rules 6 and 7: line breaks and quotation marks in fields")
  @Test
  void readsFieldsInQuotationMarks() {
    assertThat(read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"))
        .containsExactly(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    assertThat(read("\"aaa\",\"b\"\"bb\",\"ccc\"")).containsExactly(List.of("aaa", "b\"bb", "ccc"));
  }

  @Property(seed = "180")
  void readsBackWhatItWrites(@ForAll("records") List<List<String>> records) {
    assertThat(read(CsvText.toText(records))).isEqualTo(records);
  }

  // A record of one blank field is an empty line, which is skipped.
  @Provide
  Arbitrary<List<List<String>>> records() {
    return Arbitraries.strings()
        .withChars(",\"\r\n\t aé\uFFFD;'=+-@1")
        .ofMaxLength(6)
        .list()
        .ofMinSize(2)
        .ofMaxSize(4)
        .list()
        .ofMaxSize(5);
  }

  /** What spreadsheets take for a formula (common practice, as security guides list it). */
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+x", "-x", "@SUM(A1)", "\tx", "\rx", "'=1", "''-x"})
  void aFormulaIsWrittenInertAndReadsBack(String field) {
    String text = CsvText.toText(List.of(List.of(field, "b")));
    assertThat(text.replace("\"", "")).startsWith("'");
    assertThat(read(text)).containsExactly(List.of(field, "b"));
  }

  @Test
  void numbersAreNoFormulas() {
    assertThat(CsvText.toText(List.of(List.of("-12.5", "+3e2")))).isEqualTo("-12.5,+3e2\r\n");
  }

  @Test
  void blanksAreKeptByQuotationMarks() {
    String text = CsvText.toText(List.of(List.of(" a ", "b")));
    assertThat(text).isEqualTo("\" a \",b\r\n");
    assertThat(read(text)).containsExactly(List.of(" a ", "b"));
    assertThat(read(" a , b ")).containsExactly(List.of("a", "b"));
  }

  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          a,b;c,d"e;f,g|2|has a quotation mark inside a field that doesn't begin with one
          a,b;"c",d;"e|3|has a quotation mark that is never closed
          a,b;"c"x,d;e,f|2|has text after a closing quotation mark, or a lone carriage return
          """)
  void namesTheLineThatBreaksTheRules(String text, int line, String reason) {
    List<BadLine> bad = new ArrayList<>();

    CsvText.read(text.replace(';', '\n'), bad);

    assertThat(bad).containsExactly(new BadLine(line, reason));
  }
}
