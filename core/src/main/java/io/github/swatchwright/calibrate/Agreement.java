package io.github.swatchwright.calibrate;

import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.estimate.ShelfFit;
import io.github.swatchwright.estimate.ShelfOptics;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The cards that agree with each other. The card that is furthest from what all the others say, in
 * its own and their standard deviations, is left out, until the rest agree; then each that was left
 * out is heard again.
 *
 * @param fit the fit to the cards that were kept
 * @param kept those cards
 * @param leftOut the places of the others, ascending
 */
record Agreement(ShelfFit fit, List<PaintedPatch> kept, List<Integer> leftOut) {
  /** How rarely a sound card is this far off. */
  private static final double CHANCE = 0.005;

  /** Cards that are nearly as far off as the worst go with it. */
  private static final double NEARLY = 0.6;

  static Agreement among(ShelfOptics prior, List<PaintedPatch> patches) {
    Set<Integer> leftOut = new TreeSet<>();
    List<Integer> kept = IntStream.range(0, patches.size()).boxed().toList();
    ShelfFit fit = ShelfFit.of(prior, patches);
    boolean hasEarlierCards =
        prior.shelf().paints().stream().anyMatch(paint -> paint.optics().isPresent());
    boolean agreed = false;
    while (!agreed && leftOut.size() <= patches.size() / 3) {
      List<Integer> worst = worst(fit, kept, hasEarlierCards);
      agreed = worst.isEmpty();
      if (!agreed) {
        leftOut.addAll(worst);
        kept = without(patches.size(), leftOut);
        fit = fit.refit(patches(patches, kept));
      }
    }
    for (int card : List.copyOf(leftOut)) {
      if (fit.surprise(patches.get(card), CHANCE) < 1) {
        leftOut.remove(card);
      }
    }
    if (patches.size() > kept.size() + leftOut.size()) {
      kept = without(patches.size(), leftOut);
      fit = fit.refit(patches(patches, kept));
    }
    return new Agreement(fit, patches(patches, kept), List.copyOf(leftOut));
  }

  private static List<PaintedPatch> patches(List<PaintedPatch> patches, List<Integer> kept) {
    return kept.stream().map(patches::get).toList();
  }

  private static List<Integer> without(int size, Set<Integer> leftOut) {
    return IntStream.range(0, size).filter(card -> !leftOut.contains(card)).boxed().toList();
  }

  private static List<Integer> worst(ShelfFit fit, List<Integer> kept, boolean hasEarlierCards) {
    List<Integer> worst = new ArrayList<>();
    if (kept.size() < (hasEarlierCards ? 1 : 2)) {
      return worst;
    }
    double[] surprises =
        IntStream.range(0, kept.size()).mapToDouble(place -> fit.surprise(place, CHANCE)).toArray();
    double most = IntStream.range(0, kept.size()).mapToDouble(i -> surprises[i]).max().orElse(0);
    if (most > 1) {
      IntStream.range(0, kept.size())
          .filter(place -> surprises[place] > Math.max(1, NEARLY * most))
          .boxed()
          .sorted(Comparator.comparingDouble(place -> -surprises[place]))
          .limit(Math.max(1, kept.size() / 20))
          .forEach(place -> worst.add(kept.get(place)));
    }
    return worst;
  }
}
