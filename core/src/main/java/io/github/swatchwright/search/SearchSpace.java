package io.github.swatchwright.search;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.spectrum.Bands;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All recipes that a search may find: ingredients of one medium, how many of them and how many
 * drops. Ingredients are numbered: first the paints, then the pots.
 *
 * @param paints the paints to choose from
 * @param pots the pots to choose from
 * @param mostOf the most drops of each ingredient, at least 1
 * @param viewing the light and surface that colours are computed for
 * @param mostPaints the most ingredients in a recipe, 1 to 4
 * @param mostDrops the most drops in a recipe, at least 1
 */
public record SearchSpace(
    List<PaintOptics> paints,
    List<Stirred> pots,
    List<Integer> mostOf,
    Viewing viewing,
    int mostPaints,
    int mostDrops) {

  /** The most drops in a recipe. */
  public static final int LARGEST_DROPS = 40;

  /**
   * A pot to choose from.
   *
   * @param pot what it holds
   * @param constants its K(λ) and S(λ)
   */
  public record Stirred(Pot pot, OpticalConstants constants) {}

  /** Copies the lists; refuses empty ones, numbers below 1, and limits for another number. */
  public SearchSpace {
    paints = List.copyOf(paints);
    pots = List.copyOf(pots);
    mostOf = List.copyOf(mostOf);
    int size = paints.size() + pots.size();
    Require.within("number of ingredients", size, 1, Integer.MAX_VALUE);
    Require.within("number of mostOf", mostOf.size(), size, size);
    mostOf.forEach(most -> Require.within("mostOf", most, 1, Integer.MAX_VALUE));
    Require.within("mostPaints", mostPaints, 1, 4);
    Require.within("mostDrops", mostDrops, 1, LARGEST_DROPS);
  }

  /** Recipes of paints alone, with as many drops of each as of the whole. */
  public SearchSpace(List<PaintOptics> paints, Viewing viewing, int mostPaints, int mostDrops) {
    this(
        paints,
        List.of(),
        Collections.nCopies(paints.size(), mostDrops),
        viewing,
        mostPaints,
        mostDrops);
  }

  /** The number of ingredients. */
  public int size() {
    return paints.size() + pots.size();
  }

  /** How many recipes it holds at most, with those that aren't reduced. */
  public double mostRecipes() {
    double recipes = 0;
    for (int size = 1; size <= Math.min(mostPaints, size()); size++) {
      recipes += (double) SetBoxes.binomial(size(), size) * SetBoxes.binomial(mostDrops, size);
    }
    return recipes;
  }

  /** The most drops that a recipe may hold of an ingredient. */
  public int mostOf(int ingredient) {
    return Math.min(mostDrops, mostOf.get(ingredient));
  }

  /** A drop of each ingredient alone. */
  public List<Recipe> singles() {
    return IntStream.range(0, size())
        .mapToObj(one -> new Candidate(new int[] {one}, new int[] {1}, 0).recipe(this))
        .toList();
  }

  boolean isPot(int ingredient) {
    return ingredient >= paints.size();
  }

  Pot pot(int ingredient) {
    return pots.get(ingredient - paints.size()).pot();
  }

  private OpticalConstants constants(int ingredient) {
    return isPot(ingredient)
        ? pots.get(ingredient - paints.size()).constants()
        : paints.get(ingredient).constants();
  }

  private double dropMillilitres(int ingredient) {
    return isPot(ingredient)
        ? pot(ingredient).dropMillilitres()
        : paints.get(ingredient).paint().dropMillilitres();
  }

  /** Absorption that one drop of each ingredient brings, in each band: K times its volume. */
  double[][] absorptionPerDrop() {
    double[][] k = new double[size()][Bands.COUNT];
    for (int ingredient = 0; ingredient < k.length; ingredient++) {
      OpticalConstants constants = constants(ingredient);
      double drop = dropMillilitres(ingredient);
      for (int band = 0; band < Bands.COUNT; band++) {
        k[ingredient][band] = constants.k(band) * drop;
      }
    }
    return k;
  }

  /** Scattering that one drop of each ingredient brings, in each band: S times its volume. */
  double[][] scatteringPerDrop() {
    double[][] s = new double[size()][Bands.COUNT];
    for (int ingredient = 0; ingredient < s.length; ingredient++) {
      OpticalConstants constants = constants(ingredient);
      double drop = dropMillilitres(ingredient);
      for (int band = 0; band < Bands.COUNT; band++) {
        s[ingredient][band] = constants.s(band) * drop;
      }
    }
    return s;
  }
}
