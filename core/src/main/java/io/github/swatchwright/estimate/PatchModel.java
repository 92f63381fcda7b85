package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What a painted patch would show in a state of its paints, and how that depends on them: K and S
 * add by volume, the film is opaque or lies over its base, and the surface is seen through.
 *
 * <p>A colour is observed as L*, a* and b*; a reflectance as the logit of internal reflectance in
 * the bands that were measured.
 */
final class PatchModel {
  /** Relative error of a film's thickness, as sd: nobody lays coats more evenly. */
  private static final double THICKNESS_ERROR = 0.1;

  private final PaintedPatch patch;
  private final Viewing viewing;
  private final List<String> paints;
  private final List<List<String>> strengths;
  private final List<String> unknowns;
  private final double[] shares;
  private final double[] amountErrors;
  private final PatchReadout readout;

  /** A patch whose paints are as strong as the shelf says, but for labelled batches. */
  PatchModel(PaintedPatch patch, Saunderson surface) {
    this(patch, surface, PaintingDays.NONE, 1);
  }

  PatchModel(PaintedPatch patch, Saunderson surface, PaintingDays days, int width) {
    this.patch = patch;
    viewing = new Viewing(TristimulusWeights.D65, surface);
    paints = List.copyOf(patch.amounts().keySet());
    strengths = paints.stream().map(paint -> days.strengths(patch, paint, amount(paint))).toList();
    unknowns = Stream.concat(paints.stream(), strengths.stream().flatMap(List::stream)).toList();
    double whole = patch.amounts().values().stream().mapToDouble(PaintedPatch.Amount::volume).sum();
    shares = paints.stream().mapToDouble(name -> amount(name).volume() / whole).toArray();
    amountErrors = paints.stream().mapToDouble(name -> amount(name).error()).toArray();
    readout = PatchReadout.of(patch, viewing, width);
  }

  private PaintedPatch.Amount amount(String paint) {
    return Objects.requireNonNull(patch.amounts().get(paint));
  }

  List<String> paints() {
    return paints;
  }

  /** The batches whose strength is unknown. */
  List<PaintBatch> batches() {
    return paints.stream()
        .flatMap(paint -> amount(paint).batch().map(label -> new PaintBatch(paint, label)).stream())
        .toList();
  }

  /** What the patch depends on: its paints, then the strengths that add up for each of them. */
  List<String> unknowns() {
    return unknowns;
  }

  /** The colour to be expected. */
  Lab lab(Map<String, double[]> states) {
    return viewing.lab(internal(mixed(constants(states))));
  }

  /** ΔE00 between the measured colour and the one to be expected. */
  double deltaE00(Map<String, double[]> states) {
    return Ciede2000.deltaE(patch.measured().lab(), lab(states));
  }

  /** Measured minus expected. */
  double[] residual(Map<String, double[]> states) {
    double[] observed = readout.observed();
    double[] expected = readout.of(internal(mixed(constants(states))));
    for (int i = 0; i < observed.length; i++) {
      observed[i] -= expected[i];
    }
    return observed;
  }

  /** Variances of the measured values' own errors. */
  double[] variances() {
    return readout.variances();
  }

  /** The patch linearised at a state. */
  Linear linearise(Map<String, double[]> states) {
    List<OpticalConstants> constants = constants(states);
    OpticalConstants mixed = mixed(constants);
    double[] internal = internal(mixed);
    double[][] byInternal = readout.slopes(internal);
    PatchSlopes slopes = slopes(mixed, byInternal);
    List<double[][]> jacobians = new ArrayList<>();
    List<double[]> shifts = new ArrayList<>();
    for (int p = 0; p < shares.length; p++) {
      double[] masstone = OpticsState.masstone(Objects.requireNonNull(states.get(paints.get(p))));
      jacobians.add(slopes.byPaint(constants.get(p), masstone, shares[p]));
      if (shares.length > 1) {
        shifts.add(slopes.byAmount(constants.get(p), shares[p], amountErrors[p]));
      }
    }
    for (int p = 0; p < shares.length; p++) {
      double[][] byStrength = PatchSlopes.byStrength(jacobians.get(p));
      strengths.get(p).forEach(strength -> jacobians.add(byStrength));
    }
    if (patch.over().isPresent()) {
      shifts.add(slopes.byThickness(THICKNESS_ERROR));
    }
    double[][] model = ModelError.of(patch.modelError(), internal, byInternal, viewing);
    return new Linear(jacobians, noise(shifts, model));
  }

