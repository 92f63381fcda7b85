package io.github.swatchwright.ladder;

import java.util.List;
import java.util.Optional;

/** Refuses coverages that don't fit the ladder that they are stated for. */
final class CoverageCheck {
  private CoverageCheck() {}

  static void check(
      CoverageWish wish, int rungs, int shades, Optional<Subject> subject, boolean overBase) {
    if (wish instanceof PassesWish passes) {
      requireAsMany("coverages", passes.coverages().size(), rungs, "rungs");
      checkFirst(passes.coverages(), overBase);
      subject.ifPresent(what -> checkFalling(passes.coverages(), what));
    } else if (wish instanceof SharesWish shares) {
      requireAsMany("shares", shares.shares().size(), rungs, "rungs");
      double sum = shares.shares().stream().mapToDouble(Double::doubleValue).sum();
      if (!overBase && Math.abs(sum - 1) > 1e-6) {
        throw new IllegalArgumentException(
            "sum of shares is " + sum + ", must be 1 unless a base is stated");
      }
    } else if (wish instanceof ShadesWish ofShades) {
      requireAsMany("shares", ofShades.shares().size(), shades, "shades");
    }
  }

  private static void requireAsMany(String what, int count, int wanted, String of) {
    if (count != wanted) {
      throw new IllegalArgumentException(
          "there are " + count + " " + what + ", must be as many as " + of + ": " + wanted);
    }
  }

  private static void checkFirst(List<Double> coverages, boolean overBase) {
    if (!overBase && coverages.get(0) != 1) {
      throw new IllegalArgumentException(
          "coverage 1 is " + coverages.get(0) + ", must be 1 unless a base is stated");
    }
  }

  private static void checkFalling(List<Double> coverages, Subject subject) {
    for (int i = 1; i < coverages.size(); i++) {
      if (coverages.get(i) > coverages.get(i - 1)) {
        throw new IllegalArgumentException(
            "coverage "
                + (i + 1)
                + " is "
                + coverages.get(i)
                + ", must be at most coverage "
                + i
                + ", "
                + coverages.get(i - 1)
                + ": each pass of "
                + subject.word()
                + " covers less");
      }
    }
  }
}
