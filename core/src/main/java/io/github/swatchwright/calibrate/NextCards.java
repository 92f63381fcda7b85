package io.github.swatchwright.calibrate;

import io.github.swatchwright.mix.Recipe;
import java.util.List;

/**
 * Which test cards to paint next.
 *
 * @param wanted the mixes whose error counts
 * @param expectedDeltaE00 their mean error to be expected as things are
 * @param cards in the order in which they help most; fewer than asked for when no card helps
 */
public record NextCards(List<Recipe> wanted, double expectedDeltaE00, List<NextCard> cards) {
  /** Copies the lists. */
  public NextCards {
    wanted = List.copyOf(wanted);
    cards = List.copyOf(cards);
  }
}
