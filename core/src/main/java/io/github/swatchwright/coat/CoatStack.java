package io.github.swatchwright.coat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.PaintOptics;
import io.github.swatchwright.paint.ShelfOptics;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A base and coats with all numbers filled in, and the same with one of the numbers disturbed: what
 * first-order propagation of errors needs.
 */
final class CoatStack {
  /** Small enough for first order, large enough for the digits of a double. */
  private static final double STEP = 1e-4;

  private final Map<String, OpticalConstants> paints;
  private final Optional<Mix> baseMix;
  private final double[] fixedBase;
  private final List<double[]> deviations;
  private final List<Coat> coats;
  private final double[] thickness;
  private final ShelfOptics optics;

  /**
   * A stack with all its numbers.
   *
   * @param paints the constants of every paint in it, by name
   * @param baseMix the base as a mix of them; empty when it is fixed
   * @param fixedBase internal reflectance of the base when it isn't a mix
   * @param deviations internal reflectances of a fixed base that is one sd off in L*, a* or b*
   * @param coats the coats, lowest first
   * @param thickness a factor to each coat's thickness
   * @param optics where the paints come from
   */
  private CoatStack(
      Map<String, OpticalConstants> paints,
      Optional<Mix> baseMix,
      double[] fixedBase,
      List<double[]> deviations,
      List<Coat> coats,
      double[] thickness,
      ShelfOptics optics) {
    this.paints = paints;
    this.baseMix = baseMix;
    this.fixedBase = fixedBase;
    this.deviations = deviations;
    this.coats = coats;
    this.thickness = thickness;
    this.optics = optics;
  }

  static CoatStack of(ShelfOptics optics, Base base, List<Coat> coats) {
    if (base instanceof Base.OfMix painted) {
      return of(optics, Optional.of(painted.mix()), new double[Bands.COUNT], List.of(), coats);
    }
    Swatch swatch = ((Base.OfSwatch) base).swatch();
    double[] internal = internal(swatch, optics.surface());
    return of(optics, Optional.empty(), internal, deviations(swatch, optics.surface()), coats);
  }

  static CoatStack over(ShelfOptics optics, double[] internal, List<Coat> coats) {
    return of(optics, Optional.empty(), internal, List.of(), coats);
  }

  static CoatStack of(ShelfOptics optics, Mix mix) {
    return of(optics, Optional.of(mix), new double[Bands.COUNT], List.of(), List.of());
  }

  private static CoatStack of(
      ShelfOptics optics,
      Optional<Mix> baseMix,
      double[] fixedBase,
      List<double[]> deviations,
      List<Coat> coats) {
    Map<String, OpticalConstants> paints = new LinkedHashMap<>();
    Stream.concat(baseMix.stream(), coats.stream().map(Coat::mix))
        .flatMap(mix -> mix.parts().stream())
        .map(part -> part.paint().name())
        .forEach(name -> paints.put(name, optics.of(name).constants()));
    double[] thickness = new double[coats.size()];
    Arrays.fill(thickness, 1);
    return new CoatStack(paints, baseMix, fixedBase, deviations, coats, thickness, optics);
  }

  private static double[] internal(Swatch swatch, Saunderson surface) {
    if (swatch instanceof Swatch.OfReflectance measured) {
      Reflectance seen = measured.reflectance();
      double[] internal = new double[Bands.COUNT];
      Arrays.setAll(internal, i -> surface.internal(Math.max(seen.at(i), surface.k1())));
      return internal;
    }
    return recovered(swatch.lab(), surface);
  }

  private static double[] recovered(Lab lab, Saunderson surface) {
    return new ReflectanceRecovery(TristimulusWeights.D65, surface)
        .recover(lab)
        .internal()
        .toArray();
  }

  private static List<double[]> deviations(Swatch swatch, Saunderson surface) {
    Lab lab = swatch.lab();
    double sd = swatch.usualError();
    double inwards = lab.l() > 50 ? -sd : sd;
    return Stream.of(
            Lab.ofD65(lab.l() + inwards, lab.a(), lab.b()),
            Lab.ofD65(lab.l(), lab.a() + sd, lab.b()),
            Lab.ofD65(lab.l(), lab.a(), lab.b() + sd))
        .map(off -> recovered(off, surface))
        .toList();
  }

  OpticalConstants constants(Mix mix) {
    List<Mix.Part> parts = mix.parts();
    return OpticalConstants.mix(
        parts.stream()
            .map(part -> optics.of(part.paint().name()).paint().name())
            .map(paints::get)
            .toArray(OpticalConstants[]::new),
        parts.stream().mapToDouble(Mix.Part::millilitres).toArray());
  }

