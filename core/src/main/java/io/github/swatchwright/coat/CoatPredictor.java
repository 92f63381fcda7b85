package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Predicts coats over a base, one after another, under one light: Kubelka's films in internal
 * reflectance, partial coats by area, and one surface at the top. Immutable.
 *
 * <p>The spread is carried to first order from the covariance of all paints together, the base's
 * error, the scatter of a coat's thickness, and a surface that the shelf doesn't state.
 */
public final class CoatPredictor {
  /** Relative scatter of one coat's thickness, as sd (common practice, weak: a setting). */
  public static final double USUAL_COAT_SCATTER = 0.15;

  private final ShelfOptics optics;
  private final TristimulusWeights light;
  private final Setting setting;

  /** What may be set, with a value that is usual. */
  private record Setting(
      double coatScatter, Optional<Finish> finish, PreHighlight ends, double lightening) {}

  private CoatPredictor(ShelfOptics optics, TristimulusWeights light, Setting setting) {
    this.optics = optics;
    this.light = light;
    this.setting = setting;
  }

  /** A predictor with the usual scatter, each paint in its own finish, over a black-white card. */
  public static CoatPredictor of(ShelfOptics optics, TristimulusWeights light) {
    Setting usual = new Setting(USUAL_COAT_SCATTER, Optional.empty(), PreHighlight.usual(), 0);
    return new CoatPredictor(optics, light, usual);
  }

  /** This predictor with another relative scatter of a coat's thickness: sd, 0 to 1. */
  public CoatPredictor withCoatScatter(double sd) {
    Require.within("coatScatter", sd, 0, 1);
    return with(new Setting(sd, setting.finish, setting.ends, setting.lightening));
  }

  /** This predictor looking at everything in one finish, as under a varnish. */
  public CoatPredictor withFinish(Finish wanted) {
    return with(
        new Setting(setting.coatScatter, Optional.of(wanted), setting.ends, setting.lightening));
  }

  /** This predictor with other ends of the pre-highlight. */
  public CoatPredictor withPreHighlight(PreHighlight ends) {
    return with(new Setting(setting.coatScatter, setting.finish, ends, setting.lightening));
  }

  /** This predictor with bases lightened by a share of white, 0 to 1: see the warning there. */
  public CoatPredictor withScaleLightening(double share) {
    Require.within("scaleLightening", share, 0, 1);
    return with(new Setting(setting.coatScatter, setting.finish, setting.ends, share));
  }

  private CoatPredictor with(Setting changed) {
    return new CoatPredictor(optics, light, changed);
  }

  /** The shelf that it predicts with. */
  ShelfOptics optics() {
    return optics;
  }

  /** The light that it predicts for. */
  TristimulusWeights light() {
    return light;
  }

  /** The ends of the pre-highlight that it looks at coats over. */
  PreHighlight preHighlight() {
    return setting.ends;
  }

  /** The share of white that bases are lightened by, 0 to 1. */
  double scaleLightening() {
    return setting.lightening;
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
    List<Lab> overDarkest = over(new Base.OfSwatch(setting.ends.darkest()), coats);
    List<Lab> overLightest = over(new Base.OfSwatch(setting.ends.lightest()), coats);
    double[] contrastRatios = contrastRatios(coats);
    List<PaintedArea> areas = CoatStack.of(optics, ground(base), coats).areas();
    List<CoatStep> steps = new ArrayList<>();
    for (int i = 0; i < coats.size(); i++) {
      steps.add(
          new CoatStep(
              coats.get(i),
              predictions.get(i + 1),
              contrastRatios[i],
              overDarkest.get(i + 1),
              overLightest.get(i + 1),
              coatsToHide(coats.get(i)),
              areas.get(i + 1).patches(surface(optics.surface(), base, coats, i + 1), light)));
    }
    return steps;
  }

  /**
   * What is seen at last, of the base when there are no coats.
   *
   * @param base what lies below
   * @param coats lowest first; may be empty
   * @throws IllegalArgumentException when a paint isn't on the shelf or can't be computed with
   */
  public Prediction last(Base base, List<Coat> coats) {
    List<Prediction> predictions = predictions(base, coats);
    return predictions.get(predictions.size() - 1);
  }

  /**
   * The colour with one more coat on top of others, without its spread: quick, for trying many.
   *
   * @param base what lies below
   * @param coats what is on it already, lowest first; may be empty
   */
  public Function<Coat, Lab> onTop(Base base, List<Coat> coats) {
    List<PaintedArea> areas = CoatStack.of(optics, ground(base), coats).areas();
    PaintedArea below = areas.get(areas.size() - 1);
    return coat -> {
      PaintedArea area = below.under(constants(coat), coat.thickness(), coat.coverage());
      return light.xyz(area.seen(surface(optics.surface(), base, List.of(coat), 1))).toLab();
    };
  }

