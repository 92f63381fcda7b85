package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.coat.BaseColour.Obstacle;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Coats backwards: which base, so that under these washes and filters it ends in that colour.
 * Immutable.
 *
 * <pre>{@code
 * BaseFinder finder = BaseFinder.of(predictor);
 * BaseColour colour = finder.colour(end, coats);
 * List<BaseRecipe> recipes = finder.recipes(colour, coats, PaintChoice.ALL);
 * }</pre>
 *
 * <p>Of all reflectances with the base's colour the smoothest is taken. Paint has its own: {@link
 * #recipes} looks at each recipe under the coats as it is, and aims again where that differs.
 */
public final class BaseFinder {
  /** A base that ends nearer than this is found, ΔE00: a hundredth of what can be seen. */
  private static final double FOUND = 0.01;

  private final CoatPredictor predictor;

  private BaseFinder(CoatPredictor predictor) {
    this.predictor = predictor;
  }

  /**
   * A finder.
   *
   * @param predictor whose paints, light and finish it takes; bases aren't lightened for scale
   */
  public static BaseFinder of(CoatPredictor predictor) {
    return new BaseFinder(predictor.withScaleLightening(0));
  }

  /**
   * The colour that a base must have.
   *
   * @param end the colour that is wanted in the end
   * @param coats over the base, lowest first; at least one
   * @throws IllegalArgumentException when there are no coats, or a paint can't be computed with
   */
  public BaseColour colour(Swatch end, List<Coat> coats) {
    Lab wanted = end.labUnder(predictor.light());
    return colour(wanted, wanted, coats);
  }

  /** The colour of a base that ends at an aim, beside the wanted end. */
  BaseColour colour(Lab wanted, Lab aim, List<Coat> coats) {
    Require.within("number of coats", coats.size(), 1, Integer.MAX_VALUE);
    Function<double[], Lab> over = predictor.over(coats);
    Lab like = Lab.ofD65(aim.l(), aim.a(), aim.b());
    BaseSearch search = new BaseSearch(recovery(), over, aim);
    BaseSearch.Trial best =
        search.from(List.of(like, Lab.ofD65(50, 0, 0), Lab.ofD65(90, 0, 0), Lab.ofD65(25, 0, 0)));
    double contrastRatio = predictor.contrastRatio(coats);
    return new BaseColour(
        wanted,
        best.base(),
        best.reached(),
        Ciede2000.deltaE(best.reached(), wanted),
        contrastRatio,
        search.shown(best),
        contrastRatio >= HidingPower.HIDES
            ? Optional.of(Obstacle.HIDDEN)
            : obstacle(best.reached(), aim, over));
  }

  private static Optional<Obstacle> obstacle(Lab reached, Lab aim, Function<double[], Lab> over) {
    if (Ciede2000.deltaE(reached, aim) <= FOUND) {
      return Optional.empty();
    }
    if (aim.l() > over.apply(grey(1)).l()) {
      return Optional.of(Obstacle.TOO_LIGHT);
    }
    return Optional.of(aim.l() < over.apply(grey(0)).l() ? Obstacle.TOO_DARK : Obstacle.TOO_TINTED);
  }

  private static double[] grey(double internal) {
    double[] grey = new double[Bands.COUNT];
    Arrays.fill(grey, internal);
    return grey;
  }

  private ReflectanceRecovery recovery() {
    return new ReflectanceRecovery(TristimulusWeights.D65, predictor.optics().surface());
  }

  /** What is seen of a colour, of the smoothest reflectance, under some coats. */
  Lab under(Lab base, List<Coat> coats) {
    return predictor.over(coats).apply(recovery().recover(base).internal().toArray());
  }

  /** Whose paints, light and finish it takes. */
  CoatPredictor predictor() {
    return predictor;
  }

  /**
   * Paint for a base: the recipe that is expected to end nearest first, after those under which
   * fewer coats clash. Empty when the coats hide the base.
   *
   * @param colour the base's colour, as found for these coats
   * @param coats over the base, lowest first
   * @param choice the paints that may be mixed
   * @throws IllegalArgumentException when no paint is left to choose from
   */
  public List<BaseRecipe> recipes(BaseColour colour, List<Coat> coats, PaintChoice choice) {
    return colour.obstacle().filter(Obstacle.HIDDEN::equals).isPresent()
        ? List.of()
        : new BaseMatching(this, coats, choice).recipes(colour);
  }
}
