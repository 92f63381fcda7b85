package io.github.swatchwright.match;

import io.github.swatchwright.argument.Require;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What else is wanted of a recipe, beside the colour.
 *
 * @param preferences what makes one recipe rank before another
 * @param leastContrastRatio the least contrast ratio that one coat of the mix must have, 0 to 1;
 *     empty for any
 * @param sameContrastRatio the contrast ratio that one coat of the mix should have, 0 to 1; empty
 *     for any
 */
public record Wishes(
    Set<Preference> preferences,
    OptionalDouble leastContrastRatio,
    OptionalDouble sameContrastRatio) {

  /** Nothing but the colour. */
  public static final Wishes NONE =
      new Wishes(Set.of(), OptionalDouble.empty(), OptionalDouble.empty());

  /** Copies the set; refuses ratios outside 0 to 1. */
  public Wishes {
    preferences = Set.copyOf(preferences);
    leastContrastRatio.ifPresent(ratio -> Require.within("leastContrastRatio", ratio, 0, 1));
    sameContrastRatio.ifPresent(ratio -> Require.within("sameContrastRatio", ratio, 0, 1));
  }

  /** The same with one more preference. */
  public Wishes preferring(Preference preference) {
    Set<Preference> more = EnumSet.of(preference);
    more.addAll(preferences);
    return new Wishes(more, leastContrastRatio, sameContrastRatio);
  }

  /** The same with a least contrast ratio of one coat, 0 to 1. */
  public Wishes hidingAtLeast(double contrastRatio) {
    return new Wishes(preferences, OptionalDouble.of(contrastRatio), sameContrastRatio);
  }

  /** The same with a contrast ratio of one coat to come near to, 0 to 1. */
  public Wishes hidingLike(double contrastRatio) {
    return new Wishes(preferences, leastContrastRatio, OptionalDouble.of(contrastRatio));
  }

  boolean prefer(Preference preference) {
    return preferences.contains(preference);
  }

  /** Whether something counts that the search for the nearest colours doesn't look at. */
  boolean reachBeyondColour() {
    return !preferences.isEmpty()
        || leastContrastRatio.isPresent()
        || sameContrastRatio.isPresent();
  }
}
