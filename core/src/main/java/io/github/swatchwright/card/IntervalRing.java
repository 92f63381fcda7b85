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

  /** The middle's share of the radius. */
  private static final double MIDDLE = 0.54;

  /** Sectors are a little too wide, so that no gap shows; the next one covers it. */
  private static final double OVERLAP = 0.1;

  /** The ring in a square of a page. */
  Page.Figure figure(double left, double top, double side) {
    List<Lab> outline = spread.outline(NEIGHBOURS, Prediction.INTERVAL_PROBABILITY);
    List<Page.Shape> shapes = new ArrayList<>();
    double x = left + side / 2;
    double y = top + side / 2;
    boolean allTrue = true;
    for (int i = 0; i < NEIGHBOURS; i++) {
      allTrue &= new ScreenColour(outline.get(i)).isTrue();
      shapes.add(
          new Page.Disc(
              x,
              y,
              side / 2,
              (i - 0.5) / NEIGHBOURS,
              (i + 0.5 + OVERLAP) / NEIGHBOURS,
              Ink.ofPaint(outline.get(i), "")));
    }
    shapes.add(Page.Disc.whole(x, y, MIDDLE * side / 2, Ink.ofPaint(spread.centre(), "swatch")));
    return new Page.Figure(left, top, side, side, description(outline, allTrue), shapes);
  }

  private String description(List<Lab> outline, boolean allTrue) {
    return "Ring of colours that may come out instead of "
        + new ScreenColour(spread.centre()).hex()
        + ": from "
        + new ScreenColour(outline.get(0)).hex()
        + " on top to "
        + new ScreenColour(outline.get(NEIGHBOURS / 2)).hex()
        + " at the bottom"
        + (allTrue ? "" : "; some are " + ScreenColour.TOO_STRONG);
  }
}
