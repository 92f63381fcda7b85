package io.github.swatchwright.estimate;

import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.RecoveredReflectance;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.IdentityHashMap;

/**
 * The smoothest reflectances of stated colours, each recovered once: the choice of a shelf's
 * surface asks for them first, and the estimate of each paint again. For one thread.
 */
final class Recoveries {
  private final IdentityHashMap<Swatch, Recovered> latest = new IdentityHashMap<>();
  private ReflectanceRecovery recovery =
      new ReflectanceRecovery(TristimulusWeights.D65, Saunderson.NONE);
  private Saunderson surface = Saunderson.NONE;

  /**
   * What was recovered of a swatch.
   *
   * @param k1 of the surface
   * @param k2 of the surface
   * @param reflectance the smoothest
   */
  private record Recovered(double k1, double k2, RecoveredReflectance reflectance) {
    boolean isUnder(Saunderson surface) {
      return k1 == surface.k1() && k2 == surface.k2();
    }
  }

  /** The smoothest reflectance that has a swatch's colour under D65 through a surface. */
  RecoveredReflectance of(Swatch swatch, Saunderson through) {
    Recovered known = latest.get(swatch);
    if (known == null || !known.isUnder(through)) {
      if (surface.k1() != through.k1() || surface.k2() != through.k2()) {
        surface = through;
        recovery = new ReflectanceRecovery(TristimulusWeights.D65, through);
      }
      known = new Recovered(through.k1(), through.k2(), recovery.recover(swatch.lab()));
      latest.put(swatch, known);
    }
    return known.reflectance;
  }
}
