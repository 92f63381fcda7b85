package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Named;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Colours as fields that touch, so that the eye can compare them along the edge.
 *
 * @param colours at least one, from the left
 */
record SwatchRow(List<Named> colours) {

  /** A thin line around them all, so that white is seen on white; none between them. */
  private static final double RIM = 0.012;

  SwatchRow {
    colours = List.copyOf(colours);
  }

  /** The fields on a page. */
  Page.Figure figure(double left, double top, double width, double height) {
    List<Page.Shape> fields = new ArrayList<>();
    double each = width / colours.size();
    for (Named named : colours) {
      fields.add(
          new Page.Box(
              left + each * fields.size(),
              top,
              each,
              height,
              Ink.ofPaint(named.colour(), "swatch")));
    }
    double rim = RIM * height;
    PaperColours.frame(fields, left, top, width, height, rim, Ink.RULE);
    return new Page.Figure(left, top, width, height, description(), fields);
  }

  private String description() {
    return colours.stream()
        .map(named -> (named.name() + " " + new ScreenColour(named.colour()).hex()).trim())
        .collect(Collectors.joining(", beside it: ", "Swatch: ", ""));
  }
}
