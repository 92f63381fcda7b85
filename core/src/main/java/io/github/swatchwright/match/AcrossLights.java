package io.github.swatchwright.match;

import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;

/**
 * How well a colour keeps matching another when the light changes: the worst of {@link #LIGHTS}.
 *
 * @param worstDeltaE00 the largest ΔE00 under any of them
 * @param light the light under which it is
 */
public record AcrossLights(double worstDeltaE00, Illuminant light) {

  /** Daylight, tungsten and a white LED. */
  public static final List<Illuminant> LIGHTS =
      List.of(Illuminant.D65, Illuminant.A, Illuminant.LED_B3);

  private static final List<TristimulusWeights> WEIGHTS =
      LIGHTS.stream().map(light -> TristimulusWeights.of(light, Observer.CIE_1931)).toList();

  /** Compares two measured reflectances. */
  public static AcrossLights of(Reflectance target, Reflectance mix) {
    AcrossLights worst = new AcrossLights(-1, LIGHTS.get(0));
    for (TristimulusWeights weights : WEIGHTS) {
      double deltaE00 = Ciede2000.deltaE(weights.xyz(target).toLab(), weights.xyz(mix).toLab());
      if (deltaE00 > worst.worstDeltaE00) {
        worst = new AcrossLights(deltaE00, weights.illuminant());
      }
    }
    return worst;
  }
}
