package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.optics.OpaqueSurface;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The paints that one pot may hold, and the colour of what it holds. Contents are drops of each
 * paint, in the order of the list, and need not be whole. What is added comes in whole drops of
 * ingredients: these are the paints and, last, the let-down when there is one.
 */
final class PotPaints {
  private final List<Paint> paints;
  private final double[][] absorption;
  private final double[][] scattering;
  private final TristimulusWeights weights;
  private final OpaqueSurface surface;
  private final Viewing viewing;
  private final Optional<LetDown> letDown;
  private final double[] lightness;

  private PotPaints(
      List<Paint> paints,
      double[][] absorption,
      double[][] scattering,
      Viewing viewing,
      Optional<LetDown> letDown) {
    this.paints = paints;
    this.absorption = absorption;
    this.scattering = scattering;
    this.viewing = viewing;
    this.weights = viewing.weights();
    this.surface = OpaqueSurface.of(viewing.surface());
    this.letDown = letDown;
    this.lightness = new double[ingredients()];
    for (int i = 0; i < lightness.length; i++) {
      double[] one = new double[paints.size()];
      pour(one, i, 1);
      lightness[i] = lab(one).l();
    }
  }

  /** L* of an ingredient by itself. */
  double lightness(int ingredient) {
    return lightness[ingredient];
  }

  /** All paints of some mixes, each once. */
  static PotPaints of(List<Mix> mixes, ShelfOptics optics, Viewing viewing) {
    List<Paint> paints =
        mixes.stream()
            .flatMap(mix -> mix.parts().stream())
            .map(Mix.Part::paint)
            .distinct()
            .toList();
    double[][] k = new double[paints.size()][Bands.COUNT];
    double[][] s = new double[paints.size()][Bands.COUNT];
    for (int i = 0; i < k.length; i++) {
      OpticalConstants constants = optics.of(paints.get(i).name()).constants();
      for (int band = 0; band < Bands.COUNT; band++) {
        k[i][band] = constants.k(band) * paints.get(i).dropMillilitres();
        s[i][band] = constants.s(band) * paints.get(i).dropMillilitres();
      }
    }
    return new PotPaints(paints, k, s, viewing, Optional.empty());
  }

  /** The same paints and a let-down of two of them. */
  PotPaints with(LetDown small) {
    return new PotPaints(paints, absorption, scattering, viewing, Optional.of(small));
  }

  Optional<LetDown> letDown() {
    return letDown;
  }

  Paint paint(int index) {
    return paints.get(index);
  }

  /** How many ingredients there are. */
  int ingredients() {
    return paints.size() + (letDown.isPresent() ? 1 : 0);
  }

  /** Adds drops of an ingredient to contents; a negative number takes them out. */
  void pour(double[] contents, int ingredient, double drops) {
    if (ingredient < paints.size()) {
      contents[ingredient] += drops;
    } else {
      LetDown small = letDown.orElseThrow();
      double share = drops / small.count();
      contents[paints.indexOf(small.strong())] += share * small.strongDrops();
      contents[paints.indexOf(small.mild())] += share * small.mildDrops();
    }
  }

  /** The paints of a mix, one bit each. */
  int bottles(Mix mix) {
    int bottles = 0;
    for (Mix.Part part : mix.parts()) {
      bottles |= 1 << paints.indexOf(part.paint());
    }
    return bottles;
  }

  /** The bottles that an ingredient opens, one bit each. */
  int bottles(int ingredient) {
    if (ingredient < paints.size()) {
      return 1 << ingredient;
    }
    LetDown small = letDown.orElseThrow();
    return 1 << paints.indexOf(small.strong()) | 1 << paints.indexOf(small.mild());
  }

  int count() {
    return paints.size();
  }

  /** The smallest drop among them, ml. */
  double smallestDrop() {
    return paints.stream().mapToDouble(Paint::dropMillilitres).min().orElseThrow();
  }

  /** A mix in the order of this list. */
  double[] contents(Mix mix) {
    double[] drops = new double[paints.size()];
    for (Mix.Part part : mix.parts()) {
      drops[paints.indexOf(part.paint())] = part.drops();
    }
    return drops;
  }

  /** Contents as a mix. */
  Mix mix(double[] contents) {
    List<Mix.Part> parts = new ArrayList<>();
    for (int i = 0; i < contents.length; i++) {
      if (contents[i] > 0) {
        parts.add(new Mix.Part(paints.get(i), contents[i]));
      }
    }
    return new Mix(parts);
  }

  /** Whole drops of the paints that there are any of, without those of the let-down. */
  List<Recipe.Drops> drops(int[] counts) {
    List<Recipe.Drops> drops = new ArrayList<>();
    for (int i = 0; i < paints.size(); i++) {
      if (counts[i] > 0) {
        drops.add(new Recipe.Drops(paints.get(i), counts[i]));
      }
    }
    return drops;
  }

  /** The colour at full hiding. */
  Lab lab(double[] contents) {
    double x = 0;
    double y = 0;
    double z = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      double k = 0;
      double s = 0;
      for (int i = 0; i < contents.length; i++) {
        k += contents[i] * absorption[i][band];
        s += contents[i] * scattering[i][band];
      }
      double seen = surface.seen(k, s);
      x += weights.x(band) * seen;
      y += weights.y(band) * seen;
      z += weights.z(band) * seen;
    }
    return new Xyz(x, y, z, weights.whitePoint()).toLab();
  }
}