  /** The area before the first coat, and after each. */
  List<PaintedArea> areas() {
    PaintedArea area = PaintedArea.of(baseMix.map(m -> constants(m).opaque()).orElse(fixedBase));
    List<PaintedArea> areas = new ArrayList<>(List.of(area));
    for (int i = 0; i < coats.size(); i++) {
      Coat coat = coats.get(i);
      area = area.under(constants(coat.mix()), coat.thickness() * thickness[i], coat.coverage());
      areas.add(area);
    }
    return areas;
  }

  private CoatStack withPaint(String name, OpticalConstants changed) {
    Map<String, OpticalConstants> all = new LinkedHashMap<>(paints);
    all.put(name, changed);
    return new CoatStack(all, baseMix, fixedBase, deviations, coats, thickness, optics);
  }

  private CoatStack withBase(double[] changed) {
    return new CoatStack(paints, baseMix, changed, deviations, coats, thickness, optics);
  }

  private CoatStack withThickness(int coat, double factor) {
    double[] all = thickness.clone();
    all[coat] = factor;
    return new CoatStack(paints, baseMix, fixedBase, deviations, coats, all, optics);
  }

  /** One independent cause of error. */
  interface Disturbance {
    /** Stacks with it at work. */
    List<CoatStack> variants();

    /**
     * Adds what it does to the covariance of L*, a* and b*.
     *
     * @param slope derivatives of L*, a* and b* by seen reflectance
     * @param seen reflectance undisturbed
     * @param moved reflectance of each variant
     */
    void addTo(double[][] covariance, double[][] slope, double[] seen, List<double[]> moved);
  }

  /** All causes of error. */
  List<Disturbance> disturbances(double coatScatter) {
    List<Disturbance> all = new ArrayList<>();
    paints.keySet().forEach(name -> all.add(new PaintError(optics.of(name), this)));
    deviations.forEach(internal -> all.add(new Shift(withBase(internal), 1)));
    for (int i = 0; i < coats.size(); i++) {
      double sd = coatScatter / Math.sqrt(Math.max(1, coats.get(i).coats()));
      all.add(new Shift(withThickness(i, 1 + STEP), sd / STEP));
    }
    return all;
  }

  /**
   * A number that is off, by so many times of what the variant shows.
   *
   * @param variant the stack with the number off
   * @param times sd of the error over what the variant has
   */
  private record Shift(CoatStack variant, double times) implements Disturbance {
    @Override
    public List<CoatStack> variants() {
      return List.of(variant);
    }

    @Override
    public void addTo(
        double[][] covariance, double[][] slope, double[] seen, List<double[]> moved) {
      double[] shift = new double[3];
      for (int row = 0; row < 3; row++) {
        for (int band = 0; band < Bands.COUNT; band++) {
          shift[row] += slope[row][band] * (moved.get(0)[band] - seen[band]) * times;
        }
      }
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          covariance[i][j] += shift[i] * shift[j];
        }
      }
    }
  }

  /**
   * A paint's covariance. Bands don't mix, so one variant with all z off, and one with all u off,
   * give every derivative: ∂K/∂z = −K(1 + R), ∂K/∂u = K, ∂S/∂u = S.
   *
   * @param paint the paint
   * @param stack where it is used
   */
  private record PaintError(PaintOptics paint, CoatStack stack) implements Disturbance {
    @Override
    public List<CoatStack> variants() {
      OpticalConstants constants = paint.constants();
      double[] masstone = paint.masstone();
      double[] kByZ = new double[Bands.COUNT];
      double[] kByU = new double[Bands.COUNT];
      double[] s = new double[Bands.COUNT];
      double[] sByU = new double[Bands.COUNT];
      for (int i = 0; i < Bands.COUNT; i++) {
        s[i] = constants.s(i);
        kByZ[i] = constants.k(i) * Math.exp(-STEP * (1 + masstone[i]));
        kByU[i] = constants.k(i) * Math.exp(STEP);
        sByU[i] = s[i] * Math.exp(STEP);
      }
      String name = paint.paint().name();
      return List.of(
          stack.withPaint(name, OpticalConstants.of(kByZ, s)),
          stack.withPaint(name, OpticalConstants.of(kByU, sByU)));
    }

    @Override
    public void addTo(
        double[][] covariance, double[][] slope, double[] seen, List<double[]> moved) {
      double[][] jacobian = new double[3][2 * Bands.COUNT];
      for (int row = 0; row < 3; row++) {
        for (int band = 0; band < Bands.COUNT; band++) {
          double scale = slope[row][band] / STEP;
          jacobian[row][band] = scale * (moved.get(0)[band] - seen[band]);
          jacobian[row][Bands.COUNT + band] = scale * (moved.get(1)[band] - seen[band]);
        }
      }
      double[][] added = paint.covarianceOf(jacobian);
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          covariance[i][j] += added[i][j];
        }
      }
    }
  }
}
