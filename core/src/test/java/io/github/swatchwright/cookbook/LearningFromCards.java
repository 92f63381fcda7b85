package io.github.swatchwright.cookbook;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.CardAdvisor;
import io.github.swatchwright.calibrate.CardErrors;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Teaches a shelf what a painted and measured mix has shown, and names the next one to paint. */
final class LearningFromCards {
  private LearningFromCards() {}

  static NextCards learn(Path file, String mix, Lab measured) throws IOException {
    Shelf shelf = ShelfJson.read(file);
    TestCard card = TestCard.ofMix(Mix.parse(mix, shelf), new Swatch.OfLab(measured));
    Control allProcessors = Control.PLAIN.withThreads(Runtime.getRuntime().availableProcessors());
    Calibration learned =
        Calibration.of(shelf, new CardSet(List.of(card)), CardErrors.USUAL, allProcessors);
    Files.writeString(file, ShelfJson.toText(learned.shelf()));
    return CardAdvisor.of(ShelfOptics.estimate(learned.shelf()), CardErrors.USUAL)
        .forShelf(1, 2, allProcessors);
  }
}
