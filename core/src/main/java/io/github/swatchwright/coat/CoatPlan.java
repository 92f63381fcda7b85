package io.github.swatchwright.coat;

import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything about coats over a base: how they look, what their media do to each other, what they
 * take, and what to paint next.
 *
 * @param light the light that colours are seen under
 * @param base what lies below
 * @param basePrediction how that looks
 * @param ends the pre-highlight that the steps were looked at over
 * @param scaleLightening share of white in the base's colour; 0 unless asked for
 * @param steps how it looks after each coat
 * @param order what the media do to each other
 * @param amounts what the coats take, when the area is known
 * @param advice what to paint next, when that was asked for
 * @param below what to paint below the coats, when that was asked for
 * @param chipping which of the coats is worn off in places, when one is
 */
public record CoatPlan(
    Illuminant light,
    Base base,
    Prediction basePrediction,
    PreHighlight ends,
    double scaleLightening,
    List<CoatStep> steps,
    List<OrderNote> order,
    Optional<CoatAmounts> amounts,
    Optional<CoatAdvice> advice,
    Optional<BasePlan> below,
    Optional<Chipping> chipping) {

  /** Copies the lists. */
  public CoatPlan {
    steps = List.copyOf(steps);
    order = List.copyOf(order);
  }

  /** How some coats will look, and what their media do to each other. */
  public static CoatPlan of(CoatPredictor predictor, Base base, List<Coat> coats) {
    return new CoatPlan(
        predictor.light().illuminant(),
        base,
        predictor.predict(base),
        predictor.preHighlight(),
        predictor.scaleLightening(),
        coats.isEmpty() ? List.of() : predictor.predict(base, coats),
        CoatOrder.check(base, coats),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** This plan with the amounts of paint that its coats take. */
  public CoatPlan withAmounts(CoatAmounts some) {
    return with(Optional.of(some), advice, below, chipping);
  }

  /** This plan with what to paint next. */
  public CoatPlan withAdvice(CoatAdvice some) {
    return with(amounts, Optional.of(some), below, chipping);
  }

  /** This plan with what to paint below its coats. */
  public CoatPlan withBelow(BasePlan some) {
    return with(amounts, advice, Optional.of(some), chipping);
  }

  /** This plan saying how one of its coats, which are worn already, came to be so. */
  public CoatPlan withChipping(Chipping some) {
    return with(amounts, advice, below, Optional.of(some));
  }

  private CoatPlan with(
      Optional<CoatAmounts> take,
      Optional<CoatAdvice> next,
      Optional<BasePlan> under,
      Optional<Chipping> worn) {
    return new CoatPlan(
        light, base, basePrediction, ends, scaleLightening, steps, order, take, next, under, worn);
  }

  /** How a coat is worn off, step by step; empty for the coats that aren't. */
  public List<String> chippingOf(int coat) {
    return chipping
        .filter(some -> some.coat() == coat)
        .map(
            some ->
                some.steps(
                    coat == 1 ? base.medium() : Optional.of(steps.get(coat - 2).coat().medium()),
                    steps.get(coat - 1).coat().medium()))
        .orElse(List.of());
  }

  /** The media that are painted with, in the order they come in; those advised last. */
  public Set<Medium> media() {
    Set<Medium> media = new LinkedHashSet<>();
    coats().forEach(coat -> media.add(coat.medium()));
    return media;
  }

  /** The coats of the steps, then those advised. */
  private List<Coat> coats() {
    List<Coat> coats = new ArrayList<>(steps.stream().map(CoatStep::coat).toList());
    advice.ifPresent(some -> some.options().forEach(option -> coats.add(option.coat())));
    return coats;
  }

  /**
   * The share of the area on which each coat lies topmost, the base first: coverageₖ · Π(1 −
   * coverageⱼ) over the later coats j. They sum to 1. A varnish hides nothing and has 0.
   */
  public double[] sharesOnTop() {
    double[] shares = new double[steps.size() + 1];
    double open = 1;
    for (int k = steps.size(); k > 0; k--) {
      Coat coat = steps.get(k - 1).coat();
      double covers = coat.isVarnish() ? 0 : coat.coverage();
      shares[k] = open * covers;
      open *= 1 - covers;
    }
    shares[0] = open;
    return shares;
  }

  /** What the media of one coat do to those below, the worst first. */
  public List<OrderNote> orderOf(int coat) {
    return order.stream()
        .filter(note -> note.coat() == coat)
        .sorted(Comparator.comparing(OrderNote::verdict).reversed())
        .toList();
  }

  /** The cautions of each step, each once, at the first step that it touches. */
  public List<List<Caution>> cautionsOfSteps() {
    return Caution.forCoats(steps.stream().map(CoatStep::coat).toList());
  }

  /** The cautions that no step names: those of coats that are only advised, and the data sheet. */
  public List<Caution> closingCautions() {
    List<Caution> all = new ArrayList<>(cautions());
    cautionsOfSteps().forEach(all::removeAll);
    if (all.contains(Caution.EXTRACTION)) {
      all.remove(Caution.FRESH_AIR);
    }
    return all;
  }

  /** Every caution that touches the work. */
  public List<Caution> cautions() {
    Set<Caution> all = EnumSet.of(Caution.DATA_SHEET);
    Caution.forCoats(coats()).forEach(all::addAll);
    return List.copyOf(all);
  }
}
