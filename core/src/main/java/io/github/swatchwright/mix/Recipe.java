package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Paint;
import java.math.BigInteger;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whole drops of one to four ingredients of one medium: paints, and pots that are left over.
 *
 * @param drops drops of paints; none twice
 * @param pots drops of pots; none twice, and none more than the pot holds
 */
public record Recipe(List<Drops> drops, List<PotDrops> pots) {

  /** The most paints in a recipe; a pot counts as one. */
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

  /**
   * Whole drops of a pot.
   *
   * @param pot the pot
   * @param count 1 to as many as it holds, at most 10,000
   */
  public record PotDrops(Pot pot, int count) {
    /** Refuses a count outside 1 to what the pot holds. */
    public PotDrops {
      Require.within("drops of '" + pot.name() + "'", count, 1, Math.min(10_000, pot.wholeDrops()));
    }

    /** What of each paint is in so much of the pot. */
    private Stream<Mix.Part> parts() {
      return pot.contents().parts().stream()
          .map(part -> new Mix.Part(part.paint(), part.drops() * count / pot.drops()));
    }
  }

  /**
   * Copies the lists; refuses none and more than four ingredients, one named twice and a second
   * medium.
   */
  public Recipe {
    drops = List.copyOf(drops);
    pots = List.copyOf(pots);
    Require.within("number of paints", drops.size() + pots.size(), 1, MOST_PAINTS);
    Set<String> names = new HashSet<>();
    for (PotDrops some : pots) {
      if (!names.add(some.pot.name())) {
        throw new IllegalArgumentException(
            "the recipe names " + Printable.quoted(some.pot.name()) + " twice");
      }
    }
    if (!drops.isEmpty()) {
      new Mix(parts(drops));
    }
    new Mix(parts(drops, pots));
  }

  /** A recipe of paints alone. */
  public Recipe(List<Drops> drops) {
    this(drops, List.of());
  }

  private static List<Mix.Part> parts(List<Drops> drops) {
    return drops.stream().map(some -> new Mix.Part(some.paint(), some.count())).toList();
  }

  private static List<Mix.Part> parts(List<Drops> drops, List<PotDrops> pots) {
    if (pots.isEmpty()) {
      return parts(drops);
    }
    Map<String, Mix.Part> byName = new LinkedHashMap<>();
    Stream.concat(parts(drops).stream(), pots.stream().flatMap(PotDrops::parts))
        .forEach(part -> byName.merge(part.paint().name(), part, Recipe::sum));
    return List.copyOf(byName.values());
  }

  private static Mix.Part sum(Mix.Part one, Mix.Part other) {
    return new Mix.Part(one.paint(), one.drops() + other.drops());
  }

  /** The recipe as a mix of paints; a pot's drops stand for what is in them. */
  public Mix toMix() {
    return new Mix(parts(drops, pots));
  }

  /** The number of drops in all. */
  public int total() {
    return drops.stream().mapToInt(Drops::count).sum()
        + pots.stream().mapToInt(PotDrops::count).sum();
  }

  /** The names of its ingredients: paints and pots. */
  public Set<String> names() {
    Set<String> names = new HashSet<>();
    drops.forEach(some -> names.add(some.paint().name()));
    pots.forEach(some -> names.add(some.pot().name()));
    return names;
  }

  /** The same ratio in the fewest drops. */
  public Recipe reduced() {
    int divisor =
        Stream.concat(drops.stream().map(Drops::count), pots.stream().map(PotDrops::count))
            .map(BigInteger::valueOf)
            .reduce(BigInteger.ZERO, BigInteger::gcd)
            .intValueExact();
    return new Recipe(
        drops.stream().map(some -> new Drops(some.paint(), some.count() / divisor)).toList(),
        pots.stream().map(some -> new PotDrops(some.pot(), some.count() / divisor)).toList());
  }
}
