package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;

/**
 * The original's colour lightened for a model, as air between it and the eye would: R′ = (1 − s)·R
 * + s.
 *
 * <p>Disputed: some lighten by 7 to 33 % (1/32: 7 to 15, 1/48: 10 to 25, 1/72: 15 to 33), others
 * not at all. Common practice without a source, and off by default.
 */
public final class ScaleLightening {
  /** What has to be said wherever it is used. */
  public static final String DISPUTED =
      "Lightening colours for scale is disputed: 7 to 33 % are in use, and none.";

  private ScaleLightening() {}

  /** A reflectance with a share of white light added; both 0 to 1. */
  static double of(double reflectance, double share) {
    return (1 - share) * reflectance + share;
  }

  /**
   * A colour with a share of white light added, under one light.
   *
   * @param share 0 to 1
   */
  public static Lab of(Swatch colour, double share, TristimulusWeights light) {
    Require.within("scaleLightening", share, 0, 1);
    if (share == 0) {
      return colour.labUnder(light);
    }
    double[] seen = colour.reflectance().toArray();
    double[] lighter = Arrays.stream(seen).map(r -> of(r, share)).toArray();
    return light.xyz(Reflectance.of(lighter)).toLab();
  }
}
