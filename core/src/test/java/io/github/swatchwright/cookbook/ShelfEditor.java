package io.github.swatchwright.cookbook;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.estimate.ShelfProblem;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Puts a new bottle on a shelf, and says what to look at. */
final class ShelfEditor {
  private ShelfEditor() {}

  static List<ShelfProblem> add(Path file, String name, String colour) throws IOException {
    Shelf shelf = ShelfJson.read(file);
    Paint bottle =
        Paint.of(name, Medium.ACRYLIC, new Swatch.OfSrgb(Srgb.parse(colour)))
            .withMake(Make.READY_MIXED)
            .withHiding(new Hiding.Coats(2));
    Shelf changed = shelf.with(bottle);
    Files.writeString(file, ShelfJson.toText(changed));
    return ShelfReport.of(ShelfOptics.estimate(changed), TristimulusWeights.D65).problems().stream()
        .filter(problem -> problem.paint().equals(name))
        .toList();
  }
}
