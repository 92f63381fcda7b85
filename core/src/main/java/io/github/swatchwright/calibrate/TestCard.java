package io.github.swatchwright.calibrate;

import io.github.swatchwright.argument.BadArgumentException;
import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Swatch;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A painted patch: what went into the paint, how it was laid on, and the colour that was measured.
 *
 * @param parts at least one; none twice
 * @param by what the parts measure
 * @param measured the dry patch
 * @param over the bare base, when the patch lets it show; empty for a patch at full hiding
 * @param coats the number of coats, above 0 to 100, when known
 * @param measuredError error of the measured colour as sd of L*, a* and b*, above 0 to 50; empty
 *     for the usual one
 * @param painted the day on which it was painted, when known: cards of one day share the state of
 *     their bottles
 */
public record TestCard(
    List<Part> parts,
    PartsBy by,
    Swatch measured,
    Optional<Swatch> over,
    OptionalDouble coats,
    OptionalDouble measuredError,
    Optional<LocalDate> painted) {

  /** The most paints in a card. */
  public static final int MOST_PARTS = 100;

  /**
   * How much of a paint went into the card.
   *
   * @param paint its name
   * @param amount above 0 to a million, in any unit that the card's parts share
   * @param batch what tells the bottle from the one that the shelf describes; empty for that one
   */
  public record Part(String paint, double amount, Optional<String> batch) {
    /** A part of the bottle that the shelf describes. */
    public Part(String paint, double amount) {
      this(paint, amount, Optional.empty());
    }

    /** Refuses a blank name or batch and an amount out of range. */
    public Part {
      if (batch.isPresent() && batch.get().isBlank()) {
        throw new IllegalArgumentException("the batch of " + Printable.quoted(paint) + " is blank");
      }
      if (paint.isBlank()) {
        throw new BadArgumentException("paint", "is blank, must be the name of a paint");
      }
      Require.positive("parts of '" + paint + "'", amount);
      Require.within("parts of '" + paint + "'", amount, 0, 1e6);
    }
  }

  /**
   * The card that a measured mix is: a pot, or a rung of a ladder, painted until it hides.
   *
   * @param mix what went into it, in drops
   * @param measured its colour, dry
   */
  public static TestCard ofMix(Mix mix, Swatch measured) {
    double unit = mix.parts().get(0).paint().dropMillilitres();
    return new TestCard(
        mix.parts().stream()
            .map(
                part ->
                    new Part(
                        part.paint().name(),
                        part.drops() * (part.paint().dropMillilitres() / unit)))
            .toList(),
        PartsBy.VOLUME,
        measured,
        Optional.empty(),
        OptionalDouble.empty());
  }

  /** A card whose colour has the usual error. */
  public TestCard(
      List<Part> parts, PartsBy by, Swatch measured, Optional<Swatch> over, OptionalDouble coats) {
    this(parts, by, measured, over, coats, OptionalDouble.empty(), Optional.empty());
  }

  /** This card, painted on that day. */
  public TestCard withPainted(LocalDate day) {
    return new TestCard(parts, by, measured, over, coats, measuredError, Optional.of(day));
  }

  /** This card with the error of its colour stated: sd of L*, a* and b*, above 0 to 50. */
  public TestCard withMeasuredError(double sd) {
    return new TestCard(parts, by, measured, over, coats, OptionalDouble.of(sd), painted);
  }

  /** Copies the list; refuses an empty one, a paint named twice and coats out of range. */
  public TestCard {
    parts = List.copyOf(parts);
    Require.within("number of parts", parts.size(), 1, MOST_PARTS);
    Set<String> names = new HashSet<>();
    for (Part part : parts) {
      if (!names.add(part.paint())) {
        throw new IllegalArgumentException(
            "the card names " + Printable.quoted(part.paint()) + " twice");
      }
    }
    if (coats.isPresent()) {
      Require.positive("coats", coats.getAsDouble());
      Require.within("coats", coats.getAsDouble(), 0, 100);
    }
    if (measuredError.isPresent()) {
      Require.positive("measuredError", measuredError.getAsDouble());
      Require.within("measuredError", measuredError.getAsDouble(), 0, 50);
    }
  }
}
