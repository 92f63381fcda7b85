package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PartsByMassTest {
  private static final Map<String, Double> DENSITIES = Map.of("white", 1.5, "oxide 0", 1.2);

  private final InventedCards invented = new InventedCards(40, 0, 0);
  private final Shelf unweighed = invented.shelf();
  private final Shelf weighed =
      InventedCards.shelf(unweighed.paints().stream().map(PartsByMassTest::weighed).toList());

  private static Paint weighed(Paint paint) {
    Double density = DENSITIES.get(paint.name());
    return density == null ? paint : paint.withBottle(paint.bottle().withDensity(density));
  }

  private TestCard card(PartsBy by, double white, double oxide) {
    TestCard measured = invented.measured(InventedCards.parts("white", 5, "oxide 0", 1));
    return new TestCard(
        InventedCards.parts("white", white, "oxide 0", oxide),
        by,
        measured.measured(),
        measured.over(),
        measured.coats());
  }

  private static Prediction after(Shelf shelf, TestCard card) {
    Shelf better = Calibration.of(shelf, new CardSet(List.of(card))).shelf();
    return MixPredictor.of(ShelfOptics.estimate(better), TristimulusWeights.D65)
        .predict(Mix.parse("white:2, oxide 0:1", better));
  }

  @Test
  void gramsOfPaintsOfKnownDensityTellWhatMillilitresDo() {
    Prediction byVolume = after(weighed, card(PartsBy.VOLUME, 5, 1));
    Prediction byMass = after(weighed, card(PartsBy.MASS, 5 * 1.5, 1.2));

    // The same volumes but for the last digits, in which the fit's last step may differ.
    assertThat(Ciede2000.deltaE(byVolume.lab(), byMass.lab())).isLessThan(1e-4);
    assertThat(byMass.intervalDeltaE00()).isCloseTo(byVolume.intervalDeltaE00(), within(1e-3));
  }

  @Test
  void anUnknownDensityMakesACardTellLess() {
    Prediction byVolume = after(unweighed, card(PartsBy.VOLUME, 5, 1));
    Prediction byMass = after(unweighed, card(PartsBy.MASS, 5, 1));

    assertThat(byMass.intervalDeltaE00()).isGreaterThan(1.05 * byVolume.intervalDeltaE00());
  }
}
