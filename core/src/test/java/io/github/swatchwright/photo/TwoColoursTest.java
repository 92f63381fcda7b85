package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One colour with much texture is one; two colours are two, whatever the noise and the shares. */
class TwoColoursTest {
  private static final Lab RUST = Lab.ofD65(40, 25, 30);
  private static final Lab GREY = Lab.ofD65(52, -3, -9);

  private final Random random = new Random(7);

  private Lab near(Lab lab, double sd) {
    return Lab.ofD65(
        lab.l() + sd * random.nextGaussian(),
        lab.a() + sd * random.nextGaussian(),
        lab.b() + sd * random.nextGaussian());
  }

  private List<Lab> pixels(Lab lab, int count, double sd) {
    List<Lab> pixels = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pixels.add(near(lab, sd));
    }
    return pixels;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.3, 0.5})
  void twoColoursAreFoundWithTheirShares(double share) {
    int few = (int) (2000 * share);
    List<Lab> pixels = pixels(RUST, few, 2);
    pixels.addAll(pixels(GREY, 2000 - few, 2));

    TwoColours two = TwoColours.in(pixels).orElseThrow();

    Lab most = share < 0.5 ? GREY : two.most();
    // The sd of a median of 200 is 1.25 · 2/√200 = 0.18; three of these in each direction.
    assertThat(Ciede2000.deltaE(two.most(), most)).isLessThan(0.6);
    assertThat(Ciede2000.deltaE(two.most(), two.rest()))
        .isCloseTo(Ciede2000.deltaE(RUST, GREY), within(1.0));
    assertThat(two.share()).isCloseTo(1 - share, within(0.01));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 5, 12})
  void noiseIsOneColour(double sd) {
    assertThat(TwoColours.in(pixels(RUST, 2000, sd))).isEmpty();
  }

  @Test
  void unevenLightIsOneColour() {
    List<Lab> pixels = new ArrayList<>();
    for (int i = 0; i < 2000; i++) {
      pixels.add(near(Lab.ofD65(35 + 30 * i / 2000.0, 20, 20), 0.5));
    }
    assertThat(TwoColours.in(pixels)).isEmpty();
  }

  @Test
  void glareThatFadesIsOneColour() {
    List<Lab> pixels = new ArrayList<>();
    for (int i = 0; i < 2000; i++) {
      pixels.add(Lab.ofD65(Math.min(99, 40 - 8 * Math.log(1 - random.nextDouble())), 10, 10));
    }
    assertThat(TwoColours.in(pixels)).isEmpty();
  }

  @Test
  void aFewSpecksAndColoursThatHardlyDifferAreOneColour() {
    List<Lab> specks = pixels(RUST, 1900, 2);
    specks.addAll(pixels(GREY, 100, 2));
    assertThat(TwoColours.in(specks)).isEmpty();
    List<Lab> alike = pixels(RUST, 1000, 0.2);
    alike.addAll(pixels(Lab.ofD65(43, 25, 30), 1000, 0.2));
    assertThat(TwoColours.in(alike)).isEmpty();
  }

  @Test
  void oneFlatColourAndAHandfulOfPixelsAreTaken() {
    assertThat(TwoColours.in(pixels(RUST, 500, 0))).isEmpty();
    List<Lab> few = pixels(RUST, 5, 0);
    few.addAll(pixels(GREY, 5, 0));
    assertThat(TwoColours.in(few)).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> new TwoColours(RUST, GREY, 0.4));
  }

  // As light as each other, with more noise in L* than between them; one in twenty lies between.
  @Test
  void twoColoursThatDifferInHueAloneAreFound() {
    Random random = new Random(8);
    List<Lab> pixels = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      double b = i % 20 == 0 ? 0 : i % 3 == 0 ? 12 : -12;
      double l = 50 + 4 * random.nextGaussian();
      pixels.add(Lab.ofD65(l, 6 + random.nextGaussian(), b + random.nextGaussian()));
    }

    TwoColours two = TwoColours.in(pixels).orElseThrow();

    assertThat(two.most().b()).isCloseTo(-12, within(1.0));
    assertThat(two.rest().b()).isCloseTo(12, within(1.0));
    assertThat(two.most().l()).isCloseTo(50, within(1.0));
    // Two thirds of what isn't between, and some of that.
    assertThat(two.share()).isBetween(0.62, 0.7);
  }
}
