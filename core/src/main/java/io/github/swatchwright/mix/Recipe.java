package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Paint;
import java.math.BigInteger;
import java.util.List;

/**
 * Whole drops of one to four paints of one medium.
 *
 * @param drops at least one, at most {@value #MOST_PAINTS}; none twice
 */
public record Recipe(List<Drops> drops) {

  /** The most paints in a recipe. */
  public static final int MOST_PAINTS = 4;

  /**
   * Whole drops of a paint.
   *
   * @param paint the paint
   * @param count 1 to 10,000
   */
  public record Drops(Paint paint, int count) {
    /** Refuses a count outside 1 to 10,000. */
    public Drops {
      Require.within("drops of '" + paint.name() + "'", count, 1, 10_000);
    }
  }

  /** Copies the list; refuses more than four paints, one named twice and a second medium. */
  public Recipe {
    drops = List.copyOf(drops);
    Require.within("number of paints", drops.size(), 1, MOST_PAINTS);
    new Mix(parts(drops));
  }

  private static List<Mix.Part> parts(List<Drops> drops) {
    return drops.stream().map(some -> new Mix.Part(some.paint(), some.count())).toList();
  }

  /** The recipe as a mix. */
  public Mix toMix() {
    return new Mix(parts(drops));
  }

  /** The number of drops in all. */
  public int total() {
    return drops.stream().mapToInt(Drops::count).sum();
  }

  /** The same ratio in the fewest drops. */
  public Recipe reduced() {
    int divisor =
        drops.stream()
            .map(some -> BigInteger.valueOf(some.count()))
            .reduce(BigInteger.ZERO, BigInteger::gcd)
            .intValueExact();
    return new Recipe(
        drops.stream().map(some -> new Drops(some.paint(), some.count() / divisor)).toList());
  }
}
