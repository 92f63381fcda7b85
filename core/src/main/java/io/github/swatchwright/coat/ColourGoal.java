package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Swatch;

/** See {@link CoatGoal#ofColour}. */
record ColourGoal(Swatch colour, double share) implements CoatGoal {
  /** Refuses a share that isn't above 0, and more than 1. */
  ColourGoal {
    Require.positive("share", share);
    Require.within("share", share, 0, 1);
  }

  @Override
  public Lab target(Lab now, CoatPredictor predictor) {
    Lab end = ScaleLightening.of(colour, predictor.scaleLightening(), predictor.light());
    return new Lab(
        now.l() + share * (end.l() - now.l()),
        now.a() + share * (end.a() - now.a()),
        now.b() + share * (end.b() - now.b()),
        now.white());
  }
}
