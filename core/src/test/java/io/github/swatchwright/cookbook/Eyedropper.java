package io.github.swatchwright.cookbook;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PhotoCorrection;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Optional;

/** Says while a finger moves over a picture what the colour below it is mixed from. */
final class Eyedropper {
  private final Matcher matcher;

  Eyedropper(Shelf shelf) {
    matcher = Matcher.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65).warmed(Control.PLAIN);
  }

  Optional<RankedRecipe> moved(Photo photo, int x, int y) {
    return below(photo, x, y).map(colour -> best(MatchRequest.ofMoving(colour)));
  }

  Optional<RankedRecipe> letGo(Photo photo, int x, int y) {
    return below(photo, x, y).map(colour -> best(MatchRequest.of(colour)));
  }

  private RankedRecipe best(MatchRequest request) {
    return matcher.match(request).recipes().get(0);
  }

  /** Empty off the picture, on white paper and in deep shadow. */
  private static Optional<Swatch> below(Photo photo, int x, int y) {
    return Region.around(x, y, 4, photo.width(), photo.height())
        .flatMap(region -> RegionSampler.trySample(photo, region))
        .map(sample -> PhotoCorrection.ofNothing().colour(sample).swatch());
  }
}
