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
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.optics.AreaCoverage;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Plans ladders from one shelf under one light: the recipes of the ends, even steps between them,
 * whole drops from rung to rung, and the coverage of each pass. Immutable.
 */
public final class LadderPlanner {
  /** Ends nearer than that, in ΔE00, are one shade to the eye. */
  public static final double NEAREST_ENDS = 1;

  private final ShelfOptics optics;
  private final TristimulusWeights light;

  private LadderPlanner(ShelfOptics optics, TristimulusWeights light) {
    this.optics = optics;
    this.light = light;
  }

  /** A planner for one shelf under one light. */
  public static LadderPlanner of(ShelfOptics optics, TristimulusWeights light) {
    return new LadderPlanner(optics, light);
  }

  /**
   * Plans a ladder.
   *
   * @throws IllegalArgumentException when the ends are one shade or as light as each other, a paint
   *     isn't on the shelf or can't be computed with, the largest pot isn't enough for a pass, or
   *     no ladder gets steadily lighter or darker
   */
  public Ladder plan(LadderRequest request) {
    return new Planning(request).ladder();
  }

  /** The planning of one ladder. */
  private final class Planning {
    private final LadderRequest request;
    private final MixPredictor predictor = MixPredictor.of(optics, light);
    private final List<Shade> shades;
    private final List<Lab> colours;
    private final CoverageSolver solver;
    private final PotPaints paints;
    private final LadderPath path;

    private Planning(LadderRequest request) {
      this.request = request;
      List<Lab> stated = request.shades().stream().map(this::colour).toList();
      solver = new CoverageSolver(request, stated);
      checkEnds(stated);
      shades = new ArrayList<>(request.shades());
      boolean rising = rising(stated);
      shades.sort(
          Comparator.comparingDouble(shade -> rising ? colour(shade).l() : -colour(shade).l()));
      colours = shades.stream().map(this::colour).toList();
      List<Mix> mixes = new ShadeMixes(optics, light, request.choice()).of(shades);
      paints = PotPaints.of(mixes, optics, predictor.viewing());
      path = LadderPath.through(paints, mixes.stream().map(paints::contents).toList());
    }

    private Lab colour(Shade shade) {
      return shade instanceof Shade.OfMix stated
          ? predictor.predict(stated.mix()).lab()
          : ((Shade.OfColour) shade).swatch().labUnder(light);
    }

    private void checkEnds(List<Lab> stated) {
      double apart = Ciede2000.deltaE(stated.get(0), stated.get(stated.size() - 1));
      if (stated.size() == 2 && apart < NEAREST_ENDS) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "the ends are ΔE00 %.2f apart, must be at least %.0f",
                apart,
                NEAREST_ENDS));
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

    private int opaque() {
      return request.rungs() - request.washes().size();
    }

    private Ladder ladder() {
      PotTrial planned = planned();
      List<PotTrial> trials = planned.all();
      List<Mix> mixes = trials.stream().map(trial -> paints.mix(trial.contents())).toList();
      double[] coverages = coverages(mixes);
      double[] visible = AreaCoverage.visibleShares(coverages);
      List<Rung> rungs = new ArrayList<>();
      for (int i = 0; i < trials.size(); i++) {
        rungs.add(rung(trials, i, mixes.get(i), coverages[i], visible[i + 1]));
      }
      addWashes(rungs, mixes.get(mixes.size() - 1), coverages, visible);
      Optional<Lab> base =
          request.base().map(below -> CoatPredictor.of(optics, light).predict(below).lab());
      Lab look = mixer(mixes).look(Arrays.copyOf(coverages, opaque()));
      Ladder bare =
          new Ladder(
              rungs,
              colours.get(0),
              colours.get(colours.size() - 1),
              request.pot(),
              visible[0],
              base,
              look,
              wantedLook(),
              List.of());
      return bare.withWarnings(LadderWarnings.of(bare, request, optics.surface(), light));
    }

    private Optional<Lab> wantedLook() {
      return request.coverage() instanceof CoverageWish.OfLook wish
          ? Optional.of(wish.colour().labUnder(light))
          : Optional.empty();
    }

    private LookMixer mixer(List<Mix> mixes) {
      return new LookMixer(optics, light, request.base(), mixes, request.washes(), solver.washes());
    }

