package io.github.swatchwright.calibrate;

import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Cards that might be painted: the paints of the wanted mixes alone, and let down with any other
 * paint of their medium in a few ratios.
 *
 * <p>On a large shelf only the paints that are wanted most often are let down, with each other and
 * with the lightest of their medium.
 */
final class PossibleCards {
  private static final int[][] RATIOS = {{1, 1}, {1, 3}, {3, 1}, {1, 8}, {8, 1}};
  private static final int MOST_PAINTS = 32;

  private PossibleCards() {}

  static List<Recipe> of(ShelfOptics optics, PaintChoice choice, List<WantedMix> wanted) {
    Map<String, Integer> uses = new HashMap<>();
    for (WantedMix mix : wanted) {
      for (Recipe.Drops drops : mix.recipe().drops()) {
        uses.merge(drops.paint().name(), 1, Integer::sum);
      }
    }
    List<Paint> all =
        optics.paints().stream()
            .map(PaintOptics::paint)
            .filter(paint -> choice.admits(paint) || uses.containsKey(paint.name()))
            .toList();
    List<Paint> first =
        all.stream()
            .filter(paint -> uses.containsKey(paint.name()))
            .sorted(Comparator.comparingInt(paint -> -uses.getOrDefault(paint.name(), 0)))
            .limit(MOST_PAINTS)
            .toList();
    List<Paint> second = all.size() <= MOST_PAINTS ? all : withLightest(first, optics);
    List<Recipe> cards = new ArrayList<>();
    Set<String> done = new HashSet<>();
    for (Paint paint : first) {
      cards.add(new Recipe(List.of(new Recipe.Drops(paint, 1))));
      done.add(paint.name());
      for (Paint other : second) {
        if (!done.contains(other.name()) && paint.medium() == other.medium()) {
          cards.addAll(pair(paint, other));
        }
      }
    }
    return cards;
  }

  private static List<Paint> withLightest(List<Paint> first, ShelfOptics optics) {
    Set<Paint> partners = new LinkedHashSet<>(first);
    for (Paint paint : first) {
      optics.paints().stream()
          .filter(other -> other.paint().medium() == paint.medium())
          .max(Comparator.comparingDouble(PossibleCards::brightness))
          .ifPresent(lightest -> partners.add(lightest.paint()));
    }
    return List.copyOf(partners);
  }

  private static double brightness(PaintOptics paint) {
    double sum = 0;
    for (double r : paint.masstone()) {
      sum += r;
    }
    return sum;
  }

  private static List<Recipe> pair(Paint paint, Paint other) {
    List<Recipe> cards = new ArrayList<>();
    for (int[] ratio : RATIOS) {
      cards.add(
          new Recipe(
              List.of(new Recipe.Drops(paint, ratio[0]), new Recipe.Drops(other, ratio[1]))));
    }
    return cards;
  }
}
