package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.Dependence;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Predicts mixes of a shelf's paints under one light, with the spread to expect.
 *
 * <p>The spread is carried to first order from three sources: the paints' covariance, the scatter
 * of drops (each drop's volume independently), and nothing else. It is as honest as they are.
 */
public final class MixPredictor {
  /** Relative scatter of a drop's volume, as sd, unless another is known. */
  public static final double USUAL_DROP_SCATTER = 0.08;

  private final ShelfOptics optics;
  private final Viewing viewing;
  private final double dropScatter;

  private MixPredictor(ShelfOptics optics, Viewing viewing, double dropScatter) {
    this.optics = optics;
    this.viewing = viewing;
    this.dropScatter = dropScatter;
  }

  /** A predictor with the usual scatter of drops. */
  public static MixPredictor of(ShelfOptics optics, TristimulusWeights light) {
    return new MixPredictor(optics, new Viewing(light, optics.surface()), USUAL_DROP_SCATTER);
  }

  /** This predictor with another relative scatter of a drop's volume: sd, 0 to 1. */
  public MixPredictor withDropScatter(double sd) {
    return new MixPredictor(optics, viewing, Require.within("dropScatter", sd, 0, 1));
  }

  /** The light and surface that it predicts for. */
  public Viewing viewing() {
    return viewing;
  }

  /** K(λ) and S(λ) of a mix. */
  public OpticalConstants constants(Mix mix) {
    List<Mix.Part> parts = mix.parts();
    return OpticalConstants.mix(
        parts.stream().map(part -> of(part).constants()).toArray(OpticalConstants[]::new),
        parts.stream().mapToDouble(Mix.Part::millilitres).toArray());
  }

  private PaintOptics of(Mix.Part part) {
    return optics.of(part.paint().name());
  }

  /** K(λ) and S(λ) of a pot. */
  public OpticalConstants constants(Pot pot) {
    return constants(pot.contents());
  }

  /**
   * What the mix will look like at full hiding.
   *
   * @throws IllegalArgumentException when a paint isn't on the shelf or can't be computed with
   */
  public Prediction predict(Mix mix) {
    return predict(mix, amountErrors(mix.parts(), millilitres(mix)));
  }

  /**
   * What the recipe will look like at full hiding. Drops of a pot scatter like a paint's; what went
   * into the pot has scattered once for all of it, the less the more drops there were.
   *
   * @throws IllegalArgumentException when a paint isn't on the shelf or can't be computed with
   */
  public Prediction predict(Recipe recipe) {
    Mix mix = recipe.toMix();
    double whole = millilitres(mix);
    List<AmountError> errors = new ArrayList<>();
    for (Recipe.Drops some : recipe.drops()) {
      errors.addAll(amountErrors(List.of(new Mix.Part(some.paint(), some.count())), whole));
    }
    for (Recipe.PotDrops some : recipe.pots()) {
      OpticalConstants inside = constants(some.pot());
      double drop = some.pot().dropMillilitres();
      errors.add(new AmountError(inside, sdOfShare(drop, some.count(), whole)));
      double share = some.count() * drop / whole;
      for (AmountError error :
          amountErrors(some.pot().contents().parts(), some.pot().millilitres())) {
        errors.add(new AmountError(error.more, error.sdOfShare * share, Optional.of(inside)));
      }
    }
    return predict(mix, errors);
  }

  /**
   * A share of the mix that isn't known exactly.
   *
   * @param more what there may be more of
   * @param sdOfShare how much more, as sd of its share of the volume
   * @param less what there is less of in return; empty for the whole mix
   */
  private record AmountError(
      OpticalConstants more, double sdOfShare, Optional<OpticalConstants> less) {
    AmountError(OpticalConstants more, double sdOfShare) {
      this(more, sdOfShare, Optional.empty());
    }
  }

  private List<AmountError> amountErrors(List<Mix.Part> parts, double whole) {
    return parts.stream()
        .map(
            part ->
                new AmountError(
                    of(part).constants(),
                    sdOfShare(part.paint().dropMillilitres(), part.drops(), whole)))
        .toList();
  }

  private double sdOfShare(double dropMillilitres, double drops, double whole) {
    return dropScatter * dropMillilitres * Math.sqrt(drops) / whole;
  }

  private static double millilitres(Mix mix) {
    return mix.parts().stream().mapToDouble(Mix.Part::millilitres).sum();
  }

  /**
   * A bound of what may be expected of mixes of these paints, for choosing among thousands; empty
   * when it would take longer than predictions do.
   *
   * @throws IllegalArgumentException when a paint isn't on the shelf or can't be computed with
   */
  public Optional<LeastExpected> leastExpected(List<PaintOptics> paints) {
    return optics
        .leastSpread()
        .map(spread -> new LeastExpected(viewing, dropScatter, spread, paints));
  }

  private Prediction predict(Mix mix, List<AmountError> errors) {
    OpticalConstants constants = constants(mix);
    double[] internal = constants.opaque();
    double[][] labByQ = labByQ(internal);
    double[][] covariance = optics.covarianceOf(jacobians(mix, constants, labByQ));
    errors.forEach(error -> addAmountError(covariance, labByQ, constants, error));
    Lab lab = viewing.lab(internal);
    optics.otherSurface().ifPresent(other -> addSurfaceError(covariance, lab, mix, other));
    ColourSpread spread = ColourSpread.of(lab, covariance);
    return new Prediction(viewing.seen(internal), spread);
  }

  /** Adds how far off the mix would be if the swatches had been seen through another surface. */
  private void addSurfaceError(double[][] covariance, Lab lab, Mix mix, Saunderson surface) {
    OpticalConstants other =
        OpticalConstants.mix(
            mix.parts().stream()
                .map(part -> optics.underOtherSurface(part.paint().name()))
                .toArray(OpticalConstants[]::new),
            mix.parts().stream().mapToDouble(Mix.Part::millilitres).toArray());
    Lab seen = new Viewing(viewing.weights(), surface).lab(other.opaque());
    addSquare(
        covariance, new double[] {seen.l() - lab.l(), seen.a() - lab.a(), seen.b() - lab.b()});
  }

  static void addSquare(double[][] covariance, double[] shift) {
    for (int i = 0; i < shift.length; i++) {
      for (int j = 0; j < shift.length; j++) {
        covariance[i][j] += shift[i] * shift[j];
      }
    }
  }

  /** How the colour of the mix depends on its paints: as values, L*, a* and b*. */
  public Dependence dependence(Mix mix) {
    OpticalConstants constants = constants(mix);
    return optics.dependence(jacobians(mix, constants, labByQ(constants.opaque())));
  }

  private Map<String, double[][]> jacobians(
      Mix mix, OpticalConstants constants, double[][] labByQ) {
    Map<String, double[][]> jacobians = new LinkedHashMap<>();
    double volume = millilitres(mix);
    for (Mix.Part part : mix.parts()) {
      jacobians.put(
          part.paint().name(), byPaint(labByQ, constants, of(part), part.millilitres() / volume));
    }
    return jacobians;
  }

  /** ∂Lab/∂q = ∂Lab/∂R · dR/dq, with dR/dq = −2R²/(1 − R²). */
  private double[][] labByQ(double[] internal) {
    double[][] slope = viewing.labSlope(internal);
    for (int band = 0; band < Bands.COUNT; band++) {
      double r = internal[band];
      double byQ = -2 * r * r / ((1 - r) * (1 + r));
      for (double[] row : slope) {
        row[band] *= byQ;
      }
    }
    return slope;
  }

  /**
   * Derivatives of the colour by one paint's unknowns: with q = K/S of the mix, ∂q/∂z = −c·K(1 +
   * R)/S and ∂q/∂u = c(K − q·Sₚ)/S, where K, Sₚ and R are the paint's own and S the mix's.
   */
  private static double[][] byPaint(
      double[][] labByQ, OpticalConstants mixed, PaintOptics paint, double share) {
    OpticalConstants own = paint.constants();
    double[] masstone = paint.masstone();
    double[][] jacobian = new double[3][2 * Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double q = mixed.k(band) / mixed.s(band);
      double byZ = -share * own.k(band) * (1 + masstone[band]) / mixed.s(band);
      double byU = share * (own.k(band) - q * own.s(band)) / mixed.s(band);
      for (int row = 0; row < 3; row++) {
        jacobian[row][band] = labByQ[row][band] * byZ;
        jacobian[row][Bands.COUNT + band] = labByQ[row][band] * byU;
      }
    }
    return jacobian;
  }

  /**
   * Adds what an error in one share does: ∂q/∂c = (K − q·S)/S of the mix, where K and S are of what
   * there is more of, less those of what it takes the place of.
   */
  private static void addAmountError(
      double[][] covariance, double[][] labByQ, OpticalConstants mixed, AmountError error) {
    double[] shift = new double[3];
    OpticalConstants less = error.less.orElse(mixed);
    for (int band = 0; band < Bands.COUNT; band++) {
      double q = mixed.k(band) / mixed.s(band);
      double k = error.more.k(band) - less.k(band);
      double s = error.more.s(band) - less.s(band);
      double byShare = (k - q * s) / mixed.s(band);
      for (int row = 0; row < 3; row++) {
        shift[row] += labByQ[row][band] * byShare * error.sdOfShare;
      }
    }
    addSquare(covariance, shift);
  }
}
