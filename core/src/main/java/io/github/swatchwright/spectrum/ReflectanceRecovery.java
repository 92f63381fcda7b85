package io.github.swatchwright.spectrum;

import io.github.swatchwright.argument.BadArgumentException;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import java.util.Arrays;

/**
 * From a colour to a reflectance that has it: of all of them, the one whose logit of internal
 * reflectance, z = ln(Ri / (1 − Ri)), has the least sum of squared steps Σ(zᵢ₊₁ − zᵢ)². This is
 * Burns's least-slope-squared reconstruction in atanh space ("Numerical methods for smoothest
 * reflectance reconstruction", Color Research and Application 45, 2020), with logit = 2·atanh, and
 * with the paint's surface between the inside and the eye.
 *
 * <p><b>What it can't do.</b> The recovered spectrum has the colour under the one light that it was
 * recovered for; it says nothing true about how the real surface looks under another. Infinitely
 * many reflectances share a colour; this is a plausible one of paint, no more. Do not draw
 * conclusions on metamerism from it.
 *
 * <p><b>Limits.</b> A colour outside the object-colour solid, or darker than the surface's own
 * reflection lets anything be, has no reflectance. Such a colour gives the one whose colour is
 * nearest in CIELAB (ΔE*ab, within about 0.1), and says so by {@link
 * RecoveredReflectance#attainable}. The solid's own skin counts as outside where the steps of z get
 * too large to compute; black and white are the exception, and come out as constants of 1e-10 and 1
 * − 1e-10.
 *
 * <p>Immutable and safe to share between threads.
 */
public final class ReflectanceRecovery {
  /**
   * The largest ΔE*ab between the colour asked for and the one attained that still counts as it.
   */
  public static final double ATTAINED_WITHIN = 1e-5;

  /** How far every colour is drawn towards mid grey: keeps z finite for black and white. */
  private static final double DRAWN_IN = 2e-10;

  /** Beyond ±30, 1 − Ri has fewer than three digits left. */
  private static final double LARGEST_LOGIT = 30;

  private final TristimulusWeights weights;
  private final SurfaceMap surface;
  private final double[][] shares;

  /**
   * Recovery under a light and through a surface.
   *
   * @param weights of the light and observer that colours are meant for
   * @param surface {@link SurfaceMap#NONE} to recover the reflectance seen
   */
  public ReflectanceRecovery(TristimulusWeights weights, SurfaceMap surface) {
    this.weights = weights;
    this.surface = surface;
    WhitePoint white = weights.whitePoint();
    shares = new double[][] {weights.x(), weights.y(), weights.z()};
    for (int band = 0; band < Bands.COUNT; band++) {
      shares[0][band] /= white.xn();
      shares[1][band] /= white.yn();
      shares[2][band] /= white.zn();
    }
  }

  /**
   * The smoothest reflectance of a colour.
   *
   * @throws IllegalArgumentException when the colour is relative to another white than the weights'
   */
  public RecoveredReflectance recover(Lab colour) {
    return recover(colour.toXyz());
  }

  /**
   * The smoothest reflectance of a colour.
   *
   * @throws IllegalArgumentException when the colour is relative to another white than the weights'
   */
  public RecoveredReflectance recover(Xyz colour) {
    WhitePoint white = weights.whitePoint();
    if (!colour.white().equals(white)) {
      throw new BadArgumentException(
          "colour", "is relative to " + colour.white() + ", must be relative to " + white);
    }
    double floor = surface.seen(0);
    double ceiling = surface.seen(1);
    double[] target = {
      drawIn(colour.x() / white.xn(), floor, ceiling),
      drawIn(colour.y() / white.yn(), floor, ceiling),
      drawIn(colour.z() / white.zn(), floor, ceiling)
    };
    boolean possible = true;
    for (double ratio : target) {
      possible &= ratio > floor && ratio < ceiling;
    }
    double[] z = new double[Bands.COUNT];
    LogitSpectrum spectrum = new LogitSpectrum(shares, surface);
    double[] lambda = new double[3];
    Arrays.fill(z, levelOf(target[1]));
    if (possible && isSolved(new LeastSlope(spectrum, target, floor, z, lambda), z)) {
      return result(colour, z);
    }
    double[] nearest = new double[Bands.COUNT];
    lambda = new NearestColour(spectrum, colour.toLab(), nearest).search();
    z = nearest.clone();
    if (possible && isSolved(new LeastSlope(spectrum, target, floor, z, lambda), z)) {
      return result(colour, z);
    }
    return result(colour, nearest);
  }

  private static double drawIn(double ratio, double floor, double ceiling) {
    return ratio + DRAWN_IN * ((floor + ceiling) / 2 - ratio);
  }

  private static boolean isSolved(LeastSlope search, double[] z) {
    return search.search() && largest(z) <= LARGEST_LOGIT;
  }

  private static double largest(double[] z) {
    double largest = 0;
    for (double value : z) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }

  /** The z of a grey that is seen as this, by halving. */
  private double levelOf(double seen) {
    double below = -LARGEST_LOGIT;
    double above = LARGEST_LOGIT;
    for (int halving = 0; halving < 40; halving++) {
      double middle = (below + above) / 2;
      if (surface.seen(LogitSpectrum.internal(middle)) < seen) {
        below = middle;
      } else {
        above = middle;
      }
    }
    return (below + above) / 2;
  }

  private RecoveredReflectance result(Xyz wanted, double[] z) {
    double[] internal = new double[Bands.COUNT];
    double[] seen = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double held = Math.max(-LARGEST_LOGIT, Math.min(LARGEST_LOGIT, z[band]));
      internal[band] = LogitSpectrum.internal(held);
      seen[band] = surface.seen(internal[band]);
    }
    Xyz colour = weights.xyz(seen);
    Lab attained = colour.toLab();
    Lab asked = wanted.toLab();
    double miss =
        Math.hypot(
            attained.l() - asked.l(),
            Math.hypot(attained.a() - asked.a(), attained.b() - asked.b()));
    return new RecoveredReflectance(
        Reflectance.of(seen), Reflectance.of(internal), colour, miss <= ATTAINED_WITHIN);
  }

  @Override
  public String toString() {
    return "ReflectanceRecovery[" + weights + ", " + surface + "]";
  }
}
