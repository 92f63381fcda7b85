package io.github.swatchwright.ladder;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.SolventRule;
import io.github.swatchwright.coat.SolventRules;
import io.github.swatchwright.coat.SolventVerdict;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.ladder.LadderWarning.Kind;
import io.github.swatchwright.match.Reach;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a painter should know of a ladder before mixing it. */
final class LadderWarnings {
  /** A step may differ so much from the mean, as a share of it, before it is named uneven. */
  static final double UNEVEN = 0.25;

  private final Ladder ladder;
  private final List<LadderWarning> warnings = new ArrayList<>();

  private LadderWarnings(Ladder ladder) {
    this.ladder = ladder;
  }

  /**
   * The warnings.
   *
   * @param nearestEnd ΔE00 from the last end of the nearest mix for it that was found
   */
  static List<LadderWarning> of(
      Ladder ladder,
      LadderRequest request,
      Saunderson surface,
      TristimulusWeights light,
      double nearestEnd) {
    LadderWarnings found = new LadderWarnings(ladder);
    if (request.margin() > 0) {
      double floor = light.xyz(Reflectance.constant(surface.k1())).toLab().l();
      found.ends(request.margin(), floor);
    }
    found.steps();
    found.drops();
    found.reach(nearestEnd);
    found.solvents(request);
    return List.copyOf(found.warnings);
  }

  private void add(Kind kind, int rung, String format, Object... values) {
    warnings.add(new LadderWarning(kind, rung, String.format(Locale.ROOT, format, values)));
  }

  private void ends(double margin, double floor) {
    for (int rung : new int[] {1, ladder.rungs().size()}) {
      double l = lab(rung).l();
      if (l < floor + margin) {
        add(
            Kind.NEARLY_BLACK,
            rung,
            "rung %d is nearly pure black (L* %.1f, the surface shows no less than %.1f), which"
                + " looks wrong at scale",
            rung,
            l,
            floor);
      } else if (l > 100 - margin) {
        add(
            Kind.NEARLY_WHITE,
            rung,
            "rung %d is nearly pure white (L* %.1f), which looks wrong at scale",
            rung,
            l);
      }
    }
  }

  private Lab lab(int rung) {
    return ladder.rungs().get(rung - 1).prediction().lab();
  }

  private void steps() {
    double even = ladder.evenStep();
    for (int rung = 2; rung <= ladder.rungs().size(); rung++) {
      double step = ladder.rungs().get(rung - 1).step().orElseThrow();
      if (step < Verdict.PERCEPTIBLE) {
        add(
            Kind.STEP_TOO_SMALL,
            rung,
            "rungs %d and %d differ by ΔE00 %.1f, less than one can see",
            rung - 1,
            rung,
            step);
      } else if (Math.abs(step / even - 1) > UNEVEN) {
        add(
            Kind.STEP_UNEVEN,
            rung,
            "rungs %d and %d differ by ΔE00 %.1f, an even step is %.1f",
            rung - 1,
            rung,
            step,
            even);
      }
    }
  }

  private void drops() {
    double most = LadderCost.STURDY_ENOUGH * ladder.evenStep();
    for (int rung = 1; rung <= ladder.rungs().size(); rung++) {
      double oneDrop = ladder.rungs().get(rung - 1).oneDrop();
      if (oneDrop > most) {
        add(
            Kind.ONE_DROP_DECIDES,
            rung,
            "one drop more or less moves rung %d by ΔE00 %.1f, more than half a step: count the"
                + " drops with care",
            rung,
            oneDrop);
      }
    }
  }

  private void reach(double nearestEnd) {
    int last = (int) ladder.rungs().stream().filter(rung -> rung.wash().isEmpty()).count();
    double first = Ciede2000.deltaE(lab(1), ladder.from());
    double end = Ciede2000.deltaE(lab(last), ladder.to());
    if (first > Reach.LIMIT) {
      add(
          Kind.END_OUT_OF_REACH,
          1,
          "rung 1 is ΔE00 %.1f from the wanted end: these paints come no nearer in whole drops",
          first);
    }
    if (end > Reach.LIMIT) {
      add(
          Kind.END_OUT_OF_REACH,
          last,
          ladder.pot().separate() || end < nearestEnd + Verdict.ACCEPTABLE
              ? "rung %d is ΔE00 %.1f from the wanted end: these paints come no nearer in whole"
                  + " drops"
              : "rung %d is ΔE00 %.1f from the wanted end: start at the other end or mix each"
                  + " rung separately",
          last,
          end);
    }
    ladder
        .wantedLook()
        .map(wanted -> Ciede2000.deltaE(wanted, ladder.look()))
        .filter(off -> off > Reach.LIMIT)
        .ifPresent(
            off ->
                add(
                    Kind.LOOK_OUT_OF_REACH,
                    ladder.rungs().size(),
                    "the average stays ΔE00 %.1f from the wanted one, however the shades are"
                        + " spread",
                    off));
  }

  /** What the solvents of later layers do to the earlier ones, base first. */
  private void solvents(LadderRequest request) {
    List<Medium> below = new ArrayList<>();
    request.base().flatMap(Base::medium).ifPresent(below::add);
    for (int rung = 1; rung <= ladder.rungs().size(); rung++) {
      Rung painted = ladder.rungs().get(rung - 1);
      Medium medium = painted.pot().parts().get(0).paint().medium();
      double thinner = painted.wash().map(Coat::thinner).orElse(0.0);
      boolean another = below.isEmpty() || below.get(below.size() - 1) != medium;
      if (!below.isEmpty() && (another || painted.wash().isPresent())) {
        add(SolventRules.of(below.get(below.size() - 1), medium, thinner), rung);
      }
      below.add(medium);
    }
  }

  private void add(SolventRule rule, int rung) {
    if (rule.verdict() != SolventVerdict.SAFE) {
      add(
          Kind.SOLVENT,
          rung,
          "rung %d, %s over %s: %s. %s",
          rung,
          rule.upper().word(),
          rule.lower().word(),
          rule.reason(),
          rule.remedy());
    }
  }
}
