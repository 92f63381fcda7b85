package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class MarkupTest {

  @Test
  void writesElementsAttributesAndTexts() {
    Markup list =
        Markup.of("ul").with("class", "a").add(Markup.of("li", "one")).add(Markup.of("li"));
    assertThat(list).hasToString("<ul class=\"a\">\n<li>one</li>\n<li></li>\n</ul>");
    assertThat(Markup.of("meta").with("charset", "utf-8")).hasToString("<meta charset=\"utf-8\">");
  }

  @Test
  void writesNumbersShortAndWithAPoint() {
    assertThat(Markup.of("g").with("x", 1 / 3.0).with("y", -0.001).with("z", 1e6))
        .hasToString("<g x=\"0.33\" y=\"0\" z=\"1000000\"></g>");
  }

  @Test
  void escapesWhatWouldBeMarkup() {
    assertThat(Markup.of("p", "<b a='1'> & \"").with("title", "\"><script>"))
        .hasToString("<p title=\"&quot;&gt;&lt;script&gt;\">&lt;b a='1'&gt; &amp; &quot;</p>");
  }

  @Test
  void replacesWhatXmlCannotHold() {
    assertThat(Markup.escaped("a\0b\u001Bc\uFFFEd\uD800e\uFDD0f\u0085g"))
        .isEqualTo("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\uFFFDf\uFFFDg");
    assertThat(Markup.escaped("a\u202Eb\u2066c")).isEqualTo("a\uFFFDb\uFFFDc");
    assertThat(Markup.escaped("grün 水 🎨\n")).isEqualTo("grün 水 🎨\n");
  }

  @Property(tries = 200)
  void anyTextComesBackFromAnXmlReaderButForWhatCannotBeShown(@ForAll String text) {
    String read = Xml.parse(Markup.of("p", text).toString()).getTextContent();
    assertThat(read).isEqualTo(asXmlHoldsIt(text));
  }

  /**
   * Unicode's format characters, but for the joiners that scripts need, and its separators of lines
   * and paragraphs (chapter 23): they hide, turn or break text.
   */
  private static boolean isFormat(int point) {
    return switch (Character.getType(point)) {
      case Character.FORMAT -> point != 0x200C && point != 0x200D;
      case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> true;
      default -> false;
    };
  }

  /** XML 1.0, section 2.2; a carriage return counts as none, since readers change it (2.11). */
  private static String asXmlHoldsIt(String text) {
    StringBuilder held = new StringBuilder();
    text.codePoints()
        .map(point -> isXmlCharacter(point) && !isFormat(point) ? point : 0xFFFD)
        .forEach(held::appendCodePoint);
    return held.toString();
  }

  /** Control characters and non-characters are discouraged there, and left out here. */
  private static boolean isXmlCharacter(int point) {
    boolean discouraged =
        (point >= 0x7F && point <= 0x9F)
            || (point >= 0xFDD0 && point <= 0xFDEF)
            || (point & 0xFFFE) == 0xFFFE;
    boolean allowed =
        point == 0x9 || point == 0xA || (point >= 0x20 && point <= 0xD7FF) || point >= 0xE000;
    return allowed && !discouraged;
  }
}
