package io.github.swatchwright.card;

import io.github.swatchwright.colour.Lab;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A pair of axes in a picture, and marks on them.
 *
 * @param left the left edge in the picture
 * @param top the upper edge
 * @param across the horizontal axis
 * @param up the vertical axis
 */
record PlotPanel(double left, double top, Axis across, Axis up) {
  /** The side of the square that the axes span. */
  static final double SIDE = 400;

  private static final String INK = "#1A1A1A";
  private static final String LINE = "#C8C8C8";
  private static final double MARK = 5;

  /**
   * An axis.
   *
   * @param from the value at its beginning
   * @param to the value at its end
   * @param step distance of its ticks
   * @param name what it measures
   */
  record Axis(double from, double to, double step, String name) {
    private double place(double value) {
      return (value - from) / (to - from) * SIDE;
    }
  }

  private double x(double value) {
    return left + across.place(value);
  }

  private double y(double value) {
    return top + SIDE - up.place(value);
  }

  /** Whether a mark lies within the axes. */
  boolean holds(double valueAcross, double valueUp) {
    return valueAcross >= across.from()
        && valueAcross <= across.to()
        && valueUp >= up.from()
        && valueUp <= up.to();
  }

  /** Frame, lines, numbers and names of the axes. */
  List<Markup> frame(String title) {
    List<Markup> shapes = new ArrayList<>();
    for (double value = across.from(); value <= across.to(); value += across.step()) {
      shapes.add(line(x(value), y(up.from()), x(value), y(up.to())));
      shapes.add(text(x(value), top + SIDE + 22, "middle", number(value)));
    }
    for (double value = up.from(); value <= up.to(); value += up.step()) {
      shapes.add(line(x(across.from()), y(value), x(across.to()), y(value)));
      shapes.add(text(left - 8, y(value) + 5, "end", number(value)));
    }
    shapes.add(text(left + SIDE / 2, top + SIDE + 48, "middle", across.name()));
    shapes.add(
        text(0, 0, "middle", up.name())
            .with(
                "transform",
                "translate("
                    + Markup.number(left - 50)
                    + " "
                    + Markup.number(top + SIDE / 2)
                    + ") rotate(-90)"));
    shapes.add(text(left, top - 14, "start", title).with("font-weight", "bold"));
    return shapes;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.0f", value).replace('-', '\u2212');
  }

  private static Markup line(double x1, double y1, double x2, double y2) {
    return Markup.of("line")
        .with("x1", x1)
        .with("y1", y1)
        .with("x2", x2)
        .with("y2", y2)
        .with("stroke", LINE)
        .with("stroke-width", 1);
  }

  /** A text in the picture. */
  static Markup text(double x, double y, String anchor, String words) {
    return Markup.of("text", words)
        .with("x", x)
        .with("y", y)
        .with("text-anchor", anchor)
        .with("fill", INK);
  }

  /** A colour that can be mixed: a disc of it. */
  Markup disc(double valueAcross, double valueUp, Lab colour) {
    return discAt(x(valueAcross), y(valueUp), colour);
  }

  /** The same at a place of the picture. */
  static Markup discAt(double x, double y, Lab colour) {
    return Markup.of("circle")
        .with("cx", x)
        .with("cy", y)
        .with("r", MARK)
        .with("fill", new ScreenColour(colour).hex())
        .with("stroke", "#808080")
        .with("stroke-width", 0.5);
  }

  /** A paint as it is in the bottle: a square of its colour. */
  Markup square(double valueAcross, double valueUp, Lab colour, String name) {
    return squareAt(x(valueAcross), y(valueUp), colour).add(Markup.of("title", name));
  }

  /** The same at a place of the picture. */
  static Markup squareAt(double x, double y, Lab colour) {
    double side = 2.6 * MARK;
    return Markup.of("rect")
        .with("x", x - side / 2)
        .with("y", y - side / 2)
        .with("width", side)
        .with("height", side)
        .with("fill", new ScreenColour(colour).hex())
        .with("stroke", INK)
        .with("stroke-width", 2);
  }

  /** A colour that can't be mixed: a cross. */
  Markup cross(double valueAcross, double valueUp) {
    return crossAt(x(valueAcross), y(valueUp));
  }

  /** The same at a place of the picture. */
  static Markup crossAt(double x, double y) {
    double arm = 0.8 * MARK;
    String path =
        "M"
            + Markup.number(x - arm)
            + " "
            + Markup.number(y - arm)
            + "L"
            + Markup.number(x + arm)
            + " "
            + Markup.number(y + arm)
            + "M"
            + Markup.number(x - arm)
            + " "
            + Markup.number(y + arm)
            + "L"
            + Markup.number(x + arm)
            + " "
            + Markup.number(y - arm);
    return Markup.of("path")
        .with("d", path)
        .with("fill", "none")
        .with("stroke", INK)
        .with("stroke-width", 1.4);
  }
}
