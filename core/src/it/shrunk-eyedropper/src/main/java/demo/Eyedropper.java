package demo;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.photo.ArgbPhoto;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PhotoCorrection;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/** What the colour in the middle of a picture is mixed from: a program to shrink. */
public final class Eyedropper {
  private Eyedropper() {}

  public static void main(String[] args) throws IOException {
    Shelf shelf = ShelfJson.read(Path.of(args[0]));
    int[] pixels = new int[40 * 30];
    Arrays.fill(pixels, 0xFF000000 | Srgb.parse(args[1]).toPacked());
    Photo picture = new ArgbPhoto(40, 30, pixels, RgbSpace.SRGB);
    Region region = Region.around(20, 15, 4, 40, 30).orElseThrow();
    Swatch below =
        PhotoCorrection.ofNothing().colour(RegionSampler.sample(picture, region)).swatch();
    Matcher matcher = Matcher.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
    RankedRecipe best = matcher.match(MatchRequest.ofMoving(below)).recipes().get(0);
    System.out.printf("%s: ΔE00 %.1f%n", best.recipe().toMix().toText(), best.deltaE00());
  }
}
