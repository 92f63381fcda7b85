package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Colours as large fields that touch, so that the eye can compare them along the edge.
 *
 * @param colours at least one, from the left
 * @param width of all of them, where the height is {@value #HEIGHT}
 */
record SwatchBlock(List<Named> colours, double width) {
  static final double HEIGHT = 120;

  /**
   * A colour and what it is.
   *
   * @param name in one or two words
   * @param colour the colour
   */
  record Named(String name, ScreenColour colour) {}

  SwatchBlock {
    colours = List.copyOf(colours);
  }

  Figure figure() {
    List<Markup> fields = new ArrayList<>();
    double each = width / colours.size();
    for (Named named : colours) {
      fields.add(
          Markup.of("rect")
              .with("class", "swatch")
              .with("x", each * fields.size())
              .with("width", each)
              .with("height", HEIGHT)
              .with("shape-rendering", "crispEdges")
              .with("fill", named.colour.hex()));
    }
    return new Figure(width, HEIGHT, description(), fields);
  }

  private String description() {
    return colours.stream()
        .map(named -> named.name + " " + named.colour.hex())
        .collect(Collectors.joining(", beside it: ", "Swatch: ", ""));
  }
}
