package io.github.swatchwright.plan;

import io.github.swatchwright.argument.BadArgumentException;
import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Finish;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One step that is asked for.
 *
 * @param kind what it does
 * @param aim what it is painted with, or what it is to lead to
 * @param coats how many coats, 1 to {@value #MOST_COATS}; empty for as many as it takes
 * @param thinner volumes of thinner to one of paint, 0 to 100; empty for what is usual
 * @param coverage share of the area that it covers, above 0 to 1; empty for what is usual
 * @param worn share of the coat that is worn off again, as chips: 0 to below 1
 * @param finish how a varnish is to shine; empty for matt
 */
public record Task(
    StepKind kind,
    Aim aim,
    OptionalInt coats,
    OptionalDouble thinner,
    OptionalDouble coverage,
    double worn,
    Optional<Finish> finish) {
  /** The most coats of one step. */
  public static final int MOST_COATS = 40;

  private static final double MOST_THINNER = 100;

  /** Refuses numbers out of range, and what makes no sense together. */
  public Task {
    if (!StepKind.askable().contains(kind)) {
      throw new BadArgumentException("step", "is " + kind.word() + ", which a plan puts in itself");
    }
    coats.ifPresent(count -> Require.within("coats", count, 1, MOST_COATS));
    thinner.ifPresent(some -> Require.within("thinner", some, 0, MOST_THINNER));
    coverage.ifPresent(
        share -> Require.within("coverage", Require.positive("coverage", share), 0, 1));
    Require.within("worn", worn, 0, 0.99);
    boolean isLadder = aim instanceof Aim.OfLadder;
    if (isLadder != (kind == StepKind.LADDER)) {
      throw new IllegalArgumentException(
          isLadder ? "from and to belong to a ladder" : "a ladder needs from and to");
    }
    if (aim instanceof Aim.Usual && !kind.isClear()) {
      throw new IllegalArgumentException("a " + kind.word() + " needs a paint, a mix or a target");
    }
    if (worn > 0 && (kind.isClear() || isLadder)) {
      throw new BadArgumentException(
          "worn", "is " + worn + ", but a " + kind.word() + " isn't worn off");
    }
  }

  /** A step with everything as it is usual. */
  public static Task of(StepKind kind, Aim aim) {
    return new Task(
        kind,
        aim,
        OptionalInt.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        0,
        Optional.empty());
  }

  /** The same with a number of coats. */
  public Task withCoats(int count) {
    return new Task(kind, aim, OptionalInt.of(count), thinner, coverage, worn, finish);
  }

  /** The same with another ratio of thinner: volumes to one of paint. */
  public Task withThinner(double volumes) {
    return new Task(kind, aim, coats, OptionalDouble.of(volumes), coverage, worn, finish);
  }

  /** The same over a share of the area. */
  public Task withCoverage(double share) {
    return new Task(kind, aim, coats, thinner, OptionalDouble.of(share), worn, finish);
  }

  /** The same with a share of it worn off again. */
  public Task withWorn(double share) {
    return new Task(kind, aim, coats, thinner, coverage, share, finish);
  }

  /** The same with another finish. */
  public Task withFinish(Finish wanted) {
    return new Task(kind, aim, coats, thinner, coverage, worn, Optional.of(wanted));
  }
}
