package io.github.swatchwright.plan;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.Corrector;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Paint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Corrects a base coat that came out wrong: its pot is corrected and the base painted once more,
 * before anything goes over it.
 *
 * @param tools what to work with
 * @param area where it is
 */
record PotCorrection(Tools tools, ProjectArea area) {
  /** A base that is nearer than this to what was wanted is left as it is. */
  static final double WORTH_A_COAT = 2;

  /** A smaller gain than this isn't worth the work, ΔE00. */
  private static final double WORTH_THE_WORK = 1;

  /** A pot of this many drops can be corrected in whole drops, and is quick to search. */
  private static final int SMALL_POT = 12;

  /** The step to put in; empty when the base is near enough, or nothing brings it nearer. */
  Optional<PlanStep> after(PlanStep base, Done.Measured measured) {
    boolean isBase = base.kind() == StepKind.BASE || base.kind() == StepKind.CORRECTION;
    Lab wanted = base.look().wanted().orElse(base.look().prediction().lab());
    Look seen =
        new Look(
            base.look().prediction(),
            Optional.of(wanted),
            Optional.of(measured.swatch().labUnder(tools.light())));
    if (!isBase || base.work().pot().isEmpty() || seen.offBy().orElse(0) <= WORTH_A_COAT) {
      return Optional.empty();
    }
    Mix pot = small(base.work().pot().get());
    Correction correction =
        Corrector.of(tools.optics(), tools.light())
            .correct(pot, measured.swatch(), measured.error(), Tools.asSwatch(wanted));
    boolean afresh = correction.startAfresh();
    Lab then = afresh ? correction.fresh().orElseThrow().predicted() : correction.predicted();
    double expected =
        afresh
            ? correction.fresh().orElseThrow().expectedDeltaE00()
            : correction.expectedDeltaE00();
    if (expected > correction.now() - WORTH_THE_WORK) {
      return Optional.empty();
    }
    Mix mix =
        afresh
            ? correction.fresh().orElseThrow().recipe().toMix()
            : added(pot, correction.additions());
    return Optional.of(step(base, mix, then, wanted, advice(correction, pot, afresh)));
  }

  private PlanStep step(PlanStep base, Mix mix, Lab then, Lab wanted, List<String> advice) {
    Coat first = base.top().orElseThrow();
    Coat coat = new Coat(mix, first.coats(), first.thinner(), first.coverage());
    PaintAmount amount =
        PaintAmount.of(area.squareCentimetres(), coat.coats(), coat.thinner(), tools.application());
    Prediction ofShelf = MixPredictor.of(tools.optics(), tools.light()).predict(mix);
    Prediction prediction = new Prediction(ofShelf.reflectance(), ofShelf.spread().about(then));
    return new PlanStep(
        0,
        area.name(),
        OptionalInt.empty(),
        StepKind.CORRECTION,
        new Work(
            List.of(coat), Optional.of(AreaWalk.whole(mix, amount)), Optional.empty(), amount, 0),
        new Look(prediction, Optional.of(wanted), Optional.empty()),
        false,
        advice);
  }

  private static List<String> advice(Correction correction, Mix pot, boolean afresh) {
    List<String> advice = new ArrayList<>();
    advice.add(
        String.format(
            Locale.ROOT,
            "Put in because the base came out ΔE00 %.1f off; everything above would be off too.",
            correction.now()));
    if (afresh) {
      advice.add("A new recipe is better than what could be added to the old pot.");
    } else {
      StringBuilder text = new StringBuilder("If some of the old pot is left, add to each ");
      double drops = pot.parts().stream().mapToDouble(Mix.Part::drops).sum();
      text.append(Math.round(drops)).append(" drops of it: ");
      List<String> additions = new ArrayList<>();
      correction
          .additions()
          .forEach(
              some ->
                  additions.add(
                      some.drops().count()
                          + (some.drops().count() == 1 ? " drop of " : " drops of ")
                          + some.drops().paint().name()));
      advice.add(text.append(String.join(", ", additions)).append('.').toString());
    }
    return advice;
  }

  private static Mix added(Mix pot, List<Correction.Addition> additions) {
    Map<Paint, Double> drops = new LinkedHashMap<>();
    pot.parts().forEach(part -> drops.put(part.paint(), part.drops()));
    additions.forEach(
        some ->
            drops.merge(
                named(drops, some.drops().paint()), (double) some.drops().count(), Double::sum));
    List<Mix.Part> parts = new ArrayList<>();
    drops.forEach((paint, count) -> parts.add(new Mix.Part(paint, count)));
    return new Mix(parts);
  }

  /** The paint as the pot has it: the corrector knows it better, and so as another value. */
  private static Paint named(Map<Paint, Double> drops, Paint paint) {
    return drops.keySet().stream()
        .filter(own -> own.name().equals(paint.name()))
        .findFirst()
        .orElse(paint);
  }

  /** The ratio of a pot, in about a dozen drops. */
  private static Mix small(Mix pot) {
    double total = pot.parts().stream().mapToDouble(Mix.Part::drops).sum();
    Require.positive("drops in the pot", total);
    double divisor = commonDivisor(pot);
    double batch = total / divisor;
    double scale = Math.max(1, Math.ceil(SMALL_POT / batch)) / divisor;
    return new Mix(
        pot.parts().stream()
            .map(part -> new Mix.Part(part.paint(), part.drops() * scale))
            .toList());
  }

  private static double commonDivisor(Mix pot) {
    long divisor = 0;
    for (Mix.Part part : pot.parts()) {
      long rest = Math.round(part.drops());
      while (rest != 0) {
        long next = divisor % rest;
        divisor = rest;
        rest = next;
      }
    }
    return divisor;
  }
}
