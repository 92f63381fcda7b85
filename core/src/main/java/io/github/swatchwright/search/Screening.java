package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.search.TwoPartColour.Amount;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Estimates how much closer to its targets a shelf would come with one more paint: an upper bound
 * of the ΔE00 that is left, found from a few thousand recipes instead of all.
 *
 * <p>The paint is tried alone, with each paint of the shelf in every ratio of whole drops, and with
 * the {@value #PREMIXES} mixes of two paints of the shelf that are nearest to each target. A target
 * which the paint helps lies between it and a mix near the target, or a mix that it pulls there. A
 * glance tries few of the ratios and of the mixes. What none of these recipes finds is missed, so
 * the order is provisional: the exact search has the last word on the few that come out first.
 */
public final class Screening {
  private static final int PREMIXES = 40;
  private static final int PREMIXES_AT_A_GLANCE = 8;
  private static final int DROPS_AT_A_GLANCE = 4;

  private final SearchSpace shelf;
  private final Lab[] targets;
  private final double[] nearest;
  private final double[][] k;
  private final double[][] s;
  private final List<List<Premix>> premixes;

  /**
   * Two paints of the shelf, stirred.
   *
   * @param amount what they bring
   * @param drops how many there are
   * @param deltaE00 how far they are from a target
   */
  private record Premix(Amount amount, int drops, double deltaE00) {}

  /**
   * Prepares for any number of paints.
   *
   * @param shelf the paints to mix with; up to mostPaints − 1 of them, two at the most
   * @param targets the wanted colours
   * @param nearest how near the shelf comes to each without another paint
   */
  public Screening(SearchSpace shelf, List<Lab> targets, double[] nearest) {
    this.shelf = shelf;
    this.targets = targets.toArray(Lab[]::new);
    this.nearest = nearest.clone();
    k = shelf.absorptionPerDrop();
    s = shelf.scatteringPerDrop();
    premixes = shelf.mostPaints() > 2 ? premixes() : List.of();
  }

  private List<List<Premix>> premixes() {
    TwoPartColour colour = new TwoPartColour(shelf.viewing());
    List<List<Premix>> nearestOnes = new ArrayList<>();
    for (int t = 0; t < targets.length; t++) {
      nearestOnes.add(new ArrayList<>());
    }
    for (int i = 0; i < shelf.size(); i++) {
      Amount first = Amount.of(k[i], s[i], 1);
      for (int j = i + 1; j < shelf.size(); j++) {
        Amount second = Amount.of(k[j], s[j], 1);
        Premix[] best = new Premix[targets.length];
        for (int a = 1; a < shelf.mostDrops() - 1; a++) {
          for (int b = 1; b < shelf.mostDrops() - a; b++) {
            Lab lab = colour.lab(first, a, second, b);
            for (int t = 0; t < targets.length; t++) {
              double limit = best[t] == null ? Double.POSITIVE_INFINITY : best[t].deltaE00;
              double deltaE00 = deltaE00(t, lab, limit);
              if (deltaE00 < limit) {
                Amount both = Amount.of(k[i], s[i], a).plus(k[j], s[j], b);
                best[t] = new Premix(both, a + b, deltaE00);
              }
            }
          }
        }
        for (int t = 0; t < targets.length; t++) {
          if (best[t] != null) {
            nearestOnes.get(t).add(best[t]);
          }
        }
      }
    }
    return nearestOnes.stream()
        .map(
            list ->
                list.stream()
                    .sorted(Comparator.comparingDouble(Premix::deltaE00))
                    .limit(PREMIXES)
                    .toList())
        .toList();
  }

  /** ΔE00 from a target, or infinity when {@link #isBeyond} says that it is above the limit. */
  private double deltaE00(int target, Lab lab, double limit) {
    return isBeyond(targets[target], lab, limit)
        ? Double.POSITIVE_INFINITY
        : Ciede2000.deltaE(targets[target], lab);
  }

  /**
   * Whether ΔE00 is certainly above the limit: ΔE² ≥ (ΔL/S_L)² + κ(Δa² + Δb²)/S_C², since a′ = (1 +
   * G)a with 0 ≤ G ≤ ½ moves colours apart alone, S_H ≤ S_C ≤ 1 + 0.045 · 1.5 · C̄, and κ = 1 −
   * |R_T|/2, where R_T lies in [−√3, 0]. When neither colour has a negative b, their mean hue is
   * 85° or more from 275°, and |R_T| at most 2 · sin(2 · 30° · exp(−3.4²)), that is 2.1e-5.
   */
  public static boolean isBeyond(Lab target, Lab lab, double limit) {
    double l = target.l() - lab.l();
    double byLightness = l / MixColour.LARGEST_SL;
    double squared = byLightness * byLightness;
    double most = limit * limit;
    if (squared > most) {
      return true;
    }
    double a = target.a() - lab.a();
    double b = target.b() - lab.b();
    double chroma = Math.sqrt(lab.a() * lab.a() + lab.b() * lab.b()) + target.chroma();
    double largestSc = 1 + 0.045 * 1.5 / 2 * chroma;
    double kappa = target.b() >= 0 && lab.b() >= 0 ? 1 - 1.1e-5 : 1 - Math.sqrt(3) / 2;
    return squared + kappa * (a * a + b * b) / (largestSc * largestSc) > most;
  }

  /** How closely a paint is looked at. */
  public enum Look {
    /** Few ratios, few mixes. */
    GLANCE,
    /** All of them. */
    CLOSE
  }

  /**
   * The sum of the targets' ΔE00 with one paint more, no less than what it really is.
   *
   * @param kDrop what one drop of the paint absorbs, in all bands
   * @param sDrop what it scatters
   * @param look how closely to look
   */
  public double sumWith(double[] kDrop, double[] sDrop, Look look) {
    TwoPartColour colour = new TwoPartColour(shelf.viewing());
    Amount own = Amount.of(kDrop, sDrop, 1);
    double[] best = nearest.clone();
    improve(best, colour.lab(own, 1, own, 0));
    for (int i = 0; i < shelf.size() && shelf.mostPaints() > 1; i++) {
      Amount other = Amount.of(k[i], s[i], 1);
      for (int a = 1; a < shelf.mostDrops(); a++) {
        for (int b = 1; b <= shelf.mostDrops() - a; b++) {
          if (coprime(a, b) && (look == Look.CLOSE || isSeenAtAGlance(a, b))) {
            improve(best, colour.lab(own, a, other, b));
          }
        }
      }
    }
    for (int t = 0; t < premixes.size(); t++) {
      List<Premix> ofTarget = premixes.get(t);
      int most = look == Look.CLOSE ? PREMIXES : PREMIXES_AT_A_GLANCE;
      for (Premix premix : ofTarget.subList(0, Math.min(most, ofTarget.size()))) {
        for (int a = 1; a <= shelf.mostDrops() - premix.drops; a++) {
          Lab lab = colour.lab(own, a, premix.amount, 1);
          best[t] = Math.min(best[t], deltaE00(t, lab, best[t]));
        }
      }
    }
    return Arrays.stream(best).sum();
  }

  /** Up to four drops, and the most of one with a single drop of the other. */
  private boolean isSeenAtAGlance(int a, int b) {
    return a + b <= DROPS_AT_A_GLANCE || (a + b == shelf.mostDrops() && Math.min(a, b) == 1);
  }

  private void improve(double[] best, Lab lab) {
    for (int t = 0; t < best.length; t++) {
      best[t] = Math.min(best[t], deltaE00(t, lab, best[t]));
    }
  }

  private static boolean coprime(int a, int b) {
    return b == 0 ? a == 1 : coprime(b, a % b);
  }
}
