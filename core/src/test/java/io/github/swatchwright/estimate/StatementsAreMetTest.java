package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is stated of one paint is what the estimate gives back, whatever it would have expected. */
class StatementsAreMetTest {

  private static Paint paint(String hex) {
    return Paint.of("paint", Medium.ACRYLIC, new Swatch.OfSrgb(Srgb.parse(hex)));
  }

  private static ShelfOptics alone(Paint paint, Optional<Saunderson> surface) {
    return ShelfOptics.estimate(new Shelf("one", List.of(paint), surface));
  }

  private static double coats(Paint paint) {
    ShelfOptics optics = alone(paint, Optional.empty());
    return hidingPower(optics).coatsToHide(optics.of("paint").constants());
  }

  private static HidingPower hidingPower(ShelfOptics optics) {
    return new HidingPower(new Viewing(TristimulusWeights.D65, optics.surface()));
  }

  private static double miss(Paint paint, Optional<Saunderson> surface) {
    ShelfOptics optics = alone(paint, surface);
    Viewing viewing = new Viewing(TristimulusWeights.D65, optics.surface());
    return Ciede2000.deltaE(
        paint.masstone().orElseThrow().lab(), viewing.lab(optics.of("paint").constants().opaque()));
  }

  @ParameterizedTest
  @EnumSource(Make.class)
  void aGreyHidesInTheCoatsStated(Make make) {
    Paint grey = paint("#656A6C").withMake(make);
    for (int stated : new int[] {1, 2, 4, 10, 50}) {
      double computed = coats(grey.withHiding(new Hiding.Coats(stated)));
      System.out.printf(
          Locale.ROOT, "%s grey, %d coats stated: %.1f computed%n", make.word(), stated, computed);
      // A painter's whole number stands for more than n - 1 and at most n.
      assertThat(computed).isGreaterThan(stated - 1).isLessThanOrEqualTo(stated + 1e-9);
    }
    assertThat(coats(grey.withHiding(new Hiding.Coats(3.3)))).isCloseTo(3.3, within(1e-6));
    for (double stated : new double[] {0.2, 0.5, 0.97}) {
      ShelfOptics optics =
          alone(grey.withHiding(new Hiding.ContrastRatio(stated)), Optional.empty());
      double computed =
          hidingPower(optics).contrastRatio(optics.of("paint").constants(), Film.COAT);
      assertThat(computed).isCloseTo(stated, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"#A06110", "#1E1E20", "#F2C230", "#153A78"})
  void theErrorOfAColourDoesNotMoveIt(String hex) {
    for (double error : new double[] {1e-9, 0.05, 0.3, 1, 3, 50}) {
      // Rounding of 8-bit channels alone is larger than this.
      assertThat(miss(paint(hex).withSwatchError(error), Optional.empty())).isLessThan(0.1);
    }
  }

  @Test
  void aSurfaceThatThePaintMakesImpossibleGivesWay() {
    for (double k1 : new double[] {0.02, 0.04, 0.5}) {
      assertThat(miss(paint("#181818"), Optional.of(new Saunderson(k1, 0.4)))).isLessThan(0.1);
    }
  }

  @Test
  void aReflectanceWithACliffComesBack() {
    double[] cliff = new double[31];
    Arrays.fill(cliff, 0, 15, 0.03);
    Arrays.fill(cliff, 15, 31, 0.8);
    Paint paint = Paint.of("paint", Medium.ACRYLIC, new Swatch.OfReflectance(400, 10, cliff));
    assertThat(miss(paint, Optional.empty())).isLessThan(0.1);
    assertThat(miss(paint.withSwatchError(1e-9), Optional.of(new Saunderson(0.5, 0.4))))
        .isLessThan(0.1);
  }

  // Common practice: dark ready-mixed paints hide in one to two coats.
  @ParameterizedTest
  @ValueSource(strings = {"#101010", "#1E1E20", "#4A3020", "#20304A", "#2A3A22"})
  void aDarkReadyMixedPaintHidesInOneOrTwoCoats(String hex) {
    assertThat(coats(paint(hex).withMake(Make.READY_MIXED))).isBetween(0.9, 2.0);
  }

  @Test
  void aMakeThatHidingSpeaksAgainstIsDoubted() {
    Paint blue = paint("#202C60").withHiding(new Hiding.Coats(25));
    assertThat(doubts(blue.withMake(Make.READY_MIXED)))
        .anyMatch(doubt -> doubt.contains("check its make"));
    assertThat(doubts(blue.withMake(Make.SINGLE_PIGMENT))).isEmpty();
    assertThat(doubts(blue)).isEmpty();
  }

  private static List<String> doubts(Paint paint) {
    return ShelfReport.of(alone(paint, Optional.empty()), TristimulusWeights.D65)
        .problems()
        .stream()
        .map(ShelfProblem::text)
        .toList();
  }
}
