package io.github.swatchwright.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.mix.Recipe;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/** What holds for the nearest recipes of any shelf. */
class SearchPropertyTest {
  private static final RandomShelf POOL = new RandomShelf(60, 17);

  /** A sum in another order; times the slope of ΔE00. */
  private static final double ROUNDING = 1e-9;

  private static SearchSpace space(List<PaintOptics> paints, int drops) {
    return new SearchSpace(paints, POOL.predictor().viewing(), 3, drops);
  }

  private static List<PaintOptics> some(Random random, int count) {
    List<PaintOptics> paints = new ArrayList<>(POOL.paints());
    Collections.shuffle(paints, random);
    return new ArrayList<>(paints.subList(0, count));
  }

  private static Lab target(Random random) {
    return Lab.ofD65(
        100 * random.nextDouble(), 80 * random.nextGaussian() / 2, 80 * random.nextGaussian() / 2);
  }

  private static double best(List<PaintOptics> paints, int drops, Lab target) {
    return CompiledShelf.of(space(paints, drops)).nearest(target, 1).get(0).deltaE00();
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void onePaintMoreNeverMakesTheBestWorse(@ForAll long seed) {
    Random random = new Random(seed);
    List<PaintOptics> paints = some(random, 12);
    Lab target = target(random);
    double before = best(paints.subList(0, 11), 9, target);
    assertThat(best(paints, 9, target)).isLessThanOrEqualTo(before + ROUNDING);
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void oneDropMoreNeverMakesTheBestWorse(@ForAll long seed) {
    Random random = new Random(seed);
    List<PaintOptics> paints = some(random, 10);
    Lab target = target(random);
    int drops = 1 + random.nextInt(10);
    assertThat(best(paints, drops + 1, target))
        .isLessThanOrEqualTo(best(paints, drops, target) + ROUNDING);
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void theOrderOfTheShelfDoesNotMatter(@ForAll long seed) {
    Random random = new Random(seed);
    List<PaintOptics> paints = some(random, 12);
    Lab target = target(random);
    // Far more than are compared, so that near ties at the end of the list are in both.
    Map<Map<String, Integer>, Double> there = found(paints, target);
    Collections.shuffle(paints, random);
    Map<Map<String, Integer>, Double> here = found(paints, target);
    double last = Collections.max(there.values()) - ROUNDING;
    there.forEach(
        (recipe, deltaE) -> {
          if (deltaE < last) {
            assertThat(here).containsKey(recipe);
            assertThat(here.get(recipe)).isCloseTo(deltaE, within(ROUNDING));
          }
        });
    assertThat(here).hasSameSizeAs(there);
  }

  private static Map<Map<String, Integer>, Double> found(List<PaintOptics> paints, Lab target) {
    SearchSpace space = space(paints, 9);
    Map<Map<String, Integer>, Double> found = new HashMap<>();
    for (Candidate candidate : CompiledShelf.of(space).nearest(target, 30)) {
      Map<String, Integer> drops = new HashMap<>();
      for (Recipe.Drops some : candidate.recipe(space).drops()) {
        drops.put(some.paint().name(), some.count());
      }
      found.put(drops, candidate.deltaE00());
    }
    return found;
  }
}
