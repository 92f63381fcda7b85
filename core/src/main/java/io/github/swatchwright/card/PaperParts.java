package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Drops;
import io.github.swatchwright.card.CardPart.Fact;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Lines;
import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.card.CardPart.Picture;
import io.github.swatchwright.card.CardPart.Row;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Parts of a card laid out for paper: words to the left, colours and pictures to the right. */
final class PaperParts {
  private static final double RIGHT = 62;
  private static final double GUTTER = 4;
  private static final double BOX = 2.9;

  private final PaperText text;

  PaperParts(PaperText text) {
    this.text = text;
  }

  /** A part in one piece. */
  Laid laid(CardPart part, double width) {
    if (part instanceof Section section) {
      return Laid.stack(List.of(heading(section, width), new Columns(section, width).laid()));
    }
    return Laid.stack(rows(part, width, false));
  }

  /** The rows of a part that may be torn between them. */
  List<Laid> rows(CardPart part, double width) {
    return rows(part, width, false);
  }

  private List<Laid> rows(CardPart part, double width, boolean isStep) {
    if (part instanceof Drops drops) {
      return drops.rows().stream().map(row -> row(row, width, isStep)).toList();
    }
    if (part instanceof Facts facts) {
      return facts.facts().stream().map(fact -> fact(fact, width)).toList();
    }
    if (part instanceof Lines lines) {
      return new PaperLines(text, lines.lines()).rows(width);
    }
    if (part instanceof Note note) {
      return List.of(text.said(note.word(), note.text(), text.small(), width).below(1.1));
    }
    if (part instanceof Sentence sentence) {
      return List.of(
          text.paragraph(sentence.text(), text.normal(), false, Ink.BLACK, width).below(1));
    }
    if (part instanceof Colours colours) {
      return List.of(new PaperColours(text).laid(colours, width));
    }
    if (part instanceof Picture picture) {
      return List.of(picture(picture, width));
    }
    return List.of(laid(part, width));
  }

  /**
   * A section's parts in two columns, where it has colours or pictures. Sentences before and behind
   * what the section is about go across.
   */
  private final class Columns {
    private final double width;
    private final boolean isStep;
    private final List<CardPart> above = new ArrayList<>();
    private final List<CardPart> beside = new ArrayList<>();
    private final List<CardPart> below = new ArrayList<>();

    Columns(Section section, double width) {
      this.width = width;
      this.isStep = !section.mark().isEmpty();
      List<CardPart> parts = section.parts();
      int first = 0;
      while (first < parts.size() && !isBody(parts.get(first))) {
        first++;
      }
      int last = parts.size() - 1;
      while (last > first && !isBody(parts.get(last))) {
        last--;
      }
      for (int i = 0; i < parts.size(); i++) {
        boolean isAcross = parts.get(i) instanceof Note || parts.get(i) instanceof Sentence;
        (isAcross && i < first ? above : isAcross && i > last ? below : beside).add(parts.get(i));
      }
    }

    private static boolean isBody(CardPart part) {
      return part instanceof Drops || part instanceof Lines || part instanceof Facts;
    }

    /** Whether the section lists facts about one thing, after it. */
    private boolean factsComeLast() {
      boolean known = false;
      for (CardPart part : beside) {
        if (known && part instanceof Drops) {
          return false;
        }
        known |= part instanceof Facts;
      }
      return known;
    }

    Laid laid() {
      return Laid.stack(List.of(across(above), columns(), across(below)));
    }

    private Laid across(List<CardPart> parts) {
      return Laid.stack(
          parts.stream().flatMap(part -> rows(part, width, isStep).stream()).toList());
    }

    private Laid columns() {
      if (beside.stream().noneMatch(PaperParts::isPicture)) {
        return across(beside);
      }
      if (beside.stream().allMatch(PaperParts::isPicture)) {
        return parted(part -> part != beside.get(0));
      }
      Laid pictures = parted(PaperParts::isPicture);
      if (!factsComeLast()) {
        return pictures;
      }
      Laid facts = parted(part -> isPicture(part) || part instanceof Facts);
      return facts.height() < pictures.height() ? facts : pictures;
    }

