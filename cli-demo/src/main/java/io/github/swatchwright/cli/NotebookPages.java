package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.card.CardOrigin;
import io.github.swatchwright.card.NotebookLine;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.json.FoundMix;
import io.github.swatchwright.json.MixedAgain;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.NotebookEntry;
import io.github.swatchwright.json.Trials;
import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Illuminant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cards of a notebook. */
final class NotebookPages {
  private static final int MOST_MIXES = 3;

  private NotebookPages() {}

  /** What the notebook holds. */
  static Card of(Notebook.Contents contents, Shelf shelf) {
    List<Trials.Remembered> trials = Trials.of(contents).all();
    List<NotebookLine> entries = new ArrayList<>();
    for (NotebookEntry entry : contents.entries()) {
      int number = entries.size() + 1;
      Optional<Trials.Remembered> trial =
          trials.stream().filter(one -> one.number() == number).findFirst();
      entries.add(
          trial.isPresent()
              ? entry(
                  number, entry, "Tried for entry " + trial.get().trial().on(), trial.get(), shelf)
              : entry(number, entry, shelf));
    }
    return Card.ofNotebook(entries);
  }

  private static NotebookLine entry(
      int number, NotebookEntry entry, String asked, Trials.Remembered trial, Shelf shelf) {
    return new NotebookLine(
        number, day(entry), asked, colours(mixes(trial.on(), shelf)), trial.trial().inWords());
  }

  private static NotebookLine entry(int number, NotebookEntry entry, Shelf shelf) {
    List<FoundMix> mixes = mixes(entry, shelf);
    String found = mixes.isEmpty() ? "" : mixes.get(0).mix().toText();
    String more = mixes.size() > 1 ? " and " + (mixes.size() - 1) + " more" : "";
    return new NotebookLine(
        number, day(entry), new TypedLine(entry.asked()).toText(), colours(mixes), found + more);
  }

  /** Of paints that are no longer on the shelf nothing is told. */
  private static List<FoundMix> mixes(NotebookEntry entry, Shelf shelf) {
    try {
      return Notebook.mixes(entry, shelf);
    } catch (IllegalArgumentException e) {
      return List.of();
    }
  }

  private static List<Lab> colours(List<FoundMix> mixes) {
    return mixes.stream().limit(MOST_MIXES).flatMap(mix -> mix.lab().stream()).toList();
  }

  private static LocalDate day(NotebookEntry entry) {
    return LocalDate.ofInstant(entry.date(), ZoneOffset.UTC);
  }

  /** An entry's mixes, mixed again. */
  static Card again(int number, List<MixedAgain> mixes, Illuminant light) {
    List<PredictedMix> pots =
        mixes.stream().map(again -> new PredictedMix(again.mix(), again.prediction())).toList();
    return Card.ofPredictions(pots, light).from(CardOrigin.UNKNOWN.withEntry(number));
  }
}
