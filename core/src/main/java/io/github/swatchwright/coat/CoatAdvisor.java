package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Prediction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * Looks through a shelf for the coat that does what is wanted: every paint alone, in whole coats,
 * at every step of {@link CoatUse#STEPS}. Immutable.
 *
 * <p>Of each paint the nearest few are weighed by the ΔE00 to be expected; of those that are as
 * good as the best within {@value #AS_GOOD}, the one with the fewest coats is taken.
 */
public final class CoatAdvisor {
  /** The most coats by default. */
  public static final int USUAL_COATS = 6;

  /** The most coats that can be set. */
  public static final int MOST_COATS = 40;

  private static final double AS_GOOD = 0.1;

  /** A coat that gains less than this isn't worth painting. */
  private static final double WORTH_IT = 0.5;

  /** ΔE00 above the best from which a coat isn't an option (common practice: another colour). */
  private static final double FAR_WORSE = 5;

  private static final List<Double> AS_IT_COMES = List.of(0.0);
  private static final int WEIGHED_PAINTS = 20;
  private static final int WEIGHED_OF_EACH = 8;

  private final CoatPredictor predictor;
  private final List<PaintOptics> paints;
  private final int mostCoats;

  private CoatAdvisor(CoatPredictor predictor, List<PaintOptics> paints, int mostCoats) {
    this.predictor = predictor;
    this.paints = paints;
    this.mostCoats = mostCoats;
  }

  /** An advisor that chooses among all paints of the shelf that can be computed with. */
  public static CoatAdvisor of(CoatPredictor predictor) {
    return new CoatAdvisor(predictor, predictor.optics().paints(), USUAL_COATS);
  }

  /**
   * This advisor with these paints alone.
   *
   * @param names at least one
   * @throws IllegalArgumentException when one isn't on the shelf or can't be computed with
   */
  public CoatAdvisor withOnly(List<String> names) {
    Require.within("number of paints", names.size(), 1, Integer.MAX_VALUE);
    List<PaintOptics> only = names.stream().map(predictor.optics()::of).toList();
    return new CoatAdvisor(predictor, only, mostCoats);
  }

  /** This advisor with another number of coats at most: 1 to {@value #MOST_COATS}. */
  public CoatAdvisor withMostCoats(int most) {
    return new CoatAdvisor(predictor, paints, Require.within("mostCoats", most, 1, MOST_COATS));
  }

  /**
   * The coats that do best what is wanted.
   *
   * @param base what lies below
   * @param coats what is on it already, lowest first; may be empty
   * @param goal what is wanted
   */
  public CoatAdvice advise(Base base, List<Coat> coats, CoatGoal goal) {
    Lab now = predictor.last(base, coats).lab();
    Lab target = goal.target(now, predictor);
    double nowDeltaE00 = Ciede2000.deltaE(now, target);
    Function<Coat, Lab> onTop = predictor.onTop(base, coats);
    List<CoatOption> options =
        paints.stream()
            .map(paint -> nearest(paint, onTop, target))
            .filter(trials -> trials.get(0).deltaE00 < nowDeltaE00 - WORTH_IT)
            .sorted(Comparator.comparingDouble(trials -> trials.get(0).deltaE00))
            .limit(WEIGHED_PAINTS)
            .map(trials -> best(trials, base, coats, target))
            .sorted(Comparator.comparingDouble(CoatOption::expectedDeltaE00))
            .toList();
    return new CoatAdvice(now, target, nowDeltaE00, worthALook(options));
  }

  /** Without those that are far worse than the best. */
  private static List<CoatOption> worthALook(List<CoatOption> options) {
    return options.stream()
        .filter(
            option -> option.expectedDeltaE00() <= options.get(0).expectedDeltaE00() + FAR_WORSE)
        .toList();
  }

  /** A coat and how far it would be off. */
  private record Trial(Coat coat, double deltaE00) {}

  private List<Trial> nearest(PaintOptics paint, Function<Coat, Lab> onTop, Lab target) {
    List<Trial> trials = new ArrayList<>();
    for (int count = 1; count <= mostCoats; count++) {
      for (double thinner : paint.paint().thinned() ? AS_IT_COMES : CoatUse.STEPS) {
        Coat coat = new Coat(Mix.of(paint.paint()), count, thinner, 1);
        trials.add(new Trial(coat, Ciede2000.deltaE(onTop.apply(coat), target)));
      }
    }
    trials.sort(Comparator.comparingDouble(Trial::deltaE00));
    return trials.subList(0, Math.min(WEIGHED_OF_EACH, trials.size()));
  }

  private CoatOption best(List<Trial> trials, Base base, List<Coat> coats, Lab target) {
    List<CoatOption> weighed =
        trials.stream().map(trial -> weighed(trial, base, coats, target)).toList();
    double least = weighed.stream().mapToDouble(CoatOption::expectedDeltaE00).min().orElseThrow();
    return weighed.stream()
        .filter(option -> option.expectedDeltaE00() <= least + AS_GOOD)
        .min(
            Comparator.comparingDouble((CoatOption option) -> option.coat().coats())
                .thenComparingDouble(CoatOption::expectedDeltaE00))
        .orElseThrow();
  }

  private CoatOption weighed(Trial trial, Base base, List<Coat> coats, Lab target) {
    List<Coat> stack = new ArrayList<>(coats);
    stack.add(trial.coat);
    Prediction prediction = predictor.last(base, stack);
    List<OrderNote> order =
        CoatOrder.check(base, stack).stream().filter(n -> n.coat() == stack.size()).toList();
    return new CoatOption(
        trial.coat,
        prediction,
        trial.deltaE00,
        prediction.spread().expectedDeltaE00(target),
        order);
  }
}
