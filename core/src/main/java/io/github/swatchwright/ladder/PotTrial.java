package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rungs mixed so far, and how well they do. The objective, to be made small, is
 *
 * <pre>
 * max |stepᵢ / e − 1|  +  mean ΔE00(rungᵢ, aimᵢ) / e
 * </pre>
 *
 * with stepᵢ the ΔE00 between neighbours and e the even step between the aims. Immutable.
 */
final class PotTrial {
  /** Lightness must move at least so far each time, so that printed figures are monotone too. */
  static final double LEAST_LIGHTNESS_STEP = 0.05;

  private final PotAims aims;
  private final @Nullable PotTrial before;
  private final int rung;
  private final int[] added;
  private final double[] contents;
  private final Lab lab;
  private final double worstStep;
  private final double missed;

  private PotTrial(
      PotAims aims, @Nullable PotTrial before, int[] added, double[] contents, Lab lab) {
    this.aims = aims;
    this.before = before;
    this.added = added;
    this.contents = contents;
    this.lab = lab;
    double even = aims.step();
    this.rung = before == null ? 0 : before.rung + 1;
    double off = Ciede2000.deltaE(lab, aims.lab(rung)) / even;
    if (before == null) {
      worstStep = 0;
      missed = off;
    } else {
      double deviation = Math.abs(Ciede2000.deltaE(lab, before.lab) / even - 1);
      worstStep = Math.max(before.worstStep, deviation);
      missed = before.missed + off;
    }
  }

  /** The first rung. */
  static PotTrial first(PotAims aims, PotPaints paints, int[] added) {
    double[] contents = Arrays.stream(added).asDoubleStream().toArray();
    return new PotTrial(aims, null, added, contents, paints.lab(contents));
  }

  /** This, with another rung mixed. */
  PotTrial then(PotPaints paints, int[] drops) {
    double[] next = left();
    for (int i = 0; i < next.length; i++) {
      next[i] += drops[i];
    }
    return new PotTrial(aims, this, drops, next, paints.lab(next));
  }

  /** What is left of the pot after this rung is painted. */
  double[] left() {
    double kept = 1 - aims.rule().use();
    return Arrays.stream(contents).map(drops -> kept * drops).toArray();
  }

  /** Whether the rung's pot holds enough, isn't too large, and lightness goes on its way. */
  boolean isAllowed() {
    double pot = potDrops();
    return pot <= aims.rule().mostDrops()
        && pot * aims.rule().use() >= aims.need(rung) - 1e-9
        && (before == null
            || (lab.l() - before.lab.l()) * aims.direction() >= LEAST_LIGHTNESS_STEP);
  }

  int rung() {
    return rung;
  }

  int[] added() {
    return added;
  }

  double[] contents() {
    return contents;
  }

  double potDrops() {
    return Arrays.stream(contents).sum();
  }

  Lab lab() {
    return lab;
  }

  PotAims aims() {
    return aims;
  }

  /** The even step between the aims, ΔE00. */
  double step() {
    return aims.step();
  }

  /** The objective of the rungs so far, 0 for perfect ones. */
  double objective() {
    return worstStep + missed / aims.rungs();
  }

  /** The largest ΔE00 that one drop more or less of an added paint makes. */
  double oneDrop(PotPaints paints) {
    double largest = 0;
    for (int paint = 0; paint < added.length; paint++) {
      for (int change = -1; change <= 1 && added[paint] > 0; change += 2) {
        double[] other = contents.clone();
        other[paint] += change;
        if (Arrays.stream(other).sum() > 0) {
          largest = Math.max(largest, Ciede2000.deltaE(lab, paints.lab(other)));
        }
      }
    }
    return largest;
  }

  /** The first rung and all up to this one. */
  List<PotTrial> all() {
    Deque<PotTrial> all = new ArrayDeque<>();
    for (PotTrial trial = this; trial != null; trial = trial.before) {
      all.addFirst(trial);
    }
    return List.copyOf(all);
  }

  /** The largest deviation of a step from the mean of all, as a share of it. */
  double unevenness() {
    List<PotTrial> all = all();
    double[] steps = new double[all.size() - 1];
    Arrays.setAll(steps, i -> Ciede2000.deltaE(all.get(i).lab, all.get(i + 1).lab));
    double mean = Arrays.stream(steps).average().orElse(1);
    return Arrays.stream(steps).map(step -> Math.abs(step / mean - 1)).max().orElse(0);
  }
}
