package demo;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.IOException;
import java.nio.file.Path;

/** The example of the README, in a program of its own. */
public final class Match {
  private Match() {}

  public static void main(String[] args) throws IOException {
    Shelf shelf = ShelfJson.read(Path.of(args[0]));
    Matcher matcher = Matcher.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
    Swatch target = new Swatch.OfSrgb(Srgb.parse(args[1]));
    for (RankedRecipe found : matcher.match(MatchRequest.of(target)).recipes()) {
      System.out.printf("%s: ΔE00 %.1f%n", found.recipe().toMix().toText(), found.deltaE00());
    }
  }
}
