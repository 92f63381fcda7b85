package io.github.swatchwright.calibrate;

import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Shelf;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long a shelf takes to learn from its cards, from a cold start, in 512 MB: colour cards of a
 * few to many paints, and ladders of 31 bands on one day with recipes of another.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 3, jvmArgs = "-Xmx512m")
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class CalibrationBenchmark {
  private static final LocalDate FIRST_DAY = LocalDate.of(2026, 3, 1);
  private static final LocalDate LATER = LocalDate.of(2026, 11, 20);

  /** Paints and colour cards; or paints, whose three rungs each were measured, and recipes. */
  @Param({"3/150", "60/360", "300/1000", "21 ladders/24"})
  public String paintsAndCards = "";

  private Shelf shelf = LargeShelf.of(2, 1).shelf();
  private CardSet cards = LargeShelf.of(2, 1).cards();
  private CardErrors errors = CardErrors.USUAL;

  /** Paints the cards. */
  @Setup
  public void paint() {
    String[] counts = paintsAndCards.split("/", -1);
    int more = Integer.parseInt(counts[1]);
    if (counts[0].endsWith(" ladders")) {
      paintLadders(Integer.parseInt(counts[0].split(" ", -1)[0]), more);
      return;
    }
    LargeShelf large = LargeShelf.of(Integer.parseInt(counts[0]), more);
    shelf = large.shelf();
    cards = large.cards();
    errors = new CardErrors(0.05, OptionalDouble.of(0.5));
  }

  /** Colourants that are known from nothing else: each alone, and 1:3 and 1:12 in white. */
  private void paintLadders(int paints, int recipes) {
    PaintedFamily family = PaintedFamily.pigments(100, paints);
    List<TestCard> painted = new ArrayList<>();
    for (Pigment paint : family.paints) {
      painted.add(family.rung(InventedCards.parts(paint.name(), 1)).withPainted(FIRST_DAY));
      for (int white : new int[] {3, 12}) {
        if (!paint.name().equals("white")) {
          painted.add(
              family
                  .rung(InventedCards.parts("white", white, paint.name(), 1))
                  .withPainted(FIRST_DAY));
        }
      }
    }
    family.nextDay(0.15);
    for (int i = 0; i < recipes; i++) {
      painted.add(family.rung(family.recipe()).withPainted(LATER));
    }
    shelf =
        InventedCards.shelf(
            family.paints.stream()
                .map(paint -> PaintedFamily.unseen(paint.swatch(Make.SINGLE_PIGMENT)))
                .toList());
    cards = new CardSet(painted);
  }

  /** All cards at once. */
  @Benchmark
  public Calibration calibrate() {
    return Calibration.of(shelf, cards, errors);
  }
}
