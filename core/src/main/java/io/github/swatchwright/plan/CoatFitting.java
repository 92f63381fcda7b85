package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatUse;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Fits the coats and the thinner of a translucent step to what is really below it, so that it ends
 * at the colour that was promised before.
 *
 * @param tools what to work with
 * @param task the step as it was asked for
 */
record CoatFitting(Tools tools, Task task) {
  /** A smaller gain than this isn't worth a change of plan, ΔE00. */
  private static final double WORTH_IT = 0.3;

  private static final int MORE_COATS = 3;

  /**
   * The coats that end nearest to the wanted colour: from none to three more than planned, at the
   * thinner that was planned and at those that make the same kind of coat.
   */
  Painted fit(Painted planned, Layers below, Lab wanted) {
    Coat as = planned.coats().get(0);
    Function<Coat, Lab> onTop = tools.predictor().onTop(below.known(), below.since());
    double plannedOff = off(as, onTop, wanted);
    Coat best = as;
    double bestOff = plannedOff;
    for (Coat coat : possible(as)) {
      double off = off(coat, onTop, wanted);
      if (off < bestOff) {
        best = coat;
        bestOff = off;
      }
    }
    double without = Ciede2000.deltaE(tools.predict(below).lab(), wanted);
    if (without <= bestOff && without < plannedOff - WORTH_IT) {
      return new Painted(
          List.of(),
          Optional.empty(),
          Optional.of(wanted),
          List.of("Left out: as it came out, the area is nearer to what you want without it."));
    }
    if (bestOff > plannedOff - WORTH_IT) {
      return planned.wanting(Optional.of(wanted));
    }
    List<String> advice = new ArrayList<>(planned.advice());
    advice.add(changed(as, plannedOff, bestOff));
    return new Painted(List.of(best), Optional.empty(), Optional.of(wanted), advice);
  }

  private static String changed(Coat as, double plannedOff, double bestOff) {
    return String.format(
        Locale.ROOT,
        "Changed, for what is really there: planned was %.0f × %s, which would end ΔE00 %.1f off;"
            + " this ends %.1f off.",
        as.coats(),
        as.thinning(),
        plannedOff,
        bestOff);
  }

  private double off(Coat coat, Function<Coat, Lab> onTop, Lab wanted) {
    return Ciede2000.deltaE(onTop.apply(coat.chipped(task.worn())), wanted);
  }

  private List<Coat> possible(Coat as) {
    List<Double> thinners = new ArrayList<>(List.of(as.thinner()));
    if (!as.mix().parts().get(0).paint().thinned()) {
      CoatUse.STEPS.stream().filter(step -> isSameKind(step, as.thinner())).forEach(thinners::add);
    }
    List<Coat> possible = new ArrayList<>();
    for (int coats = 1; coats <= as.coats() + MORE_COATS; coats++) {
      for (double thinner : thinners) {
        possible.add(new Coat(as.mix(), coats, thinner, as.coverage()));
      }
    }
    return possible;
  }

  /** A filter stays thin and a whitewash stays thick enough not to flood what is below. */
  private static boolean isSameKind(double thinner, double planned) {
    boolean thin = planned >= 8;
    return thin ? thinner >= 8 : planned < 3 ? thinner < 3 : thinner >= 3 && thinner < 10;
  }
}
