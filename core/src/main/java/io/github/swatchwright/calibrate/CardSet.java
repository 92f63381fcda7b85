package io.github.swatchwright.calibrate;

import io.github.swatchwright.argument.Require;
import java.util.List;
import java.util.stream.Stream;

/**
 * Test cards that were painted for one shelf.
 *
 * @param cards 1 to {@value #MOST_CARDS}
 */
public record CardSet(List<TestCard> cards) {

  /** The most cards in a set. */
  public static final int MOST_CARDS = 5000;

  /** Copies the list; refuses an empty or overlong one. */
  public CardSet {
    cards = List.copyOf(cards);
    Require.within("number of cards", cards.size(), 1, MOST_CARDS);
  }

  /** These cards and one more. */
  public CardSet with(TestCard card) {
    return new CardSet(Stream.concat(cards.stream(), Stream.of(card)).toList());
  }
}
