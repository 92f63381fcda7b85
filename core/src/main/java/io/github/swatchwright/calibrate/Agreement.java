package io.github.swatchwright.calibrate;

import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.estimate.ShelfFit;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.estimate.Suspicion;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Progress;
import io.github.swatchwright.paint.Paint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * How much each card counts, and which contradict the rest. Each card is weighed by the probability
 * that it is what it says, by all the others; the least likely one loses its weight first, since
 * its neighbours may look odd because of it, and each gets its weight back when the rest then agree
 * with it. Cards that are about as likely wrong as right in the end are left out, but for the only
 * evidence of a paint.
 *
 * @param fit the fit to the cards that were kept
 * @param kept the places of those cards, ascending
 * @param leftOut the places of the others, ascending
 * @param onlyEvidence the places of cards that were kept although the others contradict them, since
 *     nothing else is known of one of their paints
 */
record Agreement(
    ShelfFit fit, List<Integer> kept, List<Integer> leftOut, List<Integer> onlyEvidence) {
  /** A card that is as likely wrong as this, by all the others, is left out. */
  private static final double WRONG = 0.4;

  /** Up to this chance of being wrong a card counts in full. */
  private static final double TRUSTED = 0.2;

  /** What a card that is certainly wrong still counts, until it is left out. */
  private static final double LEAST_WEIGHT = 1e-4;

  /** Cards whose odds are nearly as bad as the worst's lose their weight with it. */
  private static final double NEARLY = 0.6;

  /** A card that has got its weight back this often and lost it again doesn't get it back. */
  private static final int MOST_FALLS = 1;

  private static final int MOST_ROUNDS = 40;
  private static final double SETTLED = 0.1;

  static Agreement among(ShelfOptics prior, List<PaintedPatch> patches, Control control) {
    Rounds rounds = new Rounds(control.progress());
    ShelfFit fit = ShelfFit.of(prior, patches, control::isCancelled);
    rounds.next();
    List<Suspicion> suspicions = fit.suspicions();
    if (patches.size() < (hasEarlierCards(prior) ? 1 : 2)) {
      return new Agreement(
          fit, IntStream.range(0, patches.size()).boxed().toList(), List.of(), List.of());
    }
    double[] weights = new double[patches.size()];
    Arrays.fill(weights, 1);
    int[] falls = new int[patches.size()];
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] next = weighed(weights, suspicions, falls);
      if (Arrays.equals(next, weights)) {
        break;
      }
      weights = next;
      fit = fit.refit(weights);
      rounds.next();
      suspicions = fit.suspicions();
    }
    Set<Integer> leftOut = wrong(suspicions, weights);
    List<Integer> onlyEvidence = onlyEvidence(prior, patches, suspicions, leftOut);
    leftOut.removeAll(onlyEvidence);
    List<Integer> kept =
        IntStream.range(0, patches.size()).filter(card -> !leftOut.contains(card)).boxed().toList();
    return new Agreement(
        leftOut.isEmpty() ? fit : fit.refit(kept), kept, List.copyOf(leftOut), onlyEvidence);
  }

  /** Tells how far the rounds of one calibration have come, as far as that can be told. */
  private static final class Rounds {
    /** Rounds that a calibration usually takes. */
    private static final double USUAL = 4;

    private final Progress progress;
    private int done;

    Rounds(Progress progress) {
      this.progress = progress;
    }

    void next() {
      done++;
      progress.reached(done / (done + USUAL));
    }
  }

  private static boolean hasEarlierCards(ShelfOptics prior) {
    return prior.shelf().paints().stream().anyMatch(paint -> paint.optics().isPresent());
  }

  private static double weight(Suspicion suspicion) {
    return suspicion.chance() <= TRUSTED
        ? 1
        : Math.max(LEAST_WEIGHT, (1 - suspicion.chance()) / (1 - TRUSTED));
  }

  /** The weights after one round; the same when all have settled. */
  private static double[] weighed(double[] weights, List<Suspicion> suspicions, int... falls) {
    double[] next = weights.clone();
    List<Integer> falling = new ArrayList<>();
    for (int card = 0; card < next.length; card++) {
      double wanted = weight(suspicions.get(card));
      if (falls[card] <= MOST_FALLS && (wanted > next[card] + SETTLED || wanted == 1)) {
        next[card] = wanted;
      } else if (wanted < next[card] - SETTLED) {
        falling.add(card);
      }
    }
    falling.sort(Comparator.comparingDouble(card -> -suspicions.get(card).logOdds()));
    int most = Math.max(1, next.length / 20);
    for (int card : falling.subList(0, Math.min(most, falling.size()))) {
      if (suspicions.get(card).logOdds() >= NEARLY * suspicions.get(falling.get(0)).logOdds()) {
        next[card] = weight(suspicions.get(card));
        falls[card]++;
      }
    }
    return next;
  }

  /** The cards that are more likely wrong than right, at most a third of several. */
  private static Set<Integer> wrong(List<Suspicion> suspicions, double[] weights) {
    Set<Integer> wrong = new TreeSet<>();
    IntStream.range(0, weights.length)
        .filter(card -> suspicions.get(card).chance() > WRONG)
        .boxed()
        .sorted(Comparator.comparingDouble(card -> -suspicions.get(card).logOdds()))
        .limit(Math.max(1, weights.length / 3))
        .forEach(wrong::add);
    return wrong;
  }

  /** Where all cards that could tell a paint are wrong: the likeliest of them. */
  private static List<Integer> onlyEvidence(
      ShelfOptics prior,
      List<PaintedPatch> patches,
      List<Suspicion> suspicions,
      Set<Integer> leftOut) {
    List<Integer> onlyEvidence = new ArrayList<>();
    for (Paint paint : prior.shelf().paints()) {
      if (paint.whyNotComputable().isPresent()) {
        List<Integer> cards =
            IntStream.range(0, patches.size())
                .filter(card -> patches.get(card).amounts().containsKey(paint.name()))
                .boxed()
                .toList();
        if (leftOut.containsAll(cards)) {
          cards.stream()
              .min(Comparator.comparingDouble(card -> suspicions.get(card).logOdds()))
              .ifPresent(onlyEvidence::add);
        }
      }
    }
    return onlyEvidence;
  }
}
