package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class GamutPolicyTest {
  private static final Srgb P3_RED = new DisplayP3(1, 0, 0).toSrgb();

  @Test
  void displayableColoursAreLeftAlone() {
    Srgb colour = Srgb.parse("#C48A2C");
    for (GamutPolicy policy : GamutPolicy.values()) {
      assertThat(colour.fit(policy)).isSameAs(colour);
    }
  }

  @Test
  void refuseThrowsWithTheColourAndTheRange() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> P3_RED.fit(GamutPolicy.REFUSE))
        .withMessageStartingWith("Srgb[red=1.09")
        .withMessageEndingWith("is outside the sRGB range 0 to 1");
  }

  @Test
  void clipCutsEachChannel() {
    assertThat(P3_RED.fit(GamutPolicy.CLIP)).isEqualTo(new Srgb(1, 0, 0));
    assertThat(new Srgb(0.5, 7, -3).fit(GamutPolicy.CLIP)).isEqualTo(new Srgb(0.5, 1, 0));
  }

  @Test
  void reduceChromaKeepsLightnessAndHueAndGivesUpNoMoreThanItMust() {
    SplittableRandom random = new SplittableRandom(30);
    int beyond = 0;
    for (int i = 0; i < 2000; i++) {
      Lab lab =
          Lab.ofD65(
              1 + 98 * random.nextDouble(),
              320 * random.nextDouble() - 160,
              320 * random.nextDouble() - 160);
      Srgb wanted = lab.toSrgb();
      if (wanted.isDisplayable()) {
        continue;
      }
      beyond++;
      Srgb shown = wanted.fit(GamutPolicy.REDUCE_CHROMA);
      assertThat(shown.isDisplayable()).isTrue();
      Lch fitted = shown.toLab().toLch();
      Lch asked = lab.toLch();
      assertThat(fitted.l()).isCloseTo(asked.l(), within(1e-9));
      assertThat(fitted.c()).isLessThan(asked.c());
      if (fitted.c() > 0.01) {
        assertThat(fitted.hueDegrees().orElseThrow())
            .isCloseTo(asked.hueDegrees().orElseThrow(), within(1e-6));
      }
      // A little more chroma than was kept is too much.
      assertThat(asked.withChroma(fitted.c() + 1e-4).toLab().toSrgb().isDisplayable()).isFalse();
    }
    assertThat(beyond).isGreaterThan(1000);
  }

  @Test
  void lightnessThatNoGreyHasIsCutOff() {
    assertThat(Lab.ofD65(120, 30, 0).toSrgb().fit(GamutPolicy.REDUCE_CHROMA))
        .isEqualTo(new Srgb(1, 1, 1));
    assertThat(Lab.ofD65(-5, 30, 0).toSrgb().fit(GamutPolicy.REDUCE_CHROMA))
        .isEqualTo(new Srgb(0, 0, 0));
  }
}
