package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class VisibleSharesTest {

  @Test
  void aLaterPassHidesWhatItCovers() {
    assertThat(AreaCoverage.visibleShares(1, 0.5, 0.25)).containsExactly(0, 0.375, 0.375, 0.25);
  }

  @Property
  void sharesSumToOneAndGiveTheCoveragesBack(
      @ForAll @Size(min = 1, max = 8)
          List<@Scale(9) @DoubleRange(min = 0, max = 0.99) Double> passes) {
    double[] coverages = passes.stream().mapToDouble(Double::doubleValue).toArray();
    double[] visible = AreaCoverage.visibleShares(coverages);
    assertThat(Arrays.stream(visible).sum()).isCloseTo(1, within(1e-12));
    assertThat(AreaCoverage.coveragesFor(visible)).containsExactly(coverages, within(1e-12));
  }

  @Test
  void randomSpecklesShowTheSameShares() {
    double[] coverages = {0.8, 0.45, 0.3, 0.12};
    double[] visible = AreaCoverage.visibleShares(coverages);
    int speckles = 100_000;
    int[] seen = new int[visible.length];
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < speckles; i++) {
      int top = 0;
      for (int pass = 0; pass < coverages.length; pass++) {
        if (random.nextDouble() < coverages[pass]) {
          top = pass + 1;
        }
      }
      seen[top]++;
    }
    for (int k = 0; k < visible.length; k++) {
      double standardError = Math.sqrt(visible[k] * (1 - visible[k]) / speckles);
      // Five shares at once: within three standard errors, at most 0.005 of the area here, a right
      // formula fails in about 1 of 75 seeds.
      assertThat((double) seen[k] / speckles).isCloseTo(visible[k], within(3 * standardError));
    }
  }

  @Test
  void sharesThatCannotBeAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AreaCoverage.visibleShares(0.5, 1.5))
        .withMessage("coverages[1] is 1.5, must be within [0.0, 1.0]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AreaCoverage.coveragesFor(0.5, 0.6))
        .withMessageStartingWith("sum of visible shares is 1.1");
  }
}
