package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A mix that is known, once more in whole drops, for another amount: in a small pot, a trace of a
 * strong paint can't be less than a drop, and the colour is another.
 */
public final class WholeDrops {
  /** What rounding may change the colour by, ΔE00: hardly anyone sees that. */
  public static final double NOT_SEEN = 0.5;

  /** No pot of a modeller is larger, ml. */
  private static final double LARGEST_POT = 100;

  private static final int STEPS = 2000;

  private final Mix ratio;
  private final MixPredictor predictor;

  /**
   * Whole drops of a mix.
   *
   * @param ratio the mix; its parts need not be whole
   * @param predictor tells what rounding does to the colour
   */
  public WholeDrops(Mix ratio, MixPredictor predictor) {
    this.ratio = ratio;
    this.predictor = predictor;
  }

  /**
   * Whole drops for at least so much, whose colour is that of the ratio within {@link #NOT_SEEN};
   * empty when so little can't be mixed true.
   *
   * @param millilitres the least volume, above 0 to 10,000
   */
  public Optional<Mix> enoughFor(double millilitres) {
    Mix whole = ratio.enoughFor(millilitres);
    return offBy(whole) <= NOT_SEEN ? Optional.of(whole) : Optional.empty();
  }

  /** How far the colour of whole drops is from that of the ratio, ΔE00. */
  public double offBy(Mix whole) {
    return Ciede2000.deltaE(colour(ratio), colour(whole));
  }

  private Lab colour(Mix mix) {
    return predictor.viewing().lab(predictor.constants(mix).opaque());
  }

  /**
   * The smallest amount from the wanted one on that can be mixed true, ml; empty when not even a
   * very large pot can.
   *
   * @param millilitres the wanted volume, above 0 to 10,000
   */
  public OptionalDouble leastMillilitres(double millilitres) {
    Require.positive("millilitres", millilitres);
    double drop = ratio.parts().get(0).paint().dropMillilitres() / 2;
    for (int step = 0; step < STEPS; step++) {
      double volume = millilitres + step * drop;
      if (volume > LARGEST_POT) {
        break;
      }
      Optional<Mix> whole = enoughFor(volume);
      if (whole.isPresent()) {
        return OptionalDouble.of(whole.get().millilitres());
      }
    }
    return OptionalDouble.empty();
  }
}
