package io.github.swatchwright.metamorphic;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.exchange.GimpPalette;
import io.github.swatchwright.exchange.ShelfCsv;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;

/** What the library writes about an invented shelf, to be compared between surroundings. */
final class AllTexts {
  private AllTexts() {}

  /** Everything about one shelf, and what is read back from it. */
  static String of(Random random) {
    Shelf shelf = Cases.shelf(random, 2);
    Mix mix = Cases.mix(random, shelf.paints());
    MixPredictor predictor = MixPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
    Lab lab = predictor.predict(mix).lab();
    Shelf read = ShelfJson.parse(ShelfJson.toText(shelf), "written");
    return String.join(
        "\n",
        ShelfJson.toText(shelf),
        ShelfCsv.toText(shelf),
        GimpPalette.toText(shelf),
        JsonResult.ofPredictions(
                List.of(new PredictedMix(mix, predictor.predict(mix))), Illuminant.D65)
            .toText(),
        mix.toText(),
        Mix.parse(mix.toText(), read).toText(),
        Lab.parse(lab.toText()).toText(),
        lab.toText());
  }

  /** Prints a digest of a number of cases: the program that another Java runs. */
  public static void main(String[] args) throws NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    Cases.each(
        Integer.parseInt(args[0]),
        random -> digest.update(of(random).getBytes(StandardCharsets.UTF_8)));
    System.out.println(HexFormat.of().formatHex(digest.digest()));
  }
}
