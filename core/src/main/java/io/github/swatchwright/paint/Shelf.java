package io.github.swatchwright.paint;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.optics.Saunderson;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The paints someone owns.
 *
 * @param name what the painter calls it
 * @param paints 1 to {@value #MOST_PAINTS} paints, no two with the same name
 * @param surface the surface correction for all of them, when stated; else the estimate chooses one
 */
public record Shelf(String name, List<Paint> paints, Optional<Saunderson> surface) {

  /** The most paints on one shelf. */
  public static final int MOST_PAINTS = 10_000;

  /** Copies the list; refuses an empty or overlong shelf and duplicate names. */
  public Shelf {
    paints = List.copyOf(paints);
    if (paints.isEmpty() || paints.size() > MOST_PAINTS) {
      throw new IllegalArgumentException(
          "the shelf holds " + paints.size() + " paints, must hold 1 to " + MOST_PAINTS);
    }
    Set<String> names = new HashSet<>();
    for (Paint paint : paints) {
      if (!names.add(paint.name())) {
        throw new IllegalArgumentException(
            "two paints are named " + Printable.quoted(paint.name()));
      }
    }
  }

  /** A shelf whose surface is chosen from its paints. */
  public static Shelf of(String name, List<Paint> paints) {
    return new Shelf(name, paints, Optional.empty());
  }

  /**
   * The paint of that name.
   *
   * @throws IllegalArgumentException when there is none, with the nearest name there is
   */
  public Paint paint(String wanted) {
    return paints.stream()
        .filter(paint -> paint.name().equals(wanted))
        .findFirst()
        .or(() -> paints.stream().filter(p -> p.name().equalsIgnoreCase(wanted)).findFirst())
        .orElseThrow(() -> new IllegalArgumentException(unknown(wanted)));
  }

  /** This shelf with one more paint, or with it in the place of the one of its name. */
  public Shelf with(Paint paint) {
    List<Paint> changed = new ArrayList<>(paints);
    changed.replaceAll(old -> old.name().equals(paint.name()) ? paint : old);
    if (!changed.contains(paint)) {
      changed.add(paint);
    }
    return new Shelf(name, changed, surface);
  }

  /**
   * This shelf without a paint.
   *
   * @throws IllegalArgumentException when there is none of that name
   */
  public Shelf without(String wanted) {
    Paint gone = paint(wanted);
    return new Shelf(name, paints.stream().filter(each -> !each.equals(gone)).toList(), surface);
  }

  /**
   * This shelf after some of a paint was taken out of its bottle, ml.
   *
   * @param wanted the paint's name
   * @param millilitres how much, at least 0
   * @throws IllegalArgumentException when there is no such paint, or not so much of it
   */
  public Shelf taking(String wanted, double millilitres) {
    Paint taken = paint(wanted);
    try {
      Bottle bottle = taken.bottle().taking(millilitres);
      return new Shelf(
          name,
          paints.stream().map(p -> p.equals(taken) ? p.withBottle(bottle) : p).toList(),
          surface);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "the bottle of " + Printable.quoted(taken.name()) + " " + e.getMessage(), e);
    }
  }

  private String unknown(String wanted) {
    String known =
        "no paint " + Printable.quoted(wanted) + " on the shelf " + Printable.quoted(name);
    return NameSuggestion.of(wanted, paints.stream().map(Paint::name).toList())
        .map(suggestion -> known + "; " + suggestion)
        .orElse(known);
  }
}
