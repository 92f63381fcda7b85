package io.github.swatchwright.ladder;

import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
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
      for (LetDown small : choice.letDowns()) {
        new PotPlanner(paints.with(small), aims, PotPlanner.QUICK).plan().ifPresent(found::add);
      }
    }
    return found.stream().min(Comparator.comparingDouble(PotTrial::cost)).map(PotMending::byPairs);
  }

  /** Whether one drop decides somewhere, or steps are uneven, or an end is missed. */
  private boolean isStrained(PotTrial trial) {
    return trial.unevenness() > LadderCost.EVEN_ENOUGH
        || trial.all().stream().anyMatch(rung -> rung.frailty() > LadderCost.STURDY_ENOUGH)
        || LadderCost.end(aims.missedEnd(0, trial.all().get(0).lab())) > 0
        || LadderCost.end(aims.missedEnd(trial.rung(), trial.lab())) > 0;
  }

  /** The strongest paint, let down with the one that is nearest to the last end. */
  private List<LetDown> letDowns() {
    int strong = strongest();
    int mild = -1;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < paints.count(); i++) {
      double missed = i == strong ? Double.POSITIVE_INFINITY : aims.missedEnd(paints.lab(only(i)));
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

  /** The paint of which a little in the middle rung moves the colour most. */
  private int strongest() {
    double[] middle = aims.proportions(aims.rungs() / 2, 0);
    int strongest = 0;
    double largest = -1;
    for (int i = 0; i < paints.count(); i++) {
      double[] other = middle.clone();
      other[i] += 0.02;
      double moved = Ciede2000.deltaE(paints.lab(middle), paints.lab(other));
      if (moved > largest) {
        largest = moved;
        strongest = i;
      }
    }
    return strongest;
  }
}
