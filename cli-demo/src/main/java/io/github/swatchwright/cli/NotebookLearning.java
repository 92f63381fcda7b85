package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.Corrector;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.FoundMix;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.NotebookEntry;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;

/**
 * Learns from what an entry's mix turned out as: a test card, and what to add to the pot.
 *
 * @param output where it goes
 * @param shared the shelf and the light
 * @param reference what tells the light of photos
 */
record NotebookLearning(Output output, SharedOptions shared, PhotoReference reference) {

  /** Writes the card; after a photo, tells what to add as well. */
  void learn(NotebookEntry entry, FoundMix found, LearnOptions options) {
    String place = options.measuredIn;
    Shelf shelf = shared.shelf();
    GivenColour seen =
        place == null
            ? colour(Objects.requireNonNull(options.measured), shelf)
            : photo(place, shelf);
    TestCard card =
        TestCard.ofMix(found.mix(), seen.swatch())
            .withPainted(LocalDate.ofInstant(entry.date(), ZoneOffset.UTC));
    NewFile file = Objects.requireNonNull(options.cardsFile);
    CardSet cards =
        new CardsFile("--out", file)
            .add(seen.hasOwnError() ? card.withMeasuredError(seen.error()) : card, output);
    Optional<Correction> correction =
        place == null
            ? Optional.empty()
            : target(entry, found, options, shelf).map(wanted -> correct(found, seen, wanted));
    shared.give(
        output,
        () ->
            correction
                .map(some -> JsonResult.of(found.mix(), some))
                .orElseGet(() -> JsonResult.of(cards)),
        () -> {
          output.line("Card %d: %s", cards.cards().size(), found.mix().toText());
          output.line("Written to %s; 'swatchwright calibrate' learns from it.", file);
          correction.ifPresent(new CorrectionText(output)::print);
        });
  }

  private GivenColour colour(String text, Shelf shelf) {
    return ColourArgument.parse(text, shelf, reference, output);
  }

  private GivenColour photo(String place, Shelf shelf) {
    PhotoPatch.parse(place);
    return colour(place, shelf);
  }

  /**
   * What was asked for now, or what the entry was for; a colour under another light than D65 isn't.
   */
  private Optional<Swatch> target(
      NotebookEntry entry, FoundMix found, LearnOptions options, Shelf shelf) {
    String target = options.target;
    if (target != null) {
      return Optional.of(colour(target, shelf).swatch());
    }
    Optional<Lab> then = Notebook.target(entry).or(found::lab);
    return then.filter(lab -> lab.white().equals(WhitePoint.D65)).map(Swatch.OfLab::new);
  }

  private Correction correct(FoundMix found, GivenColour seen, Swatch wanted) {
    return Corrector.of(ShelfOptics.estimate(shared.shelf()), shared.weights())
        .correct(found.mix(), seen.swatch(), seen.error(), wanted);
  }
}
