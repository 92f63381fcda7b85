package io.github.swatchwright.ladder;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.PaintedArea;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.optics.AreaCoverage;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The average of an area on which the base and opaque shades lie side by side, with washes over
 * them all: light from the patches mixes by area (Murray and Davies 1936).
 */
final class LookMixer {
  private final TristimulusWeights light;
  private final List<double[]> seen = new ArrayList<>();

  /**
   * Shades side by side.
   *
   * @param base what lies below them, if anything
   * @param mixes the opaque shades
   * @param washes what lies over all of them
   * @param coverages of the washes
   */
  LookMixer(
      ShelfOptics optics,
      TristimulusWeights light,
      Optional<Base> base,
      List<Mix> mixes,
      List<Coat> washes,
      double[] coverages) {
    this.light = light;
    MixPredictor predictor = MixPredictor.of(optics, light);
    Saunderson surface = optics.surface();
    List<PaintedArea> areas = new ArrayList<>();
    base.ifPresent(
        below -> {
          double[] bare = CoatPredictor.of(optics, light).predict(below).reflectance().toArray();
          areas.add(
              PaintedArea.of(
                  Arrays.stream(bare)
                      .map(r -> surface.internal(Math.max(r, surface.k1())))
                      .toArray()));
        });
    mixes.forEach(mix -> areas.add(PaintedArea.of(predictor.constants(mix).opaque())));
    for (PaintedArea area : areas) {
      PaintedArea washed = area;
      for (int i = 0; i < washes.size(); i++) {
        Coat wash = washes.get(i);
        washed = washed.under(predictor.constants(wash.mix()), wash.thickness(), coverages[i]);
      }
      seen.add(washed.seen(surface::seen));
    }
  }

  /**
   * The coverages of all passes of a ladder, those of its washes last.
   *
   * @param mixes of the opaque rungs
   * @param from the wanted colour of the first end, in whose white point colours are given
   */
  static double[] coverages(
      LadderRequest request,
      ShelfOptics optics,
      TristimulusWeights light,
      List<Mix> mixes,
      CoverageSolver solver,
      Lab from) {
    MixPredictor predictor = MixPredictor.of(optics, light);
    List<Lab> rungs =
        mixes.stream()
            .map(mix -> predictor.viewing().lab(predictor.constants(mix).opaque()))
            .toList();
    Optional<Lab> wanted = request.wantedLook(light);
    List<Lab> parts =
        wanted.isPresent()
            ? new LookMixer(optics, light, request.base(), mixes, request.washes(), solver.washes())
                .parts()
            : List.of();
    return solver.coverages(rungs, parts, wanted.orElse(from));
  }

  /**
   * The average.
   *
   * @param coverages of each opaque pass, first pass first
   */
  Lab look(double[] coverages) {
    double[] visible = AreaCoverage.visibleShares(coverages);
    int first = visible.length - seen.size();
    double[] mixed = new double[Bands.COUNT];
    for (int i = 0; i < seen.size(); i++) {
      for (int band = 0; band < mixed.length; band++) {
        mixed[band] += visible[first + i] * seen.get(i)[band];
      }
    }
    return light.xyz(mixed).toLab();
  }

  /** The colour of each part with the washes over it, the base first when there is one. */
  List<Lab> parts() {
    return seen.stream().map(reflectance -> light.xyz(reflectance).toLab()).toList();
  }
}
