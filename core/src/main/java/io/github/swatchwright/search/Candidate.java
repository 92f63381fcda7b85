package io.github.swatchwright.search;

import io.github.swatchwright.mix.Recipe;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A recipe that a search found, as indices into its {@link SearchSpace}.
 *
 * <p>Candidates are ordered by ΔE00, then by fewer paints, fewer drops, and the order of the paints
 * on the shelf, so that every search that is exact gives the same list.
 */
public final class Candidate implements Comparable<Candidate> {
  private static final Comparator<Candidate> ORDER =
      Comparator.comparingDouble(Candidate::deltaE00)
          .thenComparingInt(candidate -> candidate.paints.length)
          .thenComparingInt(Candidate::totalDrops)
          .thenComparing(candidate -> candidate.paints, Arrays::compare)
          .thenComparing(candidate -> candidate.drops, Arrays::compare);

  private final int[] paints;
  private final int[] drops;
  private final double deltaE00;

  /**
   * A candidate.
   *
   * @param paints ascending indices of the paints
   * @param drops drops of each, at least 1
   * @param deltaE00 difference of its predicted colour from the target
   */
  Candidate(int[] paints, int[] drops, double deltaE00) {
    this.paints = paints.clone();
    this.drops = drops.clone();
    this.deltaE00 = deltaE00;
  }

  /** Difference of the predicted colour from the target. */
  public double deltaE00() {
    return deltaE00;
  }

  /** How many ingredients it has, 1 to 4. */
  public int size() {
    return paints.length;
  }

  /** Its ingredients, as their numbers in the space; ascending. */
  public int[] ingredients() {
    return paints.clone();
  }

  /** Drops of each ingredient, at least 1. */
  public int[] drops() {
    return drops.clone();
  }

  /** The names of its ingredients, of the space that was searched. */
  public Set<String> names(SearchSpace space) {
    Set<String> names = new HashSet<>();
    for (int ingredient : paints) {
      names.add(
          space.isPot(ingredient)
              ? space.pot(ingredient).name()
              : space.paints().get(ingredient).paint().name());
    }
    return names;
  }

  /** Whether it holds a pot of the space that was searched. */
  public boolean usesAPot(SearchSpace space) {
    return space.isPot(paints[paints.length - 1]);
  }

  private int totalDrops() {
    return Arrays.stream(drops).sum();
  }

  /** The recipe, of the ingredients of the space that was searched. */
  public Recipe recipe(SearchSpace space) {
    List<Recipe.Drops> ofPaints = new ArrayList<>();
    List<Recipe.PotDrops> ofPots = new ArrayList<>();
    for (int i = 0; i < paints.length; i++) {
      if (space.isPot(paints[i])) {
        ofPots.add(new Recipe.PotDrops(space.pot(paints[i]), drops[i]));
      } else {
        ofPaints.add(new Recipe.Drops(space.paints().get(paints[i]).paint(), drops[i]));
      }
    }
    return new Recipe(ofPaints, ofPots);
  }

  @Override
  public int compareTo(Candidate other) {
    return ORDER.compare(this, other);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Candidate that && compareTo(that) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Arrays.hashCode(paints) + Arrays.hashCode(drops)) + Double.hashCode(deltaE00);
  }

  @Override
  public String toString() {
    return Arrays.toString(drops) + " of " + Arrays.toString(paints) + ": ΔE00 " + deltaE00;
  }
}
