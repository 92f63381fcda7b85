package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * How long large shelves take, in seconds of processor time: the fit uses one thread, and the
 * machine may be busy with other tests.
 */
class CalibrationScaleTest {
  private static final CardErrors ERRORS = new CardErrors(0.05, OptionalDouble.of(0.5));

  @Test
  void sixtyPaintsWithSixCardsEachTakeSeconds() {
    assertThat(seconds(60, 360)).isLessThan(20);
  }

  @Test
  void threeHundredPaintsWithAThousandCardsTakeLessThanAMinute() {
    assertThat(seconds(300, 1000)).isLessThan(60);
  }

  private static double seconds(int paints, int cards) {
    List<InventedCards> families = new ArrayList<>();
    List<Paint> shelf = new ArrayList<>();
    for (int i = 0; shelf.size() < paints; i++) {
      InventedCards family = new InventedCards(500 + i, 0.05, 0.5);
      families.add(family);
      for (Pigment pigment : family.pigments) {
        if (shelf.size() < paints && (i == 0 || !pigment.name().equals("white"))) {
          shelf.add(renamed(pigment, i));
        }
      }
    }
    Shelf whole = InventedCards.shelf(shelf);
    Random random = new Random(1);
    List<TestCard> painted = new ArrayList<>();
    for (int i = 0; i < cards; i++) {
      painted.add(card(families, 1 + i % (paints - 1), i, random));
    }
    Duration start = processorTime();
    Calibration calibration = Calibration.of(whole, new CardSet(painted), ERRORS);
    double seconds = processorTime().minus(start).toMillis() / 1e3;
    System.out.printf(
        Locale.ROOT,
        "calibration: %d paints, %d cards: %.1f s, ΔE00 of cards %.2f before, %.2f after, %d left out%n",
        paints,
        cards,
        seconds,
        calibration.before(),
        calibration.after(),
        calibration.contradictions().size());
    assertThat(calibration.after()).isLessThan(calibration.before());
    return seconds;
  }

  private static Duration processorTime() {
    return ProcessHandle.current().info().totalCpuDuration().orElseThrow();
  }

  private static Paint renamed(Pigment pigment, int family) {
    Paint paint = pigment.withContrastRatio();
    return new Paint(
        name(pigment.name(), family),
        paint.medium(),
        paint.finish(),
        paint.make(),
        paint.masstone(),
        paint.hiding(),
        paint.dropMillilitres(),
        paint.swatchError(),
        paint.effect(),
        "");
  }

  private static String name(String pigment, int family) {
    return pigment.equals("white") ? pigment : pigment + " of " + family;
  }

  /** Three tints in white, then mixes of two paints of one family in white. */
  private static TestCard card(List<InventedCards> families, int paint, int turn, Random random) {
    InventedCards family = families.get((paint - 1) / 13);
    String first = family.pigments.get(1 + (paint - 1) % 13).name();
    String second = family.pigments.get((paint - 1) % 13).name();
    int white = 1 + random.nextInt(6);
    TestCard tint =
        family.painted(
            turn % 4 == 3 && !second.equals("white")
                ? InventedCards.parts(first, 1, second, 1)
                : InventedCards.parts("white", white, first, 1));
    int number = (paint - 1) / 13;
    return new TestCard(
        tint.parts().stream()
            .map(part -> new TestCard.Part(name(part.paint(), number), part.amount()))
            .toList(),
        tint.by(),
        new Swatch.OfLab(tint.measured().lab()),
        tint.over(),
        tint.coats());
  }
}
