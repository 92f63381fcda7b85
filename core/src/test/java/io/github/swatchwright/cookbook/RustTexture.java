package io.github.swatchwright.cookbook;

import io.github.swatchwright.card.Speckle;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.ladder.LadderPlanner;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.ladder.Subject;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;

/**
 * A texture of rust over grey paint for a renderer, in the shades of a ladder that can be mixed.
 */
final class RustTexture {
  private RustTexture() {}

  static int[] argb(Shelf shelf, int width, int height, long seed) {
    LadderPlanner planner = LadderPlanner.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
    LadderRequest request =
        LadderRequest.between(shade("#C8642A"), shade("#4A3226"), 4).withSubject(Subject.RUST);
    List<Speckle.Pass> passes =
        planner.plan(request).rungs().stream()
            .map(rung -> new Speckle.Pass(rung.prediction().lab(), rung.coverage()))
            .toList();
    return Speckle.of(Srgb.parse("#656A6C").toLab(), passes, seed).pixels(width, height);
  }

  private static Shade shade(String colour) {
    return new Shade.OfColour(new Swatch.OfSrgb(Srgb.parse(colour)));
  }
}
