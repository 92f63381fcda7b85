package io.github.swatchwright.card;

import io.github.swatchwright.sheet.Spot;
import java.util.List;

/**
 * A page of paper as shapes, in the order in which they are drawn, for whatever shows or prints it.
 * Lengths are millimetres from the left upper corner.
 *
 * @param width of the paper
 * @param height of the paper
 * @param shapes what to draw on white
 */
public record Page(double width, double height, List<Shape> shapes) {
  /** Copies the list. */
  public Page {
    shapes = List.copyOf(shapes);
  }

  /** Something to draw. */
  public sealed interface Shape {}

  /**
   * A filled rectangle.
   *
   * @param left its left edge
   * @param top its upper edge
   * @param width its width
   * @param height its height
   * @param ink what it is filled with
   */
  public record Box(double left, double top, double width, double height, Ink ink)
      implements Shape {}

  /**
   * A filled disc, or a sector of one.
   *
   * @param x of its middle
   * @param y of its middle
   * @param radius its radius
   * @param from where the sector begins, in turns clockwise from the top, 0 to 1
   * @param to where it ends; 0 and 1 make a whole disc
   * @param ink what it is filled with
   */
  public record Disc(double x, double y, double radius, double from, double to, Ink ink)
      implements Shape {
    /** A whole disc. */
    static Disc whole(double x, double y, double radius, Ink ink) {
      return new Disc(x, y, radius, 0, 1, ink);
    }

    /** Whether it is a whole disc. */
    public boolean isWhole() {
      return to - from >= 1;
    }
  }

  /**
   * Smooth closed curves, filled inside; holes run the other way round (non-zero rule). Each is a
   * closed quadratic B-spline: it touches each side of its control polygon in the middle.
   *
   * @param left where the curves have their origin
   * @param top where the curves have their origin
   * @param scale millimetres of a unit of the curves
   * @param curves the control points of each, at least three
   * @param ink what they are filled with
   */
  public record Curves(double left, double top, double scale, List<List<Spot>> curves, Ink ink)
      implements Shape {
    /** Copies the list. */
    public Curves {
      curves = curves.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A line of text.
   *
   * @param left where it begins
   * @param baseline its base line
   * @param size of the letters
   * @param isBold whether the letters are bold
   * @param text the text
   * @param most the width that it has to stay within
   * @param ink what it is written with
   */
  public record Words(
      double left, double baseline, double size, boolean isBold, String text, double most, Ink ink)
      implements Shape {}

  /**
   * Shapes that are one picture, told in words, cut off at its edges.
   *
   * @param left its left edge
   * @param top its upper edge
   * @param width its width
   * @param height its height
   * @param description what it shows
   * @param shapes what it is drawn of
   */
  public record Figure(
      double left, double top, double width, double height, String description, List<Shape> shapes)
      implements Shape {
    /** Copies the list. */
    public Figure {
      shapes = List.copyOf(shapes);
    }
  }
}
