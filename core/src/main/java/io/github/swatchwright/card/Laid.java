package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.List;

/**
 * Something of known height that can be put anywhere on a page, and isn't torn.
 *
 * @param height millimetres
 * @param drawing puts it there
 */
record Laid(double height, Drawing drawing) {
  /** Nothing. */
  static final Laid EMPTY = new Laid(0, (page, left, top) -> {});

  /** Draws something. */
  interface Drawing {
    /** Adds shapes to a page, with their left upper corner there. */
    void draw(List<Page.Shape> page, double left, double top);
  }

  /** An empty space. */
  static Laid space(double height) {
    return new Laid(height, (page, left, top) -> {});
  }

  /** Things below each other. */
  static Laid stack(List<Laid> things) {
    List<Laid> all = List.copyOf(things);
    return new Laid(
        all.stream().mapToDouble(Laid::height).sum(),
        (page, left, top) -> {
          double y = top;
          for (Laid one : all) {
            one.drawing.draw(page, left, y);
            y += one.height;
          }
        });
  }

  /** Two things beside each other. */
  static Laid beside(Laid one, Laid other, double offset) {
    return new Laid(
        Math.max(one.height, other.height),
        (page, left, top) -> {
          one.drawing.draw(page, left, top);
          other.drawing.draw(page, left + offset, top);
        });
  }

  /** The same with a space above. */
  Laid below(double space) {
    return stack(new ArrayList<>(List.of(space(space), this)));
  }
}
