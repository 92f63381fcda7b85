package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Named;
import java.util.ArrayList;
import java.util.List;

/**
 * Colours laid out for paper, with their ring and a place for a dab of the real paint beside those
 * that are predicted.
 */
final class PaperColours {
  private static final double HIGH = 15;
  private static final double LOW = 10;
  private static final double GAP = 1.6;
  private static final double WIDEST = 80;

  private final PaperText text;

  PaperColours(PaperText text) {
    this.text = text;
  }

  /** Fields that touch, then the ring, then the place for a dab; below, what they are. */
  Laid laid(Colours colours, double width) {
    double wide = Math.min(width, WIDEST);
    double most = places(colours) == 0 ? LOW : HIGH;
    double high = Math.min(most * text.scale(), (wide - 2 * GAP) / 4);
    double fields = wide - places(colours) * (high + GAP);
    Laid drawing =
        new Laid(
            high + 0.6,
            (page, left, top) -> {
              page.add(new SwatchRow(colours.colours()).figure(left, top, fields, high));
              colours
                  .ring()
                  .ifPresent(
                      ring -> {
                        page.add(new IntervalRing(ring).figure(left + fields + GAP, top, high));
                      });
              if (colours.isToDo()) {
                dab(page, left + wide - high, top, high);
              }
            });
    return Laid.stack(List.of(Laid.space(1.2), drawing, captions(colours, wide, fields, high)));
  }

  private Laid captions(Colours colours, double wide, double fields, double high) {
    double each = fields / colours.colours().size();
    Laid captions = Laid.EMPTY;
    double offset = 0;
    for (Named named : colours.colours()) {
      List<String> lines = new ScreenColour(named.colour()).notation();
      captions = Laid.beside(captions, caption(named.name(), lines, each - 1), offset);
      offset += each;
    }
    if (colours.ring().isPresent()) {
      captions =
          Laid.beside(captions, caption("Ring", List.of("or like these"), high), fields + GAP);
    }
    if (colours.isToDo()) {
      captions = Laid.beside(captions, caption("Dab", List.of("judge it dry"), high), wide - high);
    }
    return captions;
  }

  /** The ring and the place for a dab. */
  private static int places(Colours colours) {
    return (colours.ring().isPresent() ? 1 : 0) + (colours.isToDo() ? 1 : 0);
  }

  private Laid caption(String name, List<String> lines, double width) {
    double size = 0.9 * text.small();
    List<Laid> all = new ArrayList<>();
    all.add(text.paragraph(name, size, true, Ink.BLACK, width));
    for (String line : lines) {
      all.add(
          line.contains(" ")
              ? text.paragraph(line, size, false, Ink.SOFT, width)
              : text.line(line, size, false, Ink.SOFT, width));
    }
    return Laid.stack(all);
  }

  /** A frame of dashes: paint goes in here. */
  private static void dab(List<Page.Shape> page, double left, double top, double side) {
    double dash = side / 11;
    for (int i = 0; i < 11; i += 2) {
      page.add(new Page.Box(left + i * dash, top, dash, 0.25, Ink.BLACK));
      page.add(new Page.Box(left + i * dash, top + side - 0.25, dash, 0.25, Ink.BLACK));
      page.add(new Page.Box(left, top + i * dash, 0.25, dash, Ink.BLACK));
      page.add(new Page.Box(left + side - 0.25, top + i * dash, 0.25, dash, Ink.BLACK));
    }
  }

  /** A frame of four lines. */
  static void frame(
      List<Page.Shape> page,
      double left,
      double top,
      double width,
      double height,
      double line,
      Ink ink) {
    page.add(new Page.Box(left, top, width, line, ink));
    page.add(new Page.Box(left, top + height - line, width, line, ink));
    page.add(new Page.Box(left, top, line, height, ink));
    page.add(new Page.Box(left + width - line, top, line, height, ink));
  }
}
