package io.github.swatchwright.cookbook;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;

/** Matches a list of colours on all processors, and hands out each result as it comes. */
final class Batch {
  private Batch() {}

  static int match(Shelf shelf, List<String> colours, Duration longest, Consumer<String> line) {
    Matcher matcher = Matcher.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
    List<MatchRequest> requests =
        colours.stream()
            .map(colour -> MatchRequest.of(new Swatch.OfSrgb(Srgb.parse(colour))))
            .toList();
    Control control =
        Control.PLAIN.withThreads(Runtime.getRuntime().availableProcessors()).withLongest(longest);
    return matcher.matchAll(requests, control, result -> line.accept(line(result))).size();
  }

  private static String line(MatchResult result) {
    RankedRecipe best = result.recipes().get(0);
    return best.recipe().toMix().toText() + (result.complete() ? "" : ", cut short");
  }
}
