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
  private static final double[] SHARES = {0.4, 0.7, 1};

  /** Steps that differ no more than that from the mean, as a share of it, are even enough. */
  private static final double EVEN_ENOUGH = 0.12;

  /** A smaller pot may end so much further from the wanted end than the largest, in ΔE00. */
  private static final double NEAR_ENOUGH = 0.5;

  /** One drop may move a rung by that share of a step. */
  static final double ONE_DROP = 0.5;

  private final PotPaints paints;
  private final LadderPath path;
  private final PotRule rule;
  private final double[] needs;

  private PotSize(PotPaints paints, LadderPath path, PotRule rule, double[] needs) {
    this.paints = paints;
    this.path = path;
    this.rule = rule;
    this.needs = needs;
  }

  /**
   * Plans pots of several sizes.
   *
   * @param paints what the pot may hold
   * @param path the way
   * @param rule how the pot is used
   * @param needs drops that each rung's pass uses up
   * @return the smallest pot that is even and sturdy enough, or else the best; empty when none
   *     keeps to the rules
   */
  static Optional<PotTrial> smallestGood(
      PotPaints paints, LadderPath path, PotRule rule, double[] needs) {
    return new PotSize(paints, path, rule, needs)
        .smallestGood()
        .map(trial -> PotMending.byPairs(paints, trial.aims(), trial));
  }

  private Optional<PotTrial> smallestGood() {
    Lab end = path.lab(1);
    double nearest = gap(PotAims.of(path, rule, needs), end);
    List<PotTrial> found = new ArrayList<>();
    for (double share : SHARES) {
      PotRule smaller = rule.withMostDrops(Math.max(4, (int) Math.round(share * rule.mostDrops())));
      PotAims aims = PotAims.of(path, smaller, needs);
      if (share == 1 || gap(aims, end) <= nearest + NEAR_ENOUGH) {
        Optional<PotTrial> trial = new PotPlanner(paints, aims).plan();
        if (trial.isPresent() && isGood(trial.get())) {
          return trial;
        }
        trial.ifPresent(found::add);
      }
    }
    return found.stream()
        .min(Comparator.comparingDouble(trial -> trial.objective() + oneDrop(trial)));
  }

  private boolean isGood(PotTrial trial) {
    return trial.unevenness() <= EVEN_ENOUGH && oneDrop(trial) <= ONE_DROP;
  }

  /** The most that one drop moves any rung, as a share of an even step. */
  private double oneDrop(PotTrial trial) {
    return trial.all().stream().mapToDouble(t -> t.oneDrop(paints)).max().orElse(0) / trial.step();
  }

  private static double gap(PotAims aims, Lab end) {
    return Ciede2000.deltaE(aims.lab(aims.rungs() - 1), end);
  }
}
