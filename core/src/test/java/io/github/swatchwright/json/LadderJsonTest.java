package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.LadderPlanner;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import org.junit.jupiter.api.Test;

class LadderJsonTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");

  @Test
  void rungsReadBackAsTheyWereWritten() {
    Ladder ladder =
        LadderPlanner.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65)
            .plan(
                LadderRequest.between(
                    new Shade.OfMix(Mix.parse("Deckhouse cream", SHELF)),
                    new Shade.OfMix(Mix.parse("Quay-mud brown", SHELF)),
                    3));
    List<ReadRung> read = JsonResult.parseRungs(JsonResult.of(ladder).toText(), "ladder", SHELF);

    assertThat(read).hasSize(3);
    for (int i = 0; i < 3; i++) {
      assertThat(read.get(i).add()).isEqualTo(ladder.rungs().get(i).add());
      // Four decimals are written.
      assertThat(read.get(i).coverage())
          .isCloseTo(ladder.rungs().get(i).coverage(), within(5.1e-5));
      assertThat(Ciede2000.deltaE(read.get(i).lab(), ladder.rungs().get(i).prediction().lab()))
          .isLessThan(1e-3);
    }
  }

  @Test
  void namesThePlaceOfWhatIsWrong() {
    assertThatThrownBy(
            () ->
                JsonResult.parseRungs(
                    "{\"light\":\"D65\",\"rungs\":[{\"add\":[{\"paint\":\"Ochre\",\"drops\":1}]}]}",
                    "ladder",
                    SHELF))
        .hasMessageContaining("$.rungs[0].add[0].paint: no paint 'Ochre' on the shelf");
  }
}
