package io.github.swatchwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Cie76;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Swatch;
import org.junit.jupiter.api.Test;

/** What was foretold and what was measured, weighed by their errors. */
class SeenColourTest {
  private static final Lab FORETOLD = Lab.ofD65(50, 10, 20);

  /** Foretold within an sd of 1 in each of L*, a* and b*. */
  private static Base seen(Lab measured, double error) {
    Swatch swatch = new Swatch.OfLab(FORETOLD);
    Prediction prediction =
        new Prediction(
            swatch.reflectance(),
            ColourSpread.of(FORETOLD, new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}));
    return SeenColour.of(prediction, new Done.Measured(new Swatch.OfLab(measured), error));
  }

  private static Lab lab(Base base) {
    return ((Base.OfSwatch) base).swatch().lab();
  }

  @Test
  void asSureAsItsPredictionAMeasurementCountsNoMoreThanThat() {
    // At the prediction itself the weight is 7/4: (1.75·50 + 50)/2.75, and √(1/2.75) is left.
    Base same = seen(FORETOLD, 1);
    assertThat(Cie76.deltaE(lab(same), FORETOLD)).isLessThan(1e-9);
    assertThat(((Base.OfSwatch) same).error()).isCloseTo(Math.sqrt(1 / 2.75), within(1e-9));
    // d² = 2²/(1 + 1) = 2, so the weight is 7/6, and L* is (7/6·50 + 52)/(7/6 + 1).
    assertThat(lab(seen(Lab.ofD65(52, 10, 20), 1)).l())
        .isCloseTo((7 / 6.0 * 50 + 52) / (7 / 6.0 + 1), within(1e-9));
  }

  @Test
  void farFromWhatWasForetoldOnlyTheMeasurementCounts() {
    Lab wrong = Lab.ofD65(30, 10, 20);
    assertThat(Cie76.deltaE(lab(seen(wrong, 1)), wrong)).isLessThan(0.7);
  }
}
