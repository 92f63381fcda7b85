package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How large a pot should grow: a large one is divided more finely by whole drops and gets nearer to
 * the last end, a small one wastes less paint. The smallest that is good enough is taken.
 */
final class PotSize {
  private static final double[] SHARES = {0.3, 0.45, 0.7, 1};

  /** Steps that differ no more than that from the mean, as a share of it, are even enough. */
  private static final double EVEN_ENOUGH = 0.12;

  /** A smaller pot may end so much further from the wanted end than the largest, in ΔE00. */
  private static final double NEAR_ENOUGH = 0.5;

  private PotSize() {}

  static Optional<PotTrial> smallestGood(
      PotPaints paints, LadderPath path, PotRule rule, double[] needs) {
    Lab end = path.lab(1);
    double nearest = gap(PotAims.of(path, rule, needs), end);
    List<PotTrial> found = new ArrayList<>();
    for (double share : SHARES) {
      PotRule smaller = rule.withMostDrops(Math.max(4, (int) Math.round(share * rule.mostDrops())));
      PotAims aims = PotAims.of(path, smaller, needs);
      boolean nearEnough = share == 1 || gap(aims, end) <= nearest + NEAR_ENOUGH;
      Optional<PotTrial> trial =
          nearEnough ? new PotPlanner(paints, aims).plan() : Optional.empty();
      if (trial.isPresent() && trial.get().unevenness() <= EVEN_ENOUGH) {
        return trial;
      }
      trial.ifPresent(found::add);
    }
    return found.stream().min(Comparator.comparingDouble(PotTrial::objective));
  }

  private static double gap(PotAims aims, Lab end) {
    return Ciede2000.deltaE(aims.lab(aims.rungs() - 1), end);
  }
}
