package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.List;

/**
 * Small facts, each with its label. Immutable.
 *
 * @param facts them
 */
record Facts(List<Fact> facts) implements Block {

  /**
   * A fact.
   *
   * @param label what it is about, a word or two
   * @param text what is so
   */
  record Fact(String label, String text) {}

  Facts {
    facts = List.copyOf(facts);
  }

  /** No facts yet. */
  static Facts none() {
    return new Facts(List.of());
  }

  /** These facts and one more. */
  Facts and(String label, String text) {
    List<Fact> more = new ArrayList<>(facts);
    more.add(new Fact(label, text));
    return new Facts(more);
  }

  @Override
  public Markup html() {
    List<Markup> rows = new ArrayList<>();
    for (Fact fact : facts) {
      rows.add(Markup.of("div", List.of(Markup.of("dt", fact.label), Markup.of("dd", fact.text))));
    }
    return Markup.of("dl", rows).with("class", "facts");
  }

  @Override
  public void draw(Sheet sheet) {
    for (Fact fact : facts) {
      sheet.rule();
      double top = sheet.y();
      sheet.line(fact.label, 0, Sheet.SMALL, "soft");
      sheet.back(top);
      sheet.paragraph(fact.text, 150, Sheet.NORMAL, "plain");
    }
  }
}
