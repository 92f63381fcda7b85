package io.github.swatchwright.paint;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which bottles of a shelf may go into a mix. By default all paints and inks; washes, filters,
 * primers, varnishes and thinners only by {@code also}, or when {@code only} names them.
 *
 * @param only names of the paints to choose from; empty for the whole shelf
 * @param without names of paints to leave out
 * @param medium the medium to stay in; empty for any, though one pot always holds one
 * @param also further uses whose bottles may be mixed
 */
public record PaintChoice(
    Set<String> only, Set<String> without, Optional<Medium> medium, Set<Use> also) {

  /** All paints and inks of the shelf. */
  public static final PaintChoice ALL =
      new PaintChoice(Set.of(), Set.of(), Optional.empty(), Set.of());

  /** Copies the sets. */
  public PaintChoice {
    only = Set.copyOf(only);
    without = Set.copyOf(without);
    also = Set.copyOf(also);
  }

  /** This choice from the named paints alone. */
  public PaintChoice withOnly(Set<String> names) {
    return new PaintChoice(names, without, medium, also);
  }

  /** This choice leaving out the named paints. */
  public PaintChoice withWithout(Set<String> names) {
    return new PaintChoice(only, names, medium, also);
  }

  /** This choice within one medium. */
  public PaintChoice withMedium(Medium wanted) {
    return new PaintChoice(only, without, Optional.of(wanted), also);
  }

  /** This choice with bottles of further uses. */
  public PaintChoice withAlso(Set<Use> uses) {
    return new PaintChoice(only, without, medium, uses);
  }

  /**
   * This choice with each name as the shelf spells it.
   *
   * @throws IllegalArgumentException when a name isn't on the shelf
   */
  public PaintChoice on(Shelf shelf) {
    return new PaintChoice(spelt(only, shelf), spelt(without, shelf), medium, also);
  }

  private static Set<String> spelt(Set<String> names, Shelf shelf) {
    return names.stream()
        .map(name -> shelf.paint(name).name())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Whether a paint may be mixed; names are compared as they are spelt. */
  public boolean admits(Paint paint) {
    boolean named = only.contains(paint.name());
    return (named || (only.isEmpty() && admitsUse(paint)))
        && !without.contains(paint.name())
        && medium.map(paint.medium()::equals).orElse(true);
  }

  private boolean admitsUse(Paint paint) {
    return paint.use().isMixed() || also.contains(paint.use());
  }
}
