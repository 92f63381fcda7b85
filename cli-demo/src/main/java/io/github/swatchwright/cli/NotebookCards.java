package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Swatch;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes test cards of what a notebook holds, for {@code calibrate} to learn from.
 *
 * @param output where the card is shown
 * @param shared how
 */
record NotebookCards(Output output, SharedOptions shared) {

  /** Adds a card to a file of cards, which needn't be there yet. */
  void add(Mix mix, Swatch measured, Instant when, NewFile out) {
    TestCard card =
        TestCard.ofMix(mix, measured).withPainted(LocalDate.ofInstant(when, ZoneOffset.UTC));
    output.files().lock("--out", out); // Before reading, so that nobody's card is lost.
    List<TestCard> cards = new ArrayList<>(earlierCards(out));
    cards.add(card);
    String text = CardsJson.toText(new CardSet(cards));
    output.files().write("--out", out, text);
    shared.give(
        output,
        () -> text,
        () -> {
          output.line("Card %d: %s", cards.size(), mix.toText());
          output.line("Written to %s; 'swatchwright calibrate' learns from it.", out);
        });
  }

  private static List<TestCard> earlierCards(NewFile file) {
    return new GivenFile(file.path())
        .readIfThere("--out", CardsJson::read)
        .map(CardSet::cards)
        .orElse(List.of());
  }
}
