package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Paint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Mixes a ladder with drops whose volumes scatter, kept drops and those of the let-down too. */
final class ScatteringPainter {
  private final Random random;
  private final double scatter;

  /**
   * A painter.
   *
   * @param seed of the scatter
   * @param scatter relative sd of a drop's volume
   */
  ScatteringPainter(long seed, double scatter) {
    this.random = new Random(seed);
    this.scatter = scatter;
  }

  /** The volume of some drops, in usual drops. */
  private double pour(int drops) {
    double poured = 0;
    for (int i = 0; i < drops; i++) {
      poured += Math.max(0.1, 1 + scatter * random.nextGaussian());
    }
    return poured;
  }

  /** The colours of the rungs that this painter gets. */
  List<Lab> mixed(Ladder ladder, MixPredictor predictor) {
    Map<Paint, Double> small = new LinkedHashMap<>();
    ladder.letDown().ifPresent(some -> pour(small, some.drops()));
    Map<Paint, Double> pot = new LinkedHashMap<>();
    List<Lab> colours = new ArrayList<>();
    for (Rung rung : ladder.rungs()) {
      Map<Paint, Double> next = new LinkedHashMap<>();
      take(next, pot, rung.keep());
      take(next, small, rung.letDown());
      pour(next, rung.add());
      pot = next;
      List<Mix.Part> parts = new ArrayList<>();
      next.forEach((paint, drops) -> parts.add(new Mix.Part(paint, drops)));
      Mix mix = new Mix(parts);
      colours.add(predictor.viewing().lab(predictor.constants(mix).opaque()));
    }
    return colours;
  }

  private void pour(Map<Paint, Double> into, List<Recipe.Drops> drops) {
    for (Recipe.Drops some : drops) {
      into.merge(some.paint(), pour(some.count()), Double::sum);
    }
  }

  private void take(Map<Paint, Double> into, Map<Paint, Double> from, int drops) {
    if (drops > 0) {
      double whole = from.values().stream().mapToDouble(Double::doubleValue).sum();
      double share = pour(drops) / whole;
      from.forEach((paint, held) -> into.merge(paint, share * held, Double::sum));
    }
  }
}
