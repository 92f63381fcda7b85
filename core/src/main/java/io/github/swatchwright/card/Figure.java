package io.github.swatchwright.card;

import io.github.swatchwright.argument.Require;
import java.util.List;

/**
 * A drawing, and the words for those who can't see it.
 *
 * @param width in units of its own
 * @param height in the same units
 * @param description what it shows, in words
 * @param shapes SVG elements, lowest first
 */
record Figure(double width, double height, String description, List<Markup> shapes) {

  Figure {
    Require.positive("width", width);
    Require.positive("height", height);
    shapes = List.copyOf(shapes);
  }

  /** The drawing as an SVG element that scales to its place. */
  Markup svg() {
    return Markup.of("svg")
        .with("viewBox", "0 0 " + Markup.number(width) + " " + Markup.number(height))
        .with("role", "img")
        .with("aria-label", description)
        .add(shapes);
  }

  /** The drawing as a file of its own. */
  String toFile() {
    return svg()
            .with("xmlns", "http://www.w3.org/2000/svg")
            .with("width", width)
            .with("height", height)
        + "\n";
  }
}