  private double[][] noise(List<double[]> shifts, double[][] modelError) {
    double[] variances = readout.variances();
    double[][] noise = new double[variances.length][];
    for (int i = 0; i < variances.length; i++) {
      noise[i] = Arrays.copyOf(modelError[i], i + 1);
      noise[i][i] += variances[i];
      for (double[] shift : shifts) {
        for (int j = 0; j <= i; j++) {
          noise[i][j] += shift[i] * shift[j];
        }
      }
    }
    return noise;
  }

  private List<OpticalConstants> constants(Map<String, double[]> states) {
    List<OpticalConstants> constants = new ArrayList<>();
    for (int p = 0; p < shares.length; p++) {
      double logStrength = 0;
      for (String strength : strengths.get(p)) {
        logStrength += Objects.requireNonNull(states.get(strength))[0];
      }
      double[] state = Objects.requireNonNull(states.get(paints.get(p)));
      constants.add(OpticsState.constants(state, logStrength));
    }
    return constants;
  }

  private OpticalConstants mixed(List<OpticalConstants> constants) {
    return OpticalConstants.mix(constants.toArray(OpticalConstants[]::new), shares);
  }

  private double[] internal(OpticalConstants mixed) {
    return patch.over().isEmpty() ? mixed.opaque() : mixed.filmOver(thickness(), base());
  }

  private double thickness() {
    return patch.coats().orElse(1) * Film.COAT;
  }

  private double[] base() {
    Saunderson surface = viewing.surface();
    return Arrays.stream(patch.over().orElseThrow().reflectance().toArray())
        .map(r -> surface.internal(Math.max(r, surface.k1())))
        .toArray();
  }

  private PatchSlopes slopes(OpticalConstants mixed, double[][] byInternal) {
    double[] byK = new double[Bands.COUNT];
    double[] byS = new double[Bands.COUNT];
    if (patch.over().isEmpty()) {
      opaqueSlopes(mixed, byK, byS);
    } else {
      filmSlopes(mixed, byK, byS);
    }
    return new PatchSlopes(mixed, byInternal, byK, byS);
  }

  /** ∂R/∂K and ∂R/∂S of opaque paint in every band, by dR/dq = −2R²/(1 − R²). */
  private static void opaqueSlopes(OpticalConstants mixed, double[] byK, double[] byS) {
    double[] r = mixed.opaque();
    for (int band = 0; band < Bands.COUNT; band++) {
      double byQ = -2 * r[band] * r[band] / ((1 - r[band]) * (1 + r[band]));
      byK[band] = byQ / mixed.s(band);
      byS[band] = -byQ * mixed.k(band) / (mixed.s(band) * mixed.s(band));
    }
  }

  /** ∂R/∂K and ∂R/∂S of a film in every band, by differences. */
  private void filmSlopes(OpticalConstants mixed, double[] byK, double[] byS) {
    double[] base = base();
    double x = thickness();
    for (int band = 0; band < Bands.COUNT; band++) {
      double k = mixed.k(band);
      double s = mixed.s(band);
      double step = 1e-5 * (k + s);
      double lowK = Math.max(0, k - step);
      double lowS = Math.max(0, s - step);
      byK[band] =
          (new Film(k + step, s, x).reflectanceOver(base[band])
                  - new Film(lowK, s, x).reflectanceOver(base[band]))
              / (k + step - lowK);
      byS[band] =
          (new Film(k, s + step, x).reflectanceOver(base[band])
                  - new Film(k, lowS, x).reflectanceOver(base[band]))
              / (s + step - lowS);
    }
  }

  /** A patch linearised. */
  static final class Linear {
    private final List<double[][]> jacobians;
    private final double[][] noise;

    private Linear(List<double[][]> jacobians, double[][] noise) {
      this.jacobians = jacobians;
      this.noise = noise;
    }

    /** Derivatives by what it depends on, in the order of its unknowns. */
    List<double[][]> jacobians() {
      return jacobians;
    }

    /** The covariance of its error, lower triangle. */
    double[][] noise() {
      return noise;
    }
  }
}
