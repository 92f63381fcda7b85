package io.github.swatchwright.match;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.paint.Use;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class UsesTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final Matcher MATCHER =
      Matcher.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);

  /** 60 by default; 200 give 1,000 recipes: {@code -Duses.targets=200}. */
  private static final int TARGETS = Integer.getInteger("uses.targets", 60);

  private static long ofOtherUse(PaintChoice choice) {
    Random random = new Random(14);
    long found = 0;
    for (int i = 0; i < TARGETS; i++) {
      Lab lab =
          Lab.ofD65(
              20 + 60 * random.nextDouble(),
              60 * random.nextDouble() - 30,
              60 * random.nextDouble() - 30);
      MatchRequest request =
          MatchRequest.of(new Swatch.OfLab(lab)).withMostDrops(8).withChoice(choice);
      found +=
          MATCHER.match(request).recipes().stream()
              .flatMap(ranked -> ranked.recipe().drops().stream())
              .filter(some -> !some.paint().use().isMixed())
              .count();
    }
    return found;
  }

  @Test
  void washesFiltersAndVarnishesAreMixedOnlyWhenAskedFor() {
    assertThat(ofOtherUse(PaintChoice.ALL)).isZero();
    assertThat(ofOtherUse(PaintChoice.ALL.withMedium(Medium.ENAMEL).withAlso(Set.of(Use.WASH))))
        .isPositive();
  }

  @Test
  void aBottleThatIsNamedIsTakenWhateverItsUse() {
    MatchRequest request =
        MatchRequest.of(new Swatch.OfLab(Lab.ofD65(60, 5, 10)))
            .withOnly(Set.of("Whitewash wash", "Rust-brown wash"));

    assertThat(MATCHER.match(request).recipes()).isNotEmpty();
  }
}
