package io.github.swatchwright.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.ReadRung;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.opentest4j.TestAbortedException;

/** What holds for every ladder that is planned. */
class LadderPropertyTest {
  private static final ShelfOptics OPTICS = new RandomLadders(3).shelf(18);

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void rungsAreWhatTheySayTheyAre(@ForAll long seed) {
    RandomLadders.Case asked = new RandomLadders(seed, OPTICS).next();
    Ladder ladder = planned(asked);
    MixPredictor predictor = MixPredictor.of(asked.optics(), TristimulusWeights.D65);
    double shown = ladder.baseShare();
    for (int i = 0; i < ladder.rungs().size(); i++) {
      Rung rung = ladder.rungs().get(i);
      assertThat(rung.coverage()).isBetween(0.0, 1.0);
      assertThat(rung.visibleShare()).isBetween(0.0, 1.0);
      assertThat(rung.potDrops()).isLessThanOrEqualTo(ladder.pot().mostDrops() + 1e-9);
      assertThat(rung.add()).allSatisfy(some -> assertThat(some.count()).isPositive());
      assertThat(rung.prediction().lab())
          .satisfies(
              lab ->
                  assertThat(Ciede2000.deltaE(lab, predictor.predict(rung.pot()).lab()))
                      .isLessThan(1e-9));
      if (i > 0) {
        Rung before = ladder.rungs().get(i - 1);
        assertThat(rung.step().orElseThrow())
            .isCloseTo(
                Ciede2000.deltaE(before.prediction().lab(), rung.prediction().lab()), within(1e-9));
      }
      shown += rung.visibleShare();
    }
    assertThat(ladder.rungs()).hasSize(asked.request().rungs());
    assertThat(ladder.rungs().get(0).step()).isEmpty();
    assertThat(shown).isCloseTo(1, within(1e-9));
    assertReadsBack(ladder, asked);
  }

  /** What is kept of the pot before and what is added is in the pot: nothing else comes in. */
  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void aPotOnlyHoldsWhatWasPutIn(@ForAll long seed) {
    RandomLadders.Case asked = new RandomLadders(seed, OPTICS).next();
    Ladder ladder = planned(asked);
    PotRule rule = ladder.pot();
    for (int i = 0; i < ladder.rungs().size(); i++) {
      Rung rung = ladder.rungs().get(i);
      Map<Paint, Double> pot = new HashMap<>();
      if (i > 0) {
        Rung before = ladder.rungs().get(i - 1);
        double painted = before.coverage() * rule.millilitresForAll() / (rule.use() * 0.045);
        // Pots and needs agree to rounding; every drop of these paints is 0.045 ml.
        assertThat(painted + rung.keep()).isLessThanOrEqualTo(before.potDrops() + 1e-6);
        before
            .pot()
            .parts()
            .forEach(part -> pot.put(part.paint(), part.drops() * rung.keep() / before.potDrops()));
      }
      rung.add().forEach(some -> pot.merge(some.paint(), (double) some.count(), Double::sum));
      ladder
          .letDown()
          .ifPresent(
              small ->
                  small
                      .drops()
                      .forEach(
                          some ->
                              pot.merge(
                                  some.paint(),
                                  (double) some.count() * rung.letDown() / small.count(),
                                  Double::sum)));
      for (Mix.Part part : rung.pot().parts()) {
        assertThat(part.drops()).isCloseTo(pot.get(part.paint()), within(1e-9));
      }
      assertThat(rung.potDrops())
          .isCloseTo(pot.values().stream().mapToDouble(Double::doubleValue).sum(), within(1e-9))
          .isGreaterThanOrEqualTo(rule.leastDrops() - 1e-9);
    }
  }

  /** The ladder, unless there is none: not all mixes get steadily darker on their way. */
  private static Ladder planned(RandomLadders.Case asked) {
    try {
      return asked.plan();
    } catch (IllegalArgumentException refusal) {
      assertThat(refusal).hasMessageContaining("steadily");
      throw new TestAbortedException("no ladder", refusal);
    }
  }

  private static void assertReadsBack(Ladder ladder, RandomLadders.Case asked) {
    List<ReadRung> read =
        JsonResult.parseRungs(JsonResult.of(ladder).toText(), "written", asked.optics().shelf());
    assertThat(read).hasSameSizeAs(ladder.rungs());
    for (int i = 0; i < read.size(); i++) {
      assertThat(read.get(i).add()).isEqualTo(ladder.rungs().get(i).add());
      assertThat(read.get(i).keep()).isEqualTo(ladder.rungs().get(i).keep());
      assertThat(read.get(i).letDown()).isEqualTo(ladder.rungs().get(i).letDown());
    }
  }
}
