package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Shelves whose paints have another surface than the usual one. */
@Tag("statistics")
class SurfaceFitTest {
  private static final Saunderson[] SURFACES = {
    new Saunderson(0.015, 0.55), new Saunderson(0.03, 0.25), new Saunderson(0.02, 0.4)
  };

  /** Cards by syringe that obey the model, measured with a spectrophotometer. */
  private static final CardErrors ERRORS = new CardErrors(0.02, OptionalDouble.of(0.1), 0);

  /** One shelf under one surface. */
  private static final class Painted {
    private final InventedCards invented;
    private final Viewing viewing;
    private final Random random;

    private Painted(long seed, Saunderson surface) {
      invented = new InventedCards(seed, 0, 0);
      viewing = new Viewing(TristimulusWeights.D65, surface);
      random = new Random(seed);
    }

    private Swatch reflectance(List<TestCard.Part> parts) {
      double[] all = viewing.seen(invented.mixed(parts).opaque()).toArray();
      double[] seen = new double[all.length / 2];
      for (int i = 0; i < seen.length; i++) {
        double r = all[2 * i];
        double error = 3.0 / 116 * Math.cbrt(r * r) * 0.1;
        seen[i] = Math.max(1e-4, Math.min(1, r + error * random.nextGaussian()));
      }
      return new Swatch.OfReflectance(380, 20, seen);
    }

    Shelf shelf() {
      List<Paint> paints = new ArrayList<>();
      for (Pigment pigment : invented.pigments) {
        paints.add(
            Paint.of(
                    pigment.name(),
                    Medium.ACRYLIC,
                    reflectance(InventedCards.parts(pigment.name(), 1)))
                .withMake(Make.SINGLE_PIGMENT)
                .withSwatchError(0.1));
      }
      return Shelf.of("invented", paints);
    }

    CardSet cards() {
      List<TestCard> cards = new ArrayList<>();
      for (int i = 1; i < invented.pigments.size(); i++) {
        for (double white : new double[] {1, 5}) {
          String name = invented.pigments.get(i).name();
          List<TestCard.Part> poured =
              InventedCards.parts("white", white * Math.exp(0.02 * random.nextGaussian()), name, 1);
          cards.add(
              new TestCard(
                  InventedCards.parts("white", white, name, 1),
                  PartsBy.VOLUME,
                  reflectance(poured),
                  Optional.empty(),
                  OptionalDouble.empty()));
        }
      }
      return new CardSet(cards);
    }

    double error(Shelf shelf) {
      MixPredictor predictor = MixPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
      DescriptiveStatistics errors = new DescriptiveStatistics();
      for (int i = 1; i < invented.pigments.size(); i++) {
        for (int j = i + 1; j < invented.pigments.size(); j++) {
          String a = invented.pigments.get(i).name();
          String b = invented.pigments.get(j).name();
          Lab truth = viewing.lab(invented.mixed(InventedCards.parts(a, 1, b, 2)).opaque());
          Lab predicted = predictor.predict(Mix.parse(a + ":1, " + b + ":2", shelf)).lab();
          errors.addValue(Ciede2000.deltaE(truth, predicted));
        }
      }
      return errors.getMean();
    }
  }

  @Test
  void anotherSurfaceIsFoundAndMixesGetBetter() {
    DescriptiveStatistics usual = new DescriptiveStatistics();
    DescriptiveStatistics fitted = new DescriptiveStatistics();
    for (int number = 0; number < SURFACES.length; number++) {
      Saunderson truth = SURFACES[number];
      Painted painted = new Painted(1300 + number, truth);
      Shelf shelf = painted.shelf();
      CardSet cards = painted.cards();
      Calibration without = Calibration.of(shelf, cards, ERRORS);
      Calibration with = Calibration.withFittedSurface(shelf, cards, ERRORS);
      Saunderson chosen = without.shelf().surface().orElseThrow();
      Saunderson found = with.shelf().surface().orElseThrow();
      usual.addValue(painted.error(without.shelf()));
      fitted.addValue(painted.error(with.shelf()));
      System.out.printf(
          Locale.ROOT,
          "surface: true k1 %.3f k2 %.2f, chosen %.3f %.2f, fitted %.4f %.3f; other mixes ΔE00 %.3f"
              + " chosen, %.3f fitted%n",
          truth.k1(),
          truth.k2(),
          chosen.k1(),
          chosen.k2(),
          found.k1(),
          found.k2(),
          painted.error(without.shelf()),
          painted.error(with.shelf()));
      // Half of what the prior leaves open as sd: it must be the cards that tell.
      assertThat(found.k1()).isCloseTo(truth.k1(), within(0.0075));
      assertThat(found.k2()).isCloseTo(truth.k2(), within(0.075));
      // The third surface is the usual one but for k1: there is little to gain, and little to lose.
      assertThat(fitted.getElement(number)).isLessThan(1.1 * usual.getElement(number));
    }
    assertThat(fitted.getMean()).isLessThan(0.9 * usual.getMean());
  }

  @Test
  void aShelfThatHasLearntIsNotGivenAnotherSurface() {
    Painted painted = new Painted(1300, SURFACES[0]);
    CardSet one = new CardSet(painted.cards().cards().subList(0, 1));
    Shelf learnt = Calibration.of(painted.shelf(), one, ERRORS).shelf();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Calibration.withFittedSurface(learnt, one, ERRORS))
        .withMessageStartingWith("'white' has learned from cards under a surface already");
  }
}
