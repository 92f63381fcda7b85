package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Paint;
import java.util.List;

/**
 * A small pot of its own in which a strong paint is let down with a milder one, so that it can be
 * dosed: one whole drop of pure black is often more than a pot of eight drops bears.
 *
 * @param strong the strong paint
 * @param strongDrops drops of it, at least 1
 * @param mild the paint it is let down with
 * @param mildDrops drops of that, at least 1
 */
public record LetDown(Paint strong, int strongDrops, Paint mild, int mildDrops) {
  /** Refuses a let-down without drops, or of a paint with itself. */
  public LetDown {
    if (strongDrops < 1 || mildDrops < 1 || strong.equals(mild)) {
      throw new IllegalArgumentException(
          "a let-down of "
              + strongDrops
              + " drops of "
              + Printable.quoted(strong.name())
              + " in "
              + mildDrops
              + " of "
              + Printable.quoted(mild.name())
              + ", must be at least one drop each of two paints");
    }
  }

  /** What goes into it, strong paint first. */
  public List<Recipe.Drops> drops() {
    return List.of(new Recipe.Drops(strong, strongDrops), new Recipe.Drops(mild, mildDrops));
  }

  /** The drops that it makes. */
  public int count() {
    return strongDrops + mildDrops;
  }

  /** It as a mix. */
  public Mix toMix() {
    return new Recipe(drops()).toMix();
  }
}
