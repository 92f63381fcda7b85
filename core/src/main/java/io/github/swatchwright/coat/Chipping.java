package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Medium;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A coat that is worn off in places, as by use: what stays of it, and how it is done. The order and
 * the waits are common practice of the trade, without a source: the label of the chipping medium
 * wins.
 *
 * @param coat which coat, counted from 1 at the bottom
 * @param worn the share that is worn off, of what the coat covers: 0 to 1
 */
public record Chipping(int coat, double worn) {

  /** Refuses a coat below 1 and a share outside 0 to 1. */
  public Chipping {
    Require.within("coat", coat, 1, Integer.MAX_VALUE);
    Require.within("worn share", worn, 0, 1);
  }

  /**
   * The topmost coat of paint worn off, under any varnish.
   *
   * @param coats lowest first; at least one that isn't a varnish
   * @param worn the share that is worn off, of what the coat covers: 0 to 1
   * @throws IllegalArgumentException when there is nothing but varnish
   */
  public static Chipping ofTopmost(List<Coat> coats, double worn) {
    for (int i = coats.size(); i > 0; i--) {
      if (!coats.get(i - 1).isVarnish()) {
        return new Chipping(i, worn);
      }
    }
    throw new IllegalArgumentException("there is no coat of paint to wear off");
  }

  /**
   * The coats with this one worn.
   *
   * @param coats lowest first
   */
  public List<Coat> of(List<Coat> coats) {
    List<Coat> chipped = new ArrayList<>(coats);
    chipped.set(coat - 1, coats.get(coat - 1).chipped(worn));
    return List.copyOf(chipped);
  }

  /**
   * How it is done, step by step, one sentence or two each.
   *
   * @param lower the medium below, when it is known
   * @param upper the medium of the coat that is worn off
   */
  List<String> steps(Optional<Medium> lower, Medium upper) {
    String dry = lower.map(medium -> ": " + Wait.after(medium).words()).orElse("");
    if (upper != Medium.ACRYLIC && upper != Medium.WATER) {
      return List.of(
          "Let the coat below dry" + dry + ".",
          "Dab this coat on with a torn sponge, so that about "
              + percent()
              + " of it stays open: water doesn't get through "
              + upper.word()
              + ", so chipping medium under it won't lift.",
          "Let it dry and seal it with varnish before anything else goes on.");
    }
    return List.of(
        "Let the coat below dry" + dry + ".",
        "Spray or brush on chipping medium, thinly; let it dry for about half an hour.",
        "Paint this coat thinly; wait about half an hour, not overnight.",
        "Wet a small area and lift paint with a damp stiff brush, until about "
            + percent()
            + " of it has gone. Go on area by area.",
        "Let it dry and seal it with varnish before anything else goes on.");
  }

  private String percent() {
    return String.format(Locale.ROOT, "%.0f %%", 100 * worn);
  }
}
