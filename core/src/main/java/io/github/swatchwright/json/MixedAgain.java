package io.github.swatchwright.json;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Prediction;

/**
 * A mix of a notebook's entry, mixed again.
 *
 * @param then as it was found
 * @param mix the same in whole drops, for the wanted volume
 * @param prediction its colour at full hiding, with today's paints
 */
public record MixedAgain(FoundMix then, Mix mix, Prediction prediction) {
  /** Thinner to stir in, ml. */
  public double thinnerMillilitres() {
    return mix.millilitres() * then.thinner();
  }

  /**
   * Whether the colour of then is one to compare with: that of a coat depends on what is below, and
   * colours under another light aren't compared.
   */
  public boolean isComparable() {
    return then.kind() != FoundMix.Kind.STEP
        && then.lab().filter(lab -> lab.white().equals(prediction.lab().white())).isPresent();
  }
}
