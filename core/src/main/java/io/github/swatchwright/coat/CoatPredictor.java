package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.ShelfOptics;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Predicts coats over a base, one after another, under one light: Kubelka's films in internal
 * reflectance, partial coats by area, and one surface at the top. Immutable.
 *
 * <p>The spread is carried to first order from the paints' own covariances, the base's error, and
 * the scatter of a coat's thickness.
 */
public final class CoatPredictor {
  /** Relative scatter of one coat's thickness, as sd (common practice, weak: a setting). */
  public static final double USUAL_COAT_SCATTER = 0.15;

  private final ShelfOptics optics;
  private final TristimulusWeights light;
  private final double coatScatter;
  private final Optional<Finish> finish;
  private final Swatch darkest;
  private final Swatch lightest;

  private CoatPredictor(
      ShelfOptics optics,
      TristimulusWeights light,
      double coatScatter,
      Optional<Finish> finish,
      Swatch darkest,
      Swatch lightest) {
    this.optics = optics;
    this.light = light;
    this.coatScatter = coatScatter;
    this.finish = finish;
    this.darkest = darkest;
    this.lightest = lightest;
  }

  /** A predictor with the usual scatter, each paint in its own finish, over a black-white card. */
  public static CoatPredictor of(ShelfOptics optics, TristimulusWeights light) {
    return new CoatPredictor(
        optics,
        light,
        USUAL_COAT_SCATTER,
        Optional.empty(),
        grey(HidingPower.BLACK),
        grey(HidingPower.WHITE));
  }

  private static Swatch grey(double reflectance) {
    return new Swatch.OfLab(TristimulusWeights.D65.xyz(Reflectance.constant(reflectance)).toLab());
  }

  /** This predictor with another relative scatter of a coat's thickness: sd, 0 to 1. */
  public CoatPredictor withCoatScatter(double sd) {
    Require.within("coatScatter", sd, 0, 1);
    return new CoatPredictor(optics, light, sd, finish, darkest, lightest);
  }

  /** This predictor looking at everything in one finish, as under a varnish. */
  public CoatPredictor withFinish(Finish wanted) {
    return new CoatPredictor(optics, light, coatScatter, Optional.of(wanted), darkest, lightest);
  }

  /** This predictor with other ends of the pre-highlight. */
  public CoatPredictor withPreHighlight(Swatch newDarkest, Swatch newLightest) {
    return new CoatPredictor(optics, light, coatScatter, finish, newDarkest, newLightest);
  }

  /** The shelf that it predicts with. */
  public ShelfOptics optics() {
    return optics;
  }

  /** The light that it predicts for. */
  public TristimulusWeights light() {
    return light;
  }

  /** The base before anything is painted. */
  public Prediction predict(Base base) {
    return predictions(base, List.of()).get(0);
  }

  /**
   * How things look after each coat.
   *
   * @param base what lies below
   * @param coats lowest first
   * @throws IllegalArgumentException when a paint isn't on the shelf or can't be computed with
   */
  public List<CoatStep> predict(Base base, List<Coat> coats) {
    List<Prediction> predictions = predictions(base, coats);
    List<Lab> overDarkest = colours(new Base.OfSwatch(darkest), coats);
    List<Lab> overLightest = colours(new Base.OfSwatch(lightest), coats);
    double[] contrastRatios = contrastRatios(coats);
    List<CoatStep> steps = new ArrayList<>();
    for (int i = 0; i < coats.size(); i++) {
      steps.add(
          new CoatStep(
              coats.get(i),
              predictions.get(i + 1),
              contrastRatios[i],
              overDarkest.get(i + 1),
              overLightest.get(i + 1),
              coatsToHide(coats.get(i))));
    }
    return steps;
  }

  /** Coats of a paint, thinned as stated, at which it hides; not whole. */
  public double coatsToHide(Coat coat) {
    OpticalConstants constants = CoatStack.of(optics, coat.mix()).constants(coat.mix());
    Viewing viewing = new Viewing(light, optics.surface());
    return new HidingPower(viewing).coatsToHide(constants) * (1 + coat.thinner());
  }

  /** The colours alone, of the base and after each coat. */
  List<Lab> colours(Base base, List<Coat> coats) {
    CoatStack stack = CoatStack.of(optics, base, coats);
    List<Lab> colours = new ArrayList<>();
    List<PaintedArea> areas = stack.areas();
    for (int i = 0; i < areas.size(); i++) {
      colours.add(light.xyz(areas.get(i).seen(surface(base, coats, i))).toLab());
    }
    return colours;
  }

  private double[] contrastRatios(List<Coat> coats) {
    double[] overBlack = seenY(coats, HidingPower.BLACK);
    double[] overWhite = seenY(coats, HidingPower.WHITE);
    double[] ratios = new double[coats.size()];
    Arrays.setAll(ratios, i -> overBlack[i + 1] / overWhite[i + 1]);
    return ratios;
  }

  private double[] seenY(List<Coat> coats, double card) {
    double[] internal = new double[Bands.COUNT];
    Arrays.fill(internal, optics.surface().internal(Math.max(card, optics.surface().k1())));
    return CoatStack.over(optics, internal, coats).areas().stream()
        .mapToDouble(area -> light.xyz(area.seen(optics.surface()::seen)).y())
        .toArray();
  }

  private TopSurface surface(Base base, List<Coat> coats, int painted) {
    Finish own = painted == 0 ? base.finish() : coats.get(painted - 1).finish();
    return new TopSurface(optics.surface(), own, finish.orElse(own));
  }

  private List<Prediction> predictions(Base base, List<Coat> coats) {
    CoatStack stack = CoatStack.of(optics, base, coats);
    List<double[]> seen = seen(stack, base, coats);
    List<double[][]> covariances = new ArrayList<>();
    List<double[][]> slopes = new ArrayList<>();
    Viewing bare = new Viewing(light, Saunderson.NONE);
    for (double[] reflectance : seen) {
      slopes.add(bare.labSlope(reflectance));
      covariances.add(new double[3][3]);
    }
    for (CoatStack.Disturbance cause : stack.disturbances(coatScatter)) {
      List<List<double[]>> moved = new ArrayList<>();
      for (CoatStack variant : cause.variants()) {
        moved.add(seen(variant, base, coats));
      }
      for (int step = 0; step < seen.size(); step++) {
        cause.addTo(covariances.get(step), slopes.get(step), seen.get(step), at(moved, step));
      }
    }
    List<Prediction> predictions = new ArrayList<>();
    for (int step = 0; step < seen.size(); step++) {
      Lab lab = light.xyz(seen.get(step)).toLab();
      predictions.add(
          new Prediction(
              Reflectance.of(seen.get(step)), ColourSpread.of(lab, covariances.get(step))));
    }
    return predictions;
  }

  private static List<double[]> at(List<List<double[]>> moved, int step) {
    return moved.stream().map(variant -> variant.get(step)).toList();
  }

  private List<double[]> seen(CoatStack stack, Base base, List<Coat> coats) {
    List<PaintedArea> areas = stack.areas();
    List<double[]> seen = new ArrayList<>();
    for (int i = 0; i < areas.size(); i++) {
      seen.add(areas.get(i).seen(surface(base, coats, i)));
    }
    return seen;
  }
}
