package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Paints stirred together in stated parts. A part is a drop of the paint's own dropper, and need
 * not be whole.
 *
 * @param parts at least one; all of one medium, none twice
 */
public record Mix(List<Part> parts) {
  /** Ratios that need more batches than this to be whole are rounded. */
  private static final int MOST_BATCHES = 100;

  /**
   * A number of drops of one paint.
   *
   * @param paint the paint
   * @param drops above 0 to a million
   */
  public record Part(Paint paint, double drops) {
    /** Refuses drops that are not above 0, and more than a million. */
    public Part {
      Require.positive("parts of '" + paint.name() + "'", drops);
      Require.within("parts of '" + paint.name() + "'", drops, 0, 1e6);
    }

    /** Volume in millilitres. */
    public double millilitres() {
      return drops * paint.dropMillilitres();
    }
  }

  /** Copies the list; refuses an empty one, a paint named twice and a second medium. */
  public Mix {
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("the mix is empty, must hold at least one paint");
    }
    Paint first = parts.get(0).paint();
    Set<String> names = new HashSet<>();
    for (Part part : parts) {
      if (!names.add(part.paint().name())) {
        throw new IllegalArgumentException(
            "the mix names " + Printable.quoted(part.paint().name()) + " twice");
      }
      if (part.paint().medium() != first.medium()) {
        throw new IllegalArgumentException(
            "a pot holds one medium, but "
                + Printable.quoted(first.name())
                + " is "
                + first.medium().word()
                + " and "
                + Printable.quoted(part.paint().name())
                + " is "
                + part.paint().medium().word());
      }
    }
  }

  /** A mix of one paint alone. */
  public static Mix of(Paint paint) {
    return new Mix(List.of(new Part(paint, 1)));
  }

  /**
   * Reads {@code "Name:3, Other name:1.5"}; a name alone stands for one part.
   *
   * @throws IllegalArgumentException when a paint isn't on the shelf, or a number is none
   */
  public static Mix parse(String text, Shelf shelf) {
    return new Mix(new MixText(text, shelf).parts());
  }

  /** Volume in millilitres. */
  public double millilitres() {
    return parts.stream().mapToDouble(Part::millilitres).sum();
  }

  /**
   * The same mix in whole drops, enough for a volume: the ratio is kept when whole drops of it make
   * no more than that, or when its drops are whole already; else every part is rounded, to one drop
   * at least.
   *
   * @param millilitres the least volume, above 0 to 10,000
   */
  public Mix enoughFor(double millilitres) {
    Require.positive("millilitres", millilitres);
    Require.within("millilitres", millilitres, 0, 1e4);
    for (int batches = 1; batches <= MOST_BATCHES; batches++) {
      if (isWhole(batches)) {
        double volume = batches * millilitres();
        if (batches == 1 || volume <= millilitres) {
          return rounded(batches * Math.max(1, Math.ceil(millilitres / volume - 1e-9)));
        }
        break;
      }
    }
    double factor = millilitres / millilitres();
    while (rounded(factor).millilitres() < millilitres) {
      factor *= 1.01;
    }
    return rounded(factor);
  }

  private boolean isWhole(int batches) {
    return parts.stream()
        .mapToDouble(part -> part.drops() * batches)
        .allMatch(drops -> Math.abs(drops - Math.rint(drops)) < 1e-6);
  }

  private Mix rounded(double factor) {
    return new Mix(
        parts.stream()
            .map(part -> new Part(part.paint(), Math.max(1, Math.rint(part.drops() * factor))))
            .toList());
  }

  /** The mix as {@link #parse} reads it. */
  public String toText() {
    return parts.stream()
        .map(part -> part.paint().name() + ":" + plain(part.drops()))
        .collect(Collectors.joining(", "));
  }

  private static String plain(double drops) {
    return BigDecimal.valueOf(drops).stripTrailingZeros().toPlainString();
  }
}
