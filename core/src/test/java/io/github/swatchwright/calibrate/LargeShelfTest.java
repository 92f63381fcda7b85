package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LargeShelfTest {

  @Test
  void sixtyPaintsLearnFromSixCardsEach() {
    LargeShelf large = LargeShelf.of(60, 360);
    Calibration calibration =
        Calibration.of(large.shelf(), large.cards(), new CardErrors(0.05, OptionalDouble.of(0.5)));
    // The cards' own noise of 0.5 in L*, a* and b* has a mean length of 0.8, in ΔE00 somewhat less.
    assertThat(calibration.after()).isLessThan(0.8);
    assertThat(calibration.before()).isGreaterThan(5 * calibration.after());
    // One good card in two hundred looks wrong by chance; four times as many would be a fault.
    assertThat(calibration.contradictions()).hasSizeLessThanOrEqualTo(7);
  }
}
