package io.github.swatchwright.card;

import io.github.swatchwright.argument.Printable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An element of a page or picture, with attributes, elements and texts in it. Written so that both
 * HTML and XML readers understand it; here, and nowhere else, text is escaped. Immutable.
 */
final class Markup {
  /** Elements that HTML ends by themselves. */
  private static final Set<String> WITHOUT_END = Set.of("meta", "br");

  private static final int DECIMALS = 2;

  private final String name;
  private final Map<String, String> attributes;
  private final List<Object> content;

  private Markup(String name, Map<String, String> attributes, List<Object> content) {
    this.name = name;
    this.attributes = attributes;
    this.content = content;
  }

  /** An element with nothing in it. */
  static Markup of(String name) {
    return new Markup(name, Map.of(), List.of());
  }

  /** An element with a text in it. */
  static Markup of(String name, String text) {
    return of(name).text(text);
  }

  /** An element with elements in it. */
  static Markup of(String name, List<Markup> elements) {
    return of(name).add(elements);
  }

  /** This element with an attribute set. */
  Markup with(String attribute, String value) {
    Map<String, String> more = new LinkedHashMap<>(attributes);
    more.put(attribute, value);
    return new Markup(name, more, content);
  }

  /** This element with an attribute set to a number, of two decimals at most. */
  Markup with(String attribute, double value) {
    return with(attribute, number(value));
  }

  /** This element with a text at its end. */
  Markup text(String text) {
    return appended(List.of(text));
  }

  /** This element with another at its end. */
  Markup add(Markup element) {
    return appended(List.of(element));
  }

  /** This element with others at its end. */
  Markup add(List<Markup> elements) {
    return appended(elements);
  }

  private Markup appended(List<?> more) {
    List<Object> all = new ArrayList<>(content);
    all.addAll(more);
    return new Markup(name, attributes, all);
  }

  /** A number of two decimals at most, with a decimal point. */
  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder();
    write(out);
    return out.toString();
  }

  private void write(StringBuilder out) {
    out.append('<').append(name);
    attributes.forEach(
        (attribute, value) ->
            out.append(' ').append(attribute).append("=\"").append(escaped(value)).append('"'));
    out.append('>');
    if (WITHOUT_END.contains(name)) {
      return;
    }
    boolean lines = !content.isEmpty() && content.stream().allMatch(Markup.class::isInstance);
    for (Object part : content) {
      if (lines) {
        out.append('\n');
      }
      if (part instanceof Markup element) {
        element.write(out);
      } else {
        out.append(escaped((String) part));
      }
    }
    out.append(lines ? "\n</" : "</").append(name).append('>');
  }

  /** The text with its markup characters as entities, and what can't be shown as U+FFFD. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(codePoint -> escape(codePoint, safe));
    return safe.toString();
  }

  private static void escape(int codePoint, StringBuilder safe) {
    switch (codePoint) {
      case '&' -> safe.append("&amp;");
      case '<' -> safe.append("&lt;");
      case '>' -> safe.append("&gt;");
      case '"' -> safe.append("&quot;");
      default -> safe.appendCodePoint(isCharacter(codePoint) ? codePoint : 0xFFFD);
    }
  }

  /** What XML 1.0 (production 2) and HTML both allow, and what doesn't turn the text around it. */
  private static boolean isCharacter(int codePoint) {
    boolean inXml = (codePoint & 0xFFFE) != 0xFFFE && (codePoint < 0xFDD0 || codePoint > 0xFDEF);
    return codePoint == '\n' || codePoint == '\t' || (inXml && Printable.isShown(codePoint));
  }
}
