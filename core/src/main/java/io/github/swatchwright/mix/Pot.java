package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;

/**
 * A mix that exists, with what went into it. It can be let down, corrected, or used as an
 * ingredient like a paint; one drop of it is taken to be as large as its paints' drops on average.
 *
 * @param contents what went into it, in drops of each paint's own dropper; at least one drop in all
 */
public record Pot(Mix contents) {

  /** Refuses a pot of less than a drop. */
  public Pot {
    Require.within("drops in the pot", drops(contents), 1, 1e6);
  }

  /**
   * Reads {@code "Name:6, Other name:2"}.
   *
   * @throws IllegalArgumentException when a paint isn't on the shelf, or a number is none
   */
  public static Pot parse(String text, Shelf shelf) {
    return new Pot(Mix.parse(text, shelf));
  }

  private static double drops(Mix contents) {
    return contents.parts().stream().mapToDouble(Mix.Part::drops).sum();
  }

  /** The drops that went into it, not whole. */
  public double drops() {
    return drops(contents);
  }

  /** The whole drops that can be taken out of it. */
  public int wholeDrops() {
    return (int) drops();
  }

  /** The volume that went into it. */
  public double millilitres() {
    return contents.parts().stream().mapToDouble(Mix.Part::millilitres).sum();
  }

  /** The volume of one drop of it. */
  public double dropMillilitres() {
    return millilitres() / drops();
  }

  /** What binds it. */
  public Medium medium() {
    return contents.parts().get(0).paint().medium();
  }

  /** What to call it: {@code pot of Name:6, Other name:2}. */
  public String name() {
    return "pot of " + contents.toText();
  }
}
