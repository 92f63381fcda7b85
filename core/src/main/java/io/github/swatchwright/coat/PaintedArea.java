package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * An area that looks alike from a distance, made of patches that don't: each pass of paint that
 * covers a share of it falls on every patch alike (Demichel 1924), and light from the patches mixes
 * by area (Murray and Davies 1936). Internal reflectances. Immutable.
 */
public final class PaintedArea {
  /** A pass that lets through what lies below doubles the patches; this many are enough. */
  private static final int MOST_PATCHES = 1 << 12;

  private static final class Patch {
    private final double share;
    private final double[] internal;

    private Patch(double share, double[] internal) {
      this.share = share;
      this.internal = internal;
    }
  }

  private final List<Patch> patches;

  private PaintedArea(List<Patch> patches) {
    this.patches = patches;
  }

  /**
   * An area of one colour.
   *
   * @param internal internal reflectance in all bands, 0 to 1
   */
  public static PaintedArea of(double[] internal) {
    Require.within("number of bands", internal.length, Bands.COUNT, Bands.COUNT);
    return new PaintedArea(List.of(new Patch(1, internal.clone())));
  }

  /**
   * This area under a film.
   *
   * @param paint the film's paint
   * @param thickness its thickness, at least 0; a coat is 3
   * @param coverage share of the area that it covers, 0 to 1
   */
  public PaintedArea under(OpticalConstants paint, double thickness, double coverage) {
    Require.within("coverage", coverage, 0, 1);
    List<Patch> result = new ArrayList<>();
    for (Patch patch : patches) {
      if (coverage > 0) {
        double[] film = paint.filmOver(thickness, patch.internal);
        result.add(new Patch(patch.share * coverage, film));
      }
      if (coverage < 1) {
        result.add(new Patch(patch.share * (1 - coverage), patch.internal));
      }
    }
    Require.within("number of patches", result.size(), 1, MOST_PATCHES);
    return new PaintedArea(result);
  }

  /**
   * Its patches close up, the largest first.
   *
   * @param surface from internal to seen reflectance
   * @param light to see them under
   */
  List<SeenPatch> patches(DoubleUnaryOperator surface, TristimulusWeights light) {
    return patches.stream()
        .map(
            patch -> {
              double[] seen = Arrays.stream(patch.internal).map(surface).toArray();
              return new SeenPatch(light.xyz(seen).toLab(), patch.share);
            })
        .sorted(Comparator.comparingDouble(SeenPatch::share).reversed())
        .toList();
  }

  /**
   * What is seen of it from a distance: the mean by area, all bands.
   *
   * @param surface from internal to seen reflectance
   */
  public double[] seen(DoubleUnaryOperator surface) {
    double[] seen = new double[Bands.COUNT];
    for (Patch patch : patches) {
      for (int band = 0; band < seen.length; band++) {
        seen[band] += patch.share * surface.applyAsDouble(patch.internal[band]);
      }
    }
    for (int band = 0; band < seen.length; band++) {
      seen[band] = Math.max(0, Math.min(1, seen[band]));
    }
    return seen;
  }
}
