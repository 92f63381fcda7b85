package io.github.swatchwright.card;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import java.util.ArrayList;
import java.util.List;

/**
 * Drops as dots that can be counted: in fives, ten to a row; a part of a drop is a part of a dot.
 *
 * @param drops how many, above 0 to {@value #MOST}
 * @param colour the paint's
 */
record DropDots(double drops, Lab colour) {
  /** More than that nobody counts. */
  static final int MOST = 40;

  private static final int IN_ROW = 10;
  private static final int GROUP = 5;

  /** The gap between fives, the dots' radius and the thickness of their rim, in dots' distances. */
  private static final double GAP = 0.4;

  private static final double RADIUS = 0.43;
  private static final double RIM = 0.06;

  DropDots {
    Require.positive("drops", drops);
    Require.within("drops", drops, 0, MOST);
  }

  /** How far the rows go for dots at that distance. */
  double height(double pitch) {
    return Math.ceil(Math.ceil(drops) / IN_ROW) * pitch;
  }

  /** The dots on a page, at that distance from each other. */
  Page.Figure figure(double left, double top, double pitch) {
    List<Page.Shape> shapes = new ArrayList<>();
    for (int dot = 0; dot < Math.ceil(drops); dot++) {
      int column = dot % IN_ROW;
      double x = left + (column + 0.5 + (column >= GROUP ? GAP : 0)) * pitch;
      int row = dot / IN_ROW;
      double y = top + (row + 0.5) * pitch;
      double part = Math.min(1, drops - dot);
      shapes.add(new Page.Disc(x, y, RADIUS * pitch, 0, part, Ink.BLACK));
      shapes.add(new Page.Disc(x, y, (RADIUS - RIM) * pitch, 0, part, Ink.ofPaint(colour, "dot")));
    }
    String count = Markup.number(drops);
    String description = count.equals("1") ? "1 drop" : count + " drops";
    return new Page.Figure(left, top, (IN_ROW + GAP) * pitch, height(pitch), description, shapes);
  }
}
