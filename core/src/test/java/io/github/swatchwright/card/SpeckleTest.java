package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.AreaCoverage;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SpeckleTest {
  private static final Lab BASE = Lab.ofD65(60, 0, 0);
  private static final Lab RUST = Lab.ofD65(40, 25, 30);

  private static Speckle speckle(List<Double> coverages, long seed) {
    return Speckle.of(
        BASE, coverages.stream().map(coverage -> new Speckle.Pass(RUST, coverage)).toList(), seed);
  }

  // Demichel's shares; each pass rounds to whole cells, of which there are 12800.
  @Property(tries = 40)
  void everyColourShowsInItsShare(
      @ForAll @Size(max = Speckle.MOST_PASSES) List<@DoubleRange(max = 1) Double> coverages,
      @ForAll long seed) {
    double[] wanted =
        AreaCoverage.visibleShares(coverages.stream().mapToDouble(Double::doubleValue).toArray());
    assertThat(speckle(coverages, seed).shares())
        .containsExactly(wanted, within(Speckle.TOLERANCE));
  }

  // 3600 cells, rounded once.
  @Property(tries = 40)
  void aStripShowsItsShare(@ForAll @DoubleRange(max = 1) double coverage, @ForAll long seed) {
    Speckle strip = Speckle.strip(BASE, new Speckle.Pass(RUST, coverage), seed);
    assertThat(strip.shares()[1]).isCloseTo(coverage, within(0.5 / 3600 + 1e-12));
  }

  @Test
  void theDrawnStrokesHaveThatArea() {
    Speckle speckle = speckle(List.of(0.3), 5);
    Matcher run = Pattern.compile("h([0-9]+)").matcher(speckle.toSvg());
    int cells = 0;
    while (run.find()) {
      cells += Integer.parseInt(run.group(1));
    }
    assertThat(cells / 12800.0).isCloseTo(speckle.shares()[1], within(1e-12));
  }

  @Test
  void theSeedDecidesWhereBlotsLie() {
    assertThat(speckle(List.of(0.3), 5).toSvg()).isEqualTo(speckle(List.of(0.3), 5).toSvg());
    assertThat(speckle(List.of(0.3), 5).toSvg()).isNotEqualTo(speckle(List.of(0.3), 6).toSvg());
  }

  @Test
  void noneAndAllAreCovered() {
    assertThat(speckle(List.of(0.0), 1).shares()).containsExactly(1, 0);
    assertThat(speckle(List.of(1.0), 1).shares()).containsExactly(0, 1);
    assertThat(speckle(List.of(), 1).shares()).containsExactly(1);
  }

  @Test
  void saysWhatItShows() {
    assertThat(speckle(List.of(0.2, 0.5), 1).toSvg())
        .contains("aria-label=\"Speckle: the base shows in 40 %, the passes in 10 %, 50 %\"");
  }

  @Test
  void refusesWhatIsNoCoverageAndTooManyPasses() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Speckle.Pass(RUST, 1.5))
        .withMessage("coverage is 1.5, must be within [0.0, 1.0]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> speckle(Collections.nCopies(13, 0.5), 1))
        .withMessage("number of passes is 13, must be within [0, 12]");
  }
}
