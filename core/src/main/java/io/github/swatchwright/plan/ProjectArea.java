package io.github.swatchwright.plan;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.coat.Base;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Swatch;
import java.util.List;

/**
 * A part of a model that is painted alike.
 *
 * @param name what the painter calls it, 1 to {@value #LONGEST_NAME} characters on one line
 * @param squareCentimetres its size, above 0 to a million
 * @param bare what is there before the first step
 * @param tasks what is to be done, in the order wished for: 1 to {@value #MOST_TASKS}
 */
public record ProjectArea(String name, double squareCentimetres, Base bare, List<Task> tasks) {
  /** The longest name. */
  public static final int LONGEST_NAME = 60;

  /** The most steps. */
  public static final int MOST_TASKS = 40;

  /** Unpainted plastic, taken for a light grey; its error covers most greys that are moulded. */
  public static final Base BARE_PLASTIC =
      new Base.OfSwatch(new Swatch.OfSrgb(Srgb.parse("#B4B4B0")), 6);

  /** Copies the list; refuses a name that isn't one, and numbers out of range. */
  public ProjectArea {
    tasks = List.copyOf(tasks);
    PlanName.check(name, LONGEST_NAME);
    Require.positive("squareCentimetres", squareCentimetres);
    Require.within("squareCentimetres", squareCentimetres, 0, 1e6);
    Require.within("number of steps", tasks.size(), 1, MOST_TASKS);
  }
}
