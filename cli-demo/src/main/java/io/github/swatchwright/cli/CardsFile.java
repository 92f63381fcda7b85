package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.json.CardsJson;
import java.util.ArrayList;
import java.util.List;

/**
 * A file of test cards that grows by one.
 *
 * @param option what the command line calls it
 * @param file where it is
 */
record CardsFile(String option, NewFile file) {

  /** Adds a card, or begins the file with it; the cards as they are then. */
  CardSet add(TestCard card, Output output) {
    output.files().lock(option, file); // Before reading, so that nobody's card is lost.
    List<TestCard> cards = new ArrayList<>(earlierCards());
    cards.add(card);
    CardSet all = new CardSet(cards);
    output.files().write(option, file, CardsJson.toText(all));
    return all;
  }

  private List<TestCard> earlierCards() {
    return new GivenFile(file.path())
        .readIfThere(option, CardsJson::read)
        .map(CardSet::cards)
        .orElse(List.of());
  }
}
