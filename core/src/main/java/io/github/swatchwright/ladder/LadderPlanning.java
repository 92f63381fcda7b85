package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The planning of one ladder's pots: ends in order, mixes for them, and whole drops between. */
final class LadderPlanning {
  private static final int ROUNDS = 8;

  /** So many of the ways to mix the ends are planned thoroughly. */
  private static final int FINALISTS = 2;

  private final LadderRequest request;
  private final ShelfOptics optics;
  private final TristimulusWeights light;
  private final MixPredictor predictor;
  private final List<Shade> shades;
  private final List<Lab> colours;
  private final CoverageSolver solver;
  private final Control control;
  private boolean monotone;

  /** Checks the ends, and puts the shades in order. */
  LadderPlanning(
      LadderRequest request, ShelfOptics optics, TristimulusWeights light, Control control) {
    this.control = control;
    this.request = request;
    this.optics = optics;
    this.light = light;
    this.predictor = MixPredictor.of(optics, light);
    List<Lab> stated = request.shades().stream().map(this::colour).toList();
    solver = new CoverageSolver(request, stated);
    checkEnds(stated);
    boolean rising = rising(stated);
    shades = new ArrayList<>(request.shades());
    shades.sort(
        Comparator.comparingDouble(shade -> rising ? colour(shade).l() : -colour(shade).l()));
    colours = shades.stream().map(this::colour).toList();
  }

  private Lab colour(Shade shade) {
    return shade instanceof Shade.OfMix stated
        ? predictor.predict(stated.mix()).lab()
        : ((Shade.OfColour) shade).swatch().labUnder(light);
  }

  private void checkEnds(List<Lab> stated) {
    double apart = Ciede2000.deltaE(stated.get(0), stated.get(stated.size() - 1));
    if (stated.size() == 2 && apart < LadderPlanner.NEAREST_ENDS) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the ends are ΔE00 %.2f apart, must be at least %.0f",
              apart,
              LadderPlanner.NEAREST_ENDS));
    }
    double lightest = stated.stream().mapToDouble(Lab::l).max().orElseThrow();
    double darkest = stated.stream().mapToDouble(Lab::l).min().orElseThrow();
    double least = (request.rungs() - 1) * PotTrial.LEAST_LIGHTNESS_STEP;
    if (lightest - darkest < least) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the ends differ by %.2f in L*, must differ by at least %.2f for %d rungs",
              lightest - darkest,
              least,
              request.rungs()));
    }
  }

  private boolean rising(List<Lab> stated) {
    return switch (request.order()) {
      case DARK_TO_LIGHT -> true;
      case LIGHT_TO_DARK -> false;
      case AS_GIVEN -> stated.get(stated.size() - 1).l() > stated.get(0).l();
    };
  }

  /** Whether the ladder gets lighter. */
  boolean isRising() {
    return rising(colours);
  }

  /** Whether some way between the ends gets steadily lighter or darker; known after planning. */
  boolean isMonotone() {
    return monotone;
  }

  /** The cheapest pots over several mixes for the ends; empty when none keeps to the rules. */
  Optional<PlannedPots> cheapest() {
    List<ShadeMixes.Mixes> ways = new ShadeMixes(optics, light, request.choice()).of(shades);
    List<ShadeMixes.Mixes> hopeful = ways.size() <= FINALISTS ? ways : mostHopeful(ways);
    return hopeful.stream()
        .flatMap(way -> planned(way.mixes(), true).stream())
        .min(Comparator.comparingDouble(PotTrial::cost))
        .map(last -> new PlannedPots(last, from(), to(), solver));
  }

  private List<ShadeMixes.Mixes> mostHopeful(List<ShadeMixes.Mixes> ways) {
    Map<ShadeMixes.Mixes, Double> costs = new HashMap<>();
    for (ShadeMixes.Mixes way : ways) {
      costs.put(
          way, planned(way.mixes(), false).map(PotTrial::cost).orElse(Double.POSITIVE_INFINITY));
    }
    return ways.stream()
        .sorted(
            Comparator.comparingDouble(way -> costs.getOrDefault(way, Double.POSITIVE_INFINITY)))
        .limit(FINALISTS)
        .toList();
  }

  private Lab from() {
    return colours.get(0);
  }

  private Lab to() {
    return colours.get(colours.size() - 1);
  }

  /** Plans until the pots are enough for the coverages that the planned rungs ask for. */
  private Optional<PotTrial> planned(List<Mix> mixes, boolean polished) {
    PotPaints paints = PotPaints.of(mixes, optics, predictor.viewing());
    LadderPath path = LadderPath.through(paints, mixes.stream().map(paints::contents).toList());
    monotone |= path.isMonotone();
    int first = shades.get(0) instanceof Shade.OfMix stated ? paints.bottles(stated.mix()) : -1;
    boolean straight = ShadeMixes.areTwoColours(shades);
    int opaque = request.rungs() - request.washes().size();
    double[] needs =
        needs(
            paints,
            Arrays.stream(path.evenPlaces(opaque, 1))
                .mapToObj(place -> paints.mix(path.at(place)))
                .toList());
    for (int round = 0; round < ROUNDS; round++) {
      control.requireGoingOn();
      checkPots(needs);
      PotAims aims = new PotAims(path, request.pot(), needs, from(), to(), straight, first);
      if (aims.step() < LadderCost.TOLD_APART) {
        return Optional.empty();
      }
      Optional<PotTrial> planned =
          polished ? PotChoice.cheapest(paints, aims) : PotChoice.plain(paints, aims);
      if (planned.isEmpty()) {
        return planned;
      }
      double[] again = needs(paints, mixes(planned.get()));
      boolean enough = true;
      for (int i = 0; i < needs.length; i++) {
        enough &= again[i] <= needs[i] + 1e-9;
        needs[i] = Math.max(needs[i], again[i]);
      }
      if (enough) {
        return planned;
      }
    }
    throw new IllegalArgumentException(
        "no pot is enough for what its passes are to cover; ask for a larger one");
  }

  /** The mixes in the pots, first rung first. */
  static List<Mix> mixes(PotTrial last) {
    return last.all().stream().map(trial -> last.paints().mix(trial.cup().contents())).toList();
  }

  private double[] needs(PotPaints paints, List<Mix> mixes) {
    double[] coverages = LookMixer.coverages(request, optics, light, mixes, solver, from());
    double[] needs = new double[mixes.size()];
    Arrays.setAll(
        needs, i -> coverages[i] * request.pot().millilitresForAll() / paints.smallestDrop());
    return needs;
  }

  private void checkPots(double[] needs) {
    for (int i = 0; i < needs.length; i++) {
      double least = needs[i] / request.pot().use();
      if (least > request.pot().mostDrops()) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "the largest pot is %d drops, must be at least %.0f for what rung %d covers",
                request.pot().mostDrops(),
                Math.ceil(least),
                i + 1));
      }
    }
  }
}