    private Laid parted(Predicate<CardPart> isRight) {
      List<Laid> left = new ArrayList<>();
      List<Laid> right = new ArrayList<>();
      double narrow = width - RIGHT - GUTTER;
      for (CardPart part : beside) {
        if (isRight.test(part)) {
          right.addAll(rows(part, RIGHT, isStep));
        } else {
          left.addAll(rows(part, narrow, isStep));
        }
      }
      return Laid.beside(Laid.stack(left), Laid.stack(right), narrow + GUTTER);
    }
  }

  private static boolean isPicture(CardPart part) {
    return part instanceof Colours || part instanceof Picture;
  }

  /** A section's heading, with a box to tick where something is to be done. */
  Laid heading(Section section, double width) {
    double size = text.large();
    boolean isToDo =
        !section.mark().isEmpty() && section.parts().stream().anyMatch(Drops.class::isInstance);
    double indent = isToDo ? BOX * text.scale() + 1.6 : 0;
    String words = (section.mark() + "  " + section.heading()).trim();
    Laid line = text.paragraph(words, size, true, Ink.BLACK, width - indent);
    Laid rule =
        new Laid(
            1.3, (page, left, top) -> page.add(new Page.Box(left, top, width, 0.5, Ink.BLACK)));
    Laid marked = isToDo ? Laid.beside(box(size), line, indent) : line;
    return Laid.stack(List.of(Laid.space(2.2), rule, marked, Laid.space(0.6)));
  }

  /** A box to tick beside a line of that size. */
  private Laid box(double size) {
    double side = BOX * text.scale();
    return new Laid(
        side,
        (page, left, top) -> {
          double upper = top + (size * 1.28 - side) / 2;
          PaperColours.frame(page, left, upper, side, side, 0.3, Ink.BLACK);
        });
  }

  private Laid row(Row row, double width, boolean isStep) {
    double indent = isStep ? BOX * text.scale() + 1.6 : 0;
    double number = 1.7 * text.huge();
    double inner = width - indent - number;
    List<Laid> lines = new ArrayList<>();
    lines.add(text.paragraph(row.name(), text.large(), true, Ink.BLACK, inner));
    lines.add(text.paragraph(row.detail(), text.small(), false, Ink.SOFT, inner));
    row.dots().ifPresent(colour -> lines.add(dots(new DropDots(row.count(), colour), inner)));
    Laid count = text.line(Markup.number(row.count()), text.huge(), true, Ink.BLACK, number - 1);
    Laid head = Laid.beside(isStep ? box(text.huge()) : Laid.EMPTY, count, indent);
    return text.ruled(Laid.beside(head, Laid.stack(lines), indent + number), width);
  }

  private Laid dots(DropDots dots, double width) {
    double pitch = Math.min(3.4 * text.scale(), width / 10.4);
    return new Laid(
        dots.height(pitch) + 0.6,
        (page, left, top) -> page.add(dots.figure(left, top + 0.4, pitch)));
  }

  private Laid fact(Fact fact, double width) {
    double label = 8.2 * text.small();
    return text.ruled(
        Laid.beside(
            text.paragraph(fact.label(), text.small(), false, Ink.SOFT, label - 1.5),
            text.paragraph(fact.text(), text.normal(), false, Ink.BLACK, width - label),
            label),
        width);
  }

  private Laid picture(Picture picture, double width) {
    double wide = Math.min(width, RIGHT);
    Page.Figure figure = picture.speckle().figure(0, 0, wide);
    Laid drawing =
        new Laid(
            figure.height() + 1,
            (page, left, top) -> page.add(picture.speckle().figure(left, top, wide)));
    return Laid.stack(
        List.of(
            Laid.space(1.2),
            drawing,
            text.paragraph(
                picture.caption() + " " + picture.speckle().scale(),
                text.small(),
                false,
                Ink.BLACK,
                wide)));
  }
}
