package io.github.swatchwright.ladder;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.CoatStep;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.optics.AreaCoverage;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Planned pots as a ladder: predictions, coverages, washes and warnings are put to them. */
final class LadderWriter {
  private final LadderRequest request;
  private final ShelfOptics optics;
  private final TristimulusWeights light;
  private final MixPredictor predictor;
  private final PlannedPots pots;
  private final List<PotTrial> trials;
  private final List<Mix> mixes;
  private final double[] coverages;
  private final double[] visible;

  LadderWriter(
      LadderRequest request, ShelfOptics optics, TristimulusWeights light, PlannedPots pots) {
    this.request = request;
    this.optics = optics;
    this.light = light;
    this.predictor = MixPredictor.of(optics, light);
    this.pots = pots;
    this.trials = pots.last().all();
    this.mixes = LadderPlanning.mixes(pots.last());
    this.coverages = LookMixer.coverages(request, optics, light, mixes, pots.solver(), pots.from());
    this.visible = AreaCoverage.visibleShares(coverages);
  }

  Ladder ladder() {
    List<Rung> rungs = new ArrayList<>();
    for (int i = 0; i < trials.size(); i++) {
      rungs.add(rung(i));
    }
    addWashes(rungs);
    Optional<Lab> base =
        request.base().map(below -> CoatPredictor.of(optics, light).predict(below).lab());
    Lab look =
        new LookMixer(
                optics, light, request.base(), mixes, request.washes(), pots.solver().washes())
            .look(Arrays.copyOf(coverages, trials.size()));
    Ladder bare =
        new Ladder(
            light.illuminant(),
            rungs,
            pots.from(),
            pots.to(),
            request.pot(),
            usedLetDown(),
            visible[0],
            base,
            look,
            request.wantedLook(light),
            List.of());
    return bare.withWarnings(
        LadderWarnings.of(bare, request, optics.surface(), light, pots.last().aims().nearestEnd()));
  }

  private Optional<LetDown> usedLetDown() {
    return trials.stream().anyMatch(trial -> letDownDrops(trial) > 0)
        ? pots.paints().letDown()
        : Optional.empty();
  }

  private int letDownDrops(PotTrial trial) {
    return trial.cup().letDown();
  }

  private Rung rung(int i) {
    PotTrial trial = trials.get(i);
    int keptNext = i + 1 < trials.size() ? trials.get(i + 1).cup().keep() : 0;
    double need = coverages[i] * request.pot().millilitresForAll() / pots.paints().smallestDrop();
    return new Rung(
        trial.cup().keep(),
        pots.paints().drops(trial.cup().added()),
        letDownDrops(trial),
        mixes.get(i),
        Optional.empty(),
        predictor.predict(mixes.get(i)),
        i == 0
            ? OptionalDouble.empty()
            : OptionalDouble.of(Ciede2000.deltaE(trials.get(i - 1).lab(), trial.lab())),
        coverages[i],
        visible[i + 1],
        trial.cup().oneDrop(),
        new PaintAmount(coverages[i] * request.pot().millilitresForAll(), 0),
        Math.max(0, trial.cup().drops() - need - keptNext));
  }

  private void addWashes(List<Rung> rungs) {
    if (request.washes().isEmpty()) {
      return;
    }
    Mix below = mixes.get(mixes.size() - 1);
    for (CoatStep step :
        CoatPredictor.of(optics, light).predict(new Base.OfMix(below), request.washes())) {
      Lab before = rungs.get(rungs.size() - 1).prediction().lab();
      Lab washed = step.prediction().lab();
      int place = rungs.size();
      checkDirection(before, washed, place);
      rungs.add(
          new Rung(
              0,
              List.of(),
              0,
              step.coat().mix(),
              Optional.of(step.coat()),
              step.prediction(),
              OptionalDouble.of(Ciede2000.deltaE(before, washed)),
              coverages[place],
              visible[place + 1],
              0,
              amount(step.coat(), coverages[place]),
              0));
    }
  }

  private PaintAmount amount(Coat wash, double coverage) {
    double paint =
        coverage * request.pot().millilitresForAll() * wash.coats() / (1 + wash.thinner());
    return new PaintAmount(paint, paint * wash.thinner());
  }

  private void checkDirection(Lab before, Lab washed, int place) {
    boolean rising = pots.to().l() > pots.from().l();
    if ((washed.l() - before.l()) * (rising ? 1 : -1) < PotTrial.LEAST_LIGHTNESS_STEP) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the wash of rung %d takes L* from %.1f to %.1f, must go on %s",
              place + 1,
              before.l(),
              washed.l(),
              rising ? "rising" : "falling"));
    }
  }
}