  /** From internal reflectance below some coats to the colour that is seen at last. */
  Function<double[], Lab> over(List<Coat> coats) {
    Base matt = new Base.OfSwatch(setting.ends.lightest());
    TopSurface top = surface(optics.surface(), matt, coats, coats.size());
    return internal -> {
      Ground below = Ground.of(internal, optics.surface());
      List<PaintedArea> areas = CoatStack.of(optics, below, coats).areas();
      return light.xyz(areas.get(areas.size() - 1).seen(top)).toLab();
    };
  }

  /**
   * The contrast ratio of some coats together: Y over black ÷ Y over white (ISO 6504-3), 0 to 1.
   */
  double contrastRatio(List<Coat> coats) {
    double[] ratios = contrastRatios(coats);
    return ratios[ratios.length - 1];
  }

  private OpticalConstants constants(Coat coat) {
    Ground any = Ground.grey(1, optics.surface());
    return CoatStack.of(optics, any, List.of(coat)).constants(coat.mix());
  }

  /** Coats of a paint, thinned as stated, at which it hides; not whole, infinite for a varnish. */
  public double coatsToHide(Coat coat) {
    if (coat.isVarnish()) {
      return Double.POSITIVE_INFINITY;
    }
    Viewing viewing = new Viewing(light, optics.surface());
    return new HidingPower(viewing).coatsToHide(constants(coat)) * (1 + coat.thinner());
  }

  private Ground ground(Base base) {
    return ground(base, optics.surface());
  }

  private Ground ground(Base base, Saunderson surface) {
    return Ground.of(base, surface).lightened(setting.lightening);
  }

  /** The colours over one end of the pre-highlight, which is there and isn't lightened. */
  private List<Lab> over(Base.OfSwatch end, List<Coat> coats) {
    return colours(Ground.of(end, optics.surface()), end, coats);
  }

  private List<Lab> colours(Ground ground, Base base, List<Coat> coats) {
    return seen(CoatStack.of(optics, ground, coats), base, coats).stream()
        .map(reflectance -> light.xyz(reflectance).toLab())
        .toList();
  }

  private double[] contrastRatios(List<Coat> coats) {
    double[] overBlack = seenY(coats, HidingPower.BLACK);
    double[] overWhite = seenY(coats, HidingPower.WHITE);
    double[] ratios = new double[coats.size()];
    Arrays.setAll(ratios, i -> overBlack[i + 1] / overWhite[i + 1]);
    return ratios;
  }

  private double[] seenY(List<Coat> coats, double card) {
    return CoatStack.of(optics, Ground.grey(card, optics.surface()), coats).areas().stream()
        .mapToDouble(area -> light.xyz(area.seen(optics.surface()::seen)).y())
        .toArray();
  }

  private TopSurface surface(Saunderson shelfs, Base base, List<Coat> coats, int painted) {
    Finish own = base.finish();
    Finish top = own;
    for (Coat coat : coats.subList(0, painted)) {
      top = coat.finish();
      own = coat.isVarnish() ? own : top;
    }
    return new TopSurface(shelfs, own, setting.finish.orElse(top));
  }

  private List<Prediction> predictions(Base base, List<Coat> coats) {
    CoatStack stack = CoatStack.of(optics, ground(base), coats);
    List<double[]> seen = seen(stack, base, coats);
    List<double[][]> covariances = new ArrayList<>();
    List<double[][]> slopes = new ArrayList<>();
    Viewing bare = new Viewing(light, Saunderson.NONE);
    for (double[] reflectance : seen) {
      slopes.add(bare.labSlope(reflectance));
      covariances.add(new double[3][3]);
    }
    List<Disturbance> causes = stack.disturbances(setting.coatScatter);
    optics
        .otherSurface()
        .map(other -> stack.under(other, ground(base, other)))
        .ifPresent(under -> causes.add(new Disturbance.Shift(under, 1)));
    for (Disturbance cause : causes) {
      List<List<double[]>> moved = new ArrayList<>();
      for (CoatStack variant : cause.variants()) {
        moved.add(seen(variant, base, coats));
      }
      for (int step = 0; step < seen.size(); step++) {
        add(
            covariances.get(step),
            cause.covariance(slopes.get(step), seen.get(step), at(moved, step)));
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

  private static void add(double[][] sum, double[][] more) {
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        sum[i][j] += more[i][j];
      }
    }
  }

  private static List<double[]> at(List<List<double[]>> moved, int step) {
    return moved.stream().map(variant -> variant.get(step)).toList();
  }

  private List<double[]> seen(CoatStack stack, Base base, List<Coat> coats) {
    List<PaintedArea> areas = stack.areas();
    List<double[]> seen = new ArrayList<>();
    for (int i = 0; i < areas.size(); i++) {
      seen.add(areas.get(i).seen(surface(stack.surface(), base, coats, i)));
    }
    return seen;
  }
}
