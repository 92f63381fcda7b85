package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.ladder.Ladder;
import java.util.List;
import java.util.Optional;

/**
 * A task worked out over what lies below it.
 *
 * @param coats what it leaves, before any of it is worn off; none when it is left out
 * @param ladder the shades, when it is a ladder
 * @param wanted the colour it was to lead to
 * @param advice what to say about it
 */
record Painted(
    List<Coat> coats, Optional<Ladder> ladder, Optional<Lab> wanted, List<String> advice) {
  Painted {
    coats = List.copyOf(coats);
    advice = List.copyOf(advice);
  }

  static Painted of(Coat coat, List<String> advice) {
    return new Painted(List.of(coat), Optional.empty(), Optional.empty(), advice);
  }

  Painted wanting(Optional<Lab> colour) {
    return new Painted(coats, ladder, colour, advice);
  }
}
