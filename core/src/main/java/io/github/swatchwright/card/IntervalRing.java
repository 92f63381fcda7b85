package io.github.swatchwright.card;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Prediction;
import java.util.ArrayList;
import java.util.List;

/**
 * A colour in the middle of those that it may turn out as: a ring of neighbours on the edge of the
 * 80 % interval, the lightest on top. A ring that looks like its middle is good news: the
 * prediction is sure.
 *
 * @param spread the colour and how well it is known
 */
record IntervalRing(ColourSpread spread) {
  private static final int NEIGHBOURS = 16;
  private static final double SIZE = 120;
  private static final double OUTER = 59;
  private static final double INNER = 32;

  Figure figure() {
    List<Lab> outline = spread.outline(NEIGHBOURS, Prediction.INTERVAL_PROBABILITY);
    List<Markup> shapes = new ArrayList<>();
    boolean allTrue = true;
    for (int i = 0; i < NEIGHBOURS; i++) {
      ScreenColour neighbour = new ScreenColour(outline.get(i));
      allTrue &= neighbour.isTrue();
      shapes.add(sector(i).with("fill", neighbour.hex()));
    }
    ScreenColour middle = new ScreenColour(spread.centre());
    shapes.add(
        Markup.of("circle")
            .with("class", "swatch")
            .with("cx", SIZE / 2)
            .with("cy", SIZE / 2)
            .with("r", INNER)
            .with("fill", middle.hex()));
    String description =
        "Ring of colours that may come out instead of "
            + middle.hex()
            + ": from "
            + new ScreenColour(outline.get(0)).hex()
            + " on top to "
            + new ScreenColour(outline.get(NEIGHBOURS / 2)).hex()
            + " at the bottom"
            + (allTrue ? "" : "; some are " + ScreenColour.TOO_STRONG);
    return new Figure(SIZE, SIZE, description, shapes);
  }

  /** A sector from the middle, a little too wide so that no gap shows; the next one covers it. */
  private static Markup sector(int number) {
    double from = (number - 0.5) * 2 * Math.PI / NEIGHBOURS;
    double to = (number + 0.55) * 2 * Math.PI / NEIGHBOURS;
    return Markup.of("path").with("d", "M60 60L" + rim(from) + "A59 59 0 0 1 " + rim(to) + "Z");
  }

  private static String rim(double clockwise) {
    return Markup.number(SIZE / 2 + OUTER * Math.sin(clockwise))
        + " "
        + Markup.number(SIZE / 2 - OUTER * Math.cos(clockwise));
  }
}
