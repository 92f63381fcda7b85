package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.ColourSpread;
import java.util.Locale;

/**
 * Colours read beside a patch of known colour in the same photo. How far off the known patch is
 * seen tells how far off its neighbours are: the light, the exposure and the camera err alike on
 * like colours. So of two patches of one photo the difference is far surer than either alone, the
 * more so the nearer they are in colour.
 *
 * <p>Gaussian conditioning: the errors of both have a covariance c (see {@code ErrorModel}); the
 * known patch's error e is observed with its own variance v. A colour is moved by −(c/v)·e, and its
 * variance loses c²/v. A patch of quite another colour so changes next to nothing.
 */
final class BesideCorrection implements PhotoCorrection {
  /** A patch that is more standard deviations off than this must be another one. */
  private static final double MOST_DEVIATIONS = 5;

  /** Photos have tails: no deviation of a grey counts as less than this here. */
  private static final double LEAST_DEVIATION = 3;

  private final PhotoCorrection base;
  private final ErrorModel errors;
  private final Lab known;
  private final Lab seen;
  private final double exposure;
  private final double[] patchDeviations;
  private final double[] patchShareable;

  private BesideCorrection(PhotoCorrection base, KnownPatch patch) {
    this.base = base;
    known = patch.known();
    errors = ErrorModel.of(base);
    Xyz light = base.apply(patch.sample().mean()).toXyz();
    exposure = base.knowsLightness() ? 1 : known.toXyz().y() / light.y();
    seen = exposed(patch.sample().mean());
    patchDeviations = errors.deviations(seen, patch.sample().shares().isCrushed());
    for (int i = 0; i < 3; i++) {
      patchDeviations[i] = Math.hypot(patchDeviations[i], patch.error());
    }
    patchShareable = errors.shareable(seen);
  }

  /**
   * The correction by a known patch.
   *
   * @param base what else in the photo tells its light; a known patch beside it makes up for its
   *     errors
   * @param patch the known patch
   * @throws IllegalArgumentException when the patch is seen so far off that it must be another one
   */
  static BesideCorrection of(PhotoCorrection base, KnownPatch patch) {
    BesideCorrection beside = new BesideCorrection(base, patch);
    beside.requirePlausible(patch);
    return beside;
  }

  private void requirePlausible(KnownPatch patch) {
    double[] off = minus(seen, known);
    double least = LEAST_DEVIATION * ErrorModel.scale(seen);
    for (int i = 0; i < 3; i++) {
      if (Math.abs(off[i]) > MOST_DEVIATIONS * Math.hypot(patchDeviations[i], least)) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "the patch %s is seen as %s, but should be %s: is it the right place?",
                patch.sample().region().toText(),
                seen.toText(),
                known.toText()));
      }
    }
  }

  private Lab exposed(LinearRgb light) {
    Xyz xyz = base.apply(light).toXyz();
    return new Xyz(exposure * xyz.x(), exposure * xyz.y(), exposure * xyz.z(), WhitePoint.D65)
        .toLab();
  }

  private static double[] minus(Lab one, Lab other) {
    return new double[] {one.l() - other.l(), one.a() - other.a(), one.b() - other.b()};
  }

  /** Covariances of the errors of a colour's and the patch's L*, a* and b*. */
  private double[] covariances(Lab colour, Lab patch) {
    double correlation = errors.correlation(Ciede2000.deltaE(colour, patch));
    double[] shareable = errors.shareable(colour);
    double[] covariances = new double[3];
    for (int i = 0; i < 3; i++) {
      covariances[i] = correlation * shareable[i] * patchShareable[i];
    }
    return covariances;
  }

  @Override
  public LinearRgb apply(LinearRgb light) {
    Lab colour = exposed(light);
    double[] c = covariances(colour, seen);
    double[] off = minus(seen, known);
    for (int i = 0; i < 3; i++) {
      off[i] *= c[i] / (patchDeviations[i] * patchDeviations[i]);
    }
    return LinearRgb.ofXyz(
        Lab.ofD65(colour.l() - off[0], colour.a() - off[1], colour.b() - off[2]).toXyz());
  }

  @Override
  public ColourSpread spread(Lab corrected, boolean crushed) {
    double[] sd = errors.deviations(corrected, crushed);
    double[] c = covariances(corrected, known);
    double[][] covariance = new double[3][3];
    for (int i = 0; i < 3; i++) {
      double told = c[i] / patchDeviations[i];
      covariance[i][i] = sd[i] * sd[i] - told * told;
    }
    return ColourSpread.of(corrected, covariance);
  }

  ErrorModel errors() {
    return errors;
  }

  @Override
  public boolean knowsLightness() {
    return true;
  }

  @Override
  public String reference() {
    return base.knowsLightness() ? base.reference() + ", and a known patch" : "known patch";
  }
}