    private double[] coverages(List<Mix> mixes) {
      List<Lab> rungs = mixes.stream().map(mix -> paints.lab(paints.contents(mix))).toList();
      List<Lab> parts = wantedLook().isPresent() ? mixer(mixes).parts() : List.of();
      return solver.coverages(rungs, parts, wantedLook().orElse(colours.get(0)));
    }

    /** Plans until the pot is enough for the coverages that the planned rungs ask for. */
    private PotTrial planned() {
      double[] places = path.evenPlaces(opaque(), 1);
      double[] needs =
          needs(Arrays.stream(places).mapToObj(place -> paints.mix(path.at(place))).toList());
      for (int round = 0; round < 8; round++) {
        PotTrial planned = planned(needs);
        double[] again =
            needs(planned.all().stream().map(trial -> paints.mix(trial.contents())).toList());
        boolean enough = true;
        for (int i = 0; i < needs.length; i++) {
          enough &= again[i] <= request.pot().use() * planned.all().get(i).potDrops() + 1e-9;
          needs[i] = Math.max(needs[i], again[i]);
        }
        if (enough) {
          return planned;
        }
      }
      throw new IllegalArgumentException(
          "no pot is enough for what its passes are to cover; ask for a larger one");
    }

    private double[] needs(List<Mix> mixes) {
      double[] coverages = coverages(mixes);
      double[] needs = new double[opaque()];
      Arrays.setAll(
          needs, i -> coverages[i] * request.pot().millilitresForAll() / paints.smallestDrop());
      return needs;
    }

    private PotTrial planned(double[] needs) {
      for (int i = 0; i < needs.length; i++) {
        double least = needs[i] / request.pot().use();
        if (least > request.pot().mostDrops()) {
          throw new IllegalArgumentException(
              String.format(
                  Locale.ROOT,
                  "max-drops is %d, must be at least %.0f for what rung %d covers",
                  request.pot().mostDrops(),
                  Math.ceil(least),
                  i + 1));
        }
      }
      return PotSize.smallestGood(paints, path, request.pot(), needs)
          .orElseThrow(() -> new IllegalArgumentException(noLadder()));
    }

    private String noLadder() {
      String way = rising(colours) ? "lighter" : "darker";
      return path.isMonotone()
          ? "no "
              + opaque()
              + " rungs between these ends get steadily "
              + way
              + " in whole drops; ask for fewer rungs or a larger pot"
          : "mixes between these ends don't get steadily "
              + way
              + "; choose other ends, or leave out the paint that is in the way";
    }

    private Rung rung(List<PotTrial> trials, int i, Mix mix, double coverage, double visibleShare) {
      PotTrial trial = trials.get(i);
      return new Rung(
          paints.drops(trial.added()),
          mix,
          Optional.empty(),
          predictor.predict(mix),
          i == 0
              ? OptionalDouble.empty()
              : OptionalDouble.of(Ciede2000.deltaE(trials.get(i - 1).lab(), trial.lab())),
          coverage,
          visibleShare,
          trial.oneDrop(paints),
          new PaintAmount(coverage * request.pot().millilitresForAll(), 0));
    }

    private void addWashes(List<Rung> rungs, Mix below, double[] coverages, double[] visible) {
      if (request.washes().isEmpty()) {
        return;
      }
      List<CoatStep> steps =
          CoatPredictor.of(optics, light).predict(new Base.OfMix(below), request.washes());
      for (CoatStep step : steps) {
        Rung before = rungs.get(rungs.size() - 1);
        Prediction prediction = step.prediction();
        int place = rungs.size();
        checkDirection(before.prediction().lab(), prediction.lab(), place);
        rungs.add(
            new Rung(
                List.of(),
                step.coat().mix(),
                Optional.of(step.coat()),
                prediction,
                OptionalDouble.of(Ciede2000.deltaE(before.prediction().lab(), prediction.lab())),
                coverages[place],
                visible[place + 1],
                0,
                amount(step.coat(), coverages[place])));
      }
    }

    private PaintAmount amount(Coat wash, double coverage) {
      double paint =
          coverage * request.pot().millilitresForAll() * wash.coats() / (1 + wash.thinner());
      return new PaintAmount(paint, paint * wash.thinner());
    }

    private void checkDirection(Lab before, Lab washed, int place) {
      boolean rising = rising(colours);
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
}
