package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Drops;
import io.github.swatchwright.card.CardPart.Fact;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Line;
import io.github.swatchwright.card.CardPart.Lines;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.card.CardPart.Picture;
import io.github.swatchwright.card.CardPart.Row;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Parts of a card as elements of a page for the screen. */
final class HtmlParts {
  /** Figures are drawn that large; the style sheet gives them their place. */
  private static final double SIDE = 120;

  private static final double PITCH = 20;
  private static final double LINE_SWATCH = 48;

  private HtmlParts() {}

  /** A part as an element. */
  static Markup of(CardPart part) {
    if (part instanceof Section section) {
      return section(section);
    }
    if (part instanceof Colours colours) {
      return colours(colours);
    }
    if (part instanceof Drops drops) {
      return Markup.of("ul", drops.rows().stream().map(HtmlParts::row).toList())
          .with("class", "drops");
    }
    if (part instanceof Facts facts) {
      return facts(facts);
    }
    if (part instanceof Lines lines) {
      return Markup.of("ul", lines.lines().stream().map(HtmlParts::line).toList())
          .with("class", "lines");
    }
    if (part instanceof Picture picture) {
      return Markup.of("figure")
          .add(PageSvg.figure(picture.speckle().figure(0, 0, 5 * SIDE)))
          .add(Markup.of("figcaption", picture.caption() + " " + picture.speckle().scale()));
    }
    if (part instanceof Note note) {
      return Markup.of("p")
          .with("class", "note")
          .with("role", "note")
          .add(Markup.of("strong", note.word()))
          .text(" " + note.text());
    }
    return Markup.of("p", ((Sentence) part).text());
  }

  private static Markup section(Section section) {
    Markup title = Markup.of("h2");
    Markup marked =
        section.mark().isEmpty()
            ? title
            : title.add(Markup.of("span", section.mark()).with("class", "mark"));
    return Markup.of("section")
        .add(marked.add(Markup.of("bdi", section.heading())))
        .add(section.parts().stream().map(HtmlParts::of).toList());
  }

  /** Two squares' width beside a ring, three without. */
  private static Markup colours(Colours colours) {
    boolean ringed = colours.ring().isPresent();
    Page.Figure fields =
        new SwatchRow(colours.colours()).figure(0, 0, SIDE * (ringed ? 2 : 3), SIDE);
    Markup pictures = Markup.of("div").with("class", "pictures").add(PageSvg.figure(fields));
    List<Markup> words = new ArrayList<>();
    for (Named named : colours.colours()) {
      words.add(caption(named.name(), new ScreenColour(named.colour()).notation()));
    }
    if (ringed) {
      Page.Figure ring = new IntervalRing(colours.ring().orElseThrow()).figure(0, 0, SIDE);
      pictures = pictures.add(PageSvg.figure(ring));
      words.add(caption("Ring", List.of("or like these")));
    }
    return Markup.of("div")
        .with("class", "colours")
        .add(pictures)
        .add(Markup.of("dl").with("class", ringed ? "captions ringed" : "captions").add(words));
  }

  private static Markup caption(String name, List<String> lines) {
    return Markup.of("div")
        .add(Markup.of("dt", name))
        .add(lines.stream().map(line -> Markup.of("dd", line)).toList());
  }

  private static Markup row(Row row) {
    Markup paint =
        Markup.of("div")
            .with("class", "paint")
            .add(Markup.of("bdi", row.name()))
            .add(Markup.of("span", row.detail()).with("class", "soft"));
    if (row.dots().isPresent()) {
      DropDots dots = new DropDots(row.count(), row.dots().get());
      paint = paint.add(PageSvg.figure(dots.figure(0, 0, PITCH)));
    }
    return Markup.of("li").add(Markup.of("strong", Markup.number(row.count()))).add(paint);
  }

  /** A list in HTML has each label once, with all that it says. */
  private static Markup facts(Facts facts) {
    Map<String, Markup> byLabel = new LinkedHashMap<>();
    for (Fact fact : facts.facts()) {
      Markup row =
          byLabel.getOrDefault(fact.label(), Markup.of("div").add(Markup.of("dt", fact.label())));
      byLabel.put(fact.label(), row.add(Markup.of("dd", fact.text())));
    }
    List<Markup> rows = List.copyOf(byLabel.values());
    return Markup.of("dl", rows).with("class", "facts");
  }

  private static Markup line(Line line) {
    Markup item = Markup.of("li");
    if (!line.mark().isEmpty()) {
      item = item.add(Markup.of("strong", line.mark()));
    }
    if (!line.colours().isEmpty()) {
      List<Named> named = line.colours().stream().map(lab -> new Named("", lab)).toList();
      Page.Figure fields =
          new SwatchRow(named).figure(0, 0, LINE_SWATCH * named.size(), 0.8 * LINE_SWATCH);
      item = item.add(PageSvg.figure(fields).with("width", LINE_SWATCH * named.size()));
    }
    Markup words = Markup.of("div").with("class", "paint").add(Markup.of("bdi", line.text()));
    return item.add(
        line.detail().isEmpty()
            ? words
            : words.add(Markup.of("span", line.detail()).with("class", "soft")));
  }
}
