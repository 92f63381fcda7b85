package io.github.swatchwright.ladder;

import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest ladder along a path, with a let-down where a strong paint is too much by the drop.
 */
final class PotChoice {
  /** Drops of the mild paint to one of the strong. */
  private static final int[] RATIOS = {2, 4, 8};

  private final PotPaints paints;
  private final PotAims aims;

  private PotChoice(PotPaints paints, PotAims aims) {
    this.paints = paints;
    this.aims = aims;
  }

  /** Plans without a let-down, quickly; empty when no ladder keeps to the rules. */
  static Optional<PotTrial> plain(PotPaints paints, PotAims aims) {
    return new PotPlanner(paints, aims, PotPlanner.QUICK).plan();
  }

  /** Plans thoroughly, with let-downs where one drop decides, and polishes the cheapest. */
  static Optional<PotTrial> cheapest(PotPaints paints, PotAims aims) {
    PotChoice choice = new PotChoice(paints, aims);
    Optional<PotTrial> plain = new PotPlanner(paints, aims, PotPlanner.THOROUGH).plan();
    List<PotTrial> found = new ArrayList<>();
    plain.ifPresent(found::add);
    if (plain.isEmpty() || choice.isStrained(plain.get())) {
      for (LetDown small :
          choice.letDowns(plain.map(choice::strainedRung).orElse(aims.rungs() / 2))) {
        new PotPlanner(paints.with(small), aims, PotPlanner.QUICK).plan().ifPresent(found::add);
      }
    }
    return found.stream().min(Comparator.comparingDouble(PotTrial::cost)).map(PotMending::byPairs);
  }

  /** Whether one drop decides somewhere, or steps are uneven, or an end is missed. */
  private boolean isStrained(PotTrial trial) {
    return trial.unevenness() > LadderCost.EVEN_ENOUGH
        || frailest(trial).frailty() > LadderCost.STURDY_ENOUGH
        || LadderCost.end(aims.missedEnd(0, trial.all().get(0).lab())) > 0
        || LadderCost.end(aims.missedEnd(trial.rung(), trial.lab())) > 0;
  }

  private static PotTrial frailest(PotTrial trial) {
    return Collections.max(trial.all(), Comparator.comparingDouble(PotTrial::frailty));
  }

  /** The rung that wants a smaller drop: an end that is missed, or else where one drop decides. */
  private int strainedRung(PotTrial trial) {
    if (LadderCost.end(aims.missedEnd(0, trial.all().get(0).lab())) > 0) {
      return 0;
    }
    return LadderCost.end(aims.missedEnd(trial.rung(), trial.lab())) > 0
        ? trial.rung()
        : frailest(trial).rung();
  }

  /**
   * The strongest paint of a rung, let down with the lighter one that is nearest to the last end.
   *
   * @param rung where it is the strongest
   */
  private List<LetDown> letDowns(int rung) {
    int strong = strongest(rung);
    int mild = -1;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < paints.count(); i++) {
      boolean lighter = paints.lightness(i) > paints.lightness(strong);
      double missed = lighter ? aims.missedEnd(paints.lab(only(i))) : Double.POSITIVE_INFINITY;
      if (missed < nearest) {
        nearest = missed;
        mild = i;
      }
    }
    List<LetDown> all = new ArrayList<>();
    for (int ratio : RATIOS) {
      if (mild >= 0 && ratio < aims.rule().mostDrops()) {
        all.add(new LetDown(paints.paint(strong), 1, paints.paint(mild), ratio));
      }
    }
    return all;
  }

  private double[] only(int paint) {
    double[] contents = new double[paints.count()];
    contents[paint] = 1;
    return contents;
  }

  /** The paint of which a little more moves the colour of a rung most. */
  private int strongest(int rung) {
    double[] aim = aims.proportions(rung, 0);
    int strongest = 0;
    double largest = -1;
    for (int i = 0; i < paints.count(); i++) {
      double[] other = aim.clone();
      other[i] += 0.02;
      double moved = Ciede2000.deltaE(paints.lab(aim), paints.lab(other));
      if (moved > largest) {
        largest = moved;
        strongest = i;
      }
    }
    return strongest;
  }
}
