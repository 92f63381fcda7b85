package io.github.swatchwright.card;

import io.github.swatchwright.argument.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Drops as dots that can be counted: in fives, ten to a row; a part of a drop is a part of a dot.
 *
 * @param drops how many, above 0 to {@value #MOST}
 * @param colour the paint's
 */
record DropDots(double drops, ScreenColour colour) {
  /** More than that nobody counts. */
  static final int MOST = 40;

  private static final int IN_ROW = 10;
  private static final int GROUP = 5;
  private static final double PITCH = 20;
  private static final double GAP = 8;
  private static final double RADIUS = 8.5;

  DropDots {
    Require.positive("drops", drops);
    Require.within("drops", drops, 0, MOST);
  }

  Figure figure() {
    int dots = (int) Math.ceil(drops);
    List<Markup> shapes = new ArrayList<>();
    for (int dot = 0; dot < dots; dot++) {
      shapes.add(dot(dot, Math.min(1, drops - dot)).with("fill", colour.hex()));
    }
    double rows = Math.ceil((double) dots / IN_ROW);
    String count = Markup.number(drops);
    String description = count.equals("1") ? "1 drop" : count + " drops";
    return new Figure(IN_ROW * PITCH + GAP, rows * PITCH, description, shapes);
  }

  private static Markup dot(int number, double part) {
    int column = number % IN_ROW;
    double x = (column + 0.5) * PITCH + (column >= GROUP ? GAP : 0);
    int row = number / IN_ROW;
    double y = (row + 0.5) * PITCH;
    if (part == 1) {
      return Markup.of("circle").with("class", "dot").with("cx", x).with("cy", y).with("r", RADIUS);
    }
    double angle = 2 * Math.PI * part;
    String radius = Markup.number(RADIUS);
    return Markup.of("path")
        .with("class", "dot")
        .with(
            "d",
            "M"
                + point(x, y)
                + "L"
                + point(x, y - RADIUS)
                + "A"
                + radius
                + " "
                + radius
                + " 0 "
                + (part > 0.5 ? 1 : 0)
                + " 1 "
                + point(x + RADIUS * Math.sin(angle), y - RADIUS * Math.cos(angle))
                + "Z");
  }

  private static String point(double x, double y) {
    return Markup.number(x) + " " + Markup.number(y);
  }
}
