package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.testdata.DemoPhoto;
import io.github.swatchwright.testdata.DemoPhoto.Material;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class IlluminationTest {
  private static final int SIDE = 200;
  private static final List<Region> WALLS =
      List.of(new Region(230, 20, 200, 340), new Region(20, 20, 180, 70));

  private static double fall(double x, double y) {
    double u = x / SIDE;
    double v = y / SIDE;
    return Math.exp(-0.6 * u - 0.3 * v - 0.5 * u * u + 0.3 * u * v);
  }

  /** A grey wall under a light that falls off, with a grid of 16 invented colours hung on it. */
  private static ArgbPhoto wall(LinearRgb[] colours, double stray) {
    Random random = new Random(3);
    int[] argb = new int[SIDE * SIDE];
    for (int i = 0; i < argb.length; i++) {
      int x = i % SIDE;
      int y = i / SIDE;
      boolean hung = x % 50 >= 30 && y % 50 >= 30;
      LinearRgb colour = hung ? colours[y / 50 * 4 + x / 50] : new LinearRgb(0.5, 0.5, 0.5);
      double light = fall(x + 0.5, y + 0.5) * (random.nextDouble() < stray ? 0.4 : 1);
      LinearRgb seen =
          new LinearRgb(colour.red() * light, colour.green() * light, colour.blue() * light);
      argb[i] = 0xFF000000 | seen.encode().toPacked();
    }
    return new ArgbPhoto(SIDE, SIDE, argb, RgbSpace.SRGB);
  }

  private static LinearRgb[] colours() {
    Random random = new Random(5);
    LinearRgb[] colours = new LinearRgb[16];
    for (int i = 0; i < 16; i++) {
      colours[i] =
          new LinearRgb(
              0.1 + 0.7 * random.nextDouble(),
              0.1 + 0.7 * random.nextDouble(),
              0.1 + 0.7 * random.nextDouble());
    }
    return colours;
  }

  private static double[] errors(ArgbPhoto photo, LinearRgb[] colours, Illumination light) {
    RegionSample card = light.sample(photo, new Region(5, 5, 20, 20));
    PhotoCorrection correction = GreyCorrection.of(List.of(new NeutralPatch(card, 50)));
    double[] errors = new double[colours.length];
    for (int i = 0; i < errors.length; i++) {
      Region region = new Region(i % 4 * 50 + 32, i / 4 * 50 + 32, 16, 16);
      Lab lab = correction.colour(light.sample(photo, region)).lab();
      errors[i] = Ciede2000.deltaE(lab, colours[i].toXyz().toLab());
    }
    Arrays.sort(errors);
    return errors;
  }

  @Test
  void aWallThatShowsTheLightTakesItsUnevennessOutOfOtherColours() {
    LinearRgb[] colours = colours();
    ArgbPhoto photo = wall(colours, 0);
    // The whole wall, with the colours on it: they are 16 % of the area, and strays to the fit.
    Illumination light = Illumination.fittedTo(photo, List.of(new Region(0, 0, SIDE, SIDE)));

    double[] without = errors(photo, colours, Illumination.even());
    double[] with = errors(photo, colours, light);
    assertThat(without[8]).isGreaterThan(8);
    // 8-bit steps in the dark corner are 2 % of the light.
    assertThat(with[15]).isLessThan(1);
    assertThat(light.scatter()).isLessThan(0.02);
    assertThat(light.at(150, 150).green() / light.at(20, 20).green())
        .isCloseTo(fall(150, 150) / fall(20, 20), within(0.01));
  }

  @Test
  @DisplayName("the demo photo's paint is the same all over the plate once the light is evened")
  void thePaintIsTheSameEverywhere() {
    ArgbPhoto photo = demo();
    Lab paint = Srgb.ofPacked(Material.HULL_PAINT.srgb()).toLab();
    double worstWithout = 0;
    double worstWith = 0;
    Illumination light = Illumination.fittedTo(photo, WALLS);
    for (Region region :
        List.of(
            new Region(20, 20, 50, 50),
            new Region(300, 200, 60, 60),
            new Region(560, 200, 50, 50),
            new Region(480, 350, 60, 40))) {
      worstWithout = Math.max(worstWithout, error(photo, region, Illumination.even(), paint));
      worstWith = Math.max(worstWith, error(photo, region, light, paint));
    }
    assertThat(worstWithout).isGreaterThan(8);
    // Clouds of dirt in the paint's texture are left: up to 8 % of the light.
    assertThat(worstWith).isLessThan(3.5);
  }

  private static ArgbPhoto demo() {
    return new ArgbPhoto(DemoPhoto.WIDTH, DemoPhoto.HEIGHT, DemoPhoto.argb(false), RgbSpace.SRGB);
  }

  private static PhotoCorrection card(ArgbPhoto photo, Illumination light) {
    RegionSample card = light.sample(photo, new Region(510, 56, 76, 76));
    return GreyCorrection.of(List.of(new NeutralPatch(card, 18)));
  }

  private static double error(ArgbPhoto photo, Region region, Illumination light, Lab truth) {
    Lab lab = card(photo, light).colour(light.sample(photo, region)).lab();
    return Ciede2000.deltaE(lab, truth);
  }

  @Test
  @DisplayName("the demo photo's rust: its shades are within their intervals")
  void theShadesOfTheRustAreFound() {
    ArgbPhoto photo = demo();
    Illumination light = Illumination.fittedTo(photo, WALLS);
    List<RegionShade> shades =
        new ShadeSearch(OptionalInt.empty(), 1)
            .in(photo, new Region(40, 180, 140, 180), light, card(photo, light));
    for (Material material :
        List.of(
            Material.HULL_PAINT, Material.ORANGE_RUST, Material.BROWN_RUST, Material.DARK_RUST)) {
      Lab truth = Srgb.ofPacked(material.srgb()).toLab();
      assertThat(shades)
          .as("%s", material)
          .anySatisfy(
              shade ->
                  assertThat(Ciede2000.deltaE(shade.colour().lab(), truth))
                      .isLessThan(shade.colour().intervalDeltaE00()));
      double share =
          shades.stream()
              .filter(shade -> nearest(shade) == material)
              .mapToDouble(RegionShade::share)
              .sum();
      // Speckled edges are mixtures, and go to either neighbour.
      assertThat(share)
          .as("share of %s", material)
          .isCloseTo(DemoPhoto.share(material, 40, 180, 140, 180), within(0.1));
    }
  }

  private static Material nearest(RegionShade shade) {
    return Arrays.stream(Material.values())
        .min(
            Comparator.comparingDouble(
                material ->
                    Ciede2000.deltaE(shade.colour().lab(), Srgb.ofPacked(material.srgb()).toLab())))
        .orElseThrow();
  }

  @Test
  void areasThatTellNoLightAreRefused() {
    ArgbPhoto photo = wall(colours(), 0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Illumination.fittedTo(photo, List.of(new Region(5, 5, 15, 100))))
        .withMessage(
            "the plain areas span 8 % of the picture's width or height, must span at least 10 %"
                + " to tell how the light falls");
    ArgbPhoto speckled = wall(colours(), 0.5);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Illumination.fittedTo(speckled, List.of(new Region(0, 0, 150, 150))))
        .withMessageStartingWith("the plain areas aren't plain: they scatter by ");
  }

  @Test
  void aPlaceFarFromASteepSlopeIsRefused() {
    int[] argb = new int[SIDE * SIDE];
    for (int i = 0; i < argb.length; i++) {
      int level = 250 - 2 * Math.min(110, i % SIDE);
      argb[i] = 0xFF000000 | level * 0x010101;
    }
    ArgbPhoto photo = new ArgbPhoto(SIDE, SIDE, argb, RgbSpace.SRGB);
    Illumination light = Illumination.fittedTo(photo, List.of(new Region(60, 0, 50, 50)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> light.sample(photo, new Region(180, 180, 16, 16)))
        .withMessageContaining("can't be told from the plain areas");
  }

  /** A wall that isn't encoded in steps, in two paints, each plain by itself. */
  private static ArgbPhoto twoPaints() {
    int[] argb = new int[SIDE * SIDE];
    for (int i = 0; i < argb.length; i++) {
      int y = i / SIDE;
      double light = fall(i % SIDE + 0.5, y + 0.5);
      double paint = y < SIDE / 2 ? 0.9 : 0.45;
      argb[i] =
          0xFF000000 | new LinearRgb(paint * light, 0.8 * paint * light, paint).encode().toPacked();
    }
    return new ArgbPhoto(SIDE, SIDE, argb, RgbSpace.SRGB);
  }

  // Blue sees no fall of light, red and green see the same; each area has a colour of its own.
  @Test
  void eachChannelHasItsFieldWhateverColourTheAreasHave() {
    Illumination light =
        Illumination.fittedTo(
            twoPaints(), List.of(new Region(0, 0, SIDE, 100), new Region(0, 100, SIDE, 100)));

    assertThat(light.isEven()).isFalse();
    double sum = 0;
    for (int x = 10; x < SIDE; x += 20) {
      for (int y = 10; y < SIDE; y += 20) {
        LinearRgb at = light.at(x, y);
        // 8-bit steps are 1 % of the darker paint's light, and are averaged.
        assertThat(at.red() / light.at(100, 100).red())
            .isCloseTo(fall(x, y) / fall(100, 100), within(0.005));
        assertThat(at.green()).isCloseTo(at.red(), within(0.01));
        assertThat(at.blue()).isCloseTo(1, within(0.005));
        sum += Math.log(at.red());
      }
    }
    assertThat(Math.exp(sum / 100)).as("relative to the mean").isCloseTo(1, within(0.01));
  }

  // Areas that span less than half the picture tell a slope alone: about their middle it is right.
  @Test
  void smallAreasTellASlope() {
    Illumination light = Illumination.fittedTo(twoPaints(), List.of(new Region(60, 20, 80, 80)));

    double slope = Math.log(light.at(110, 60).red() / light.at(90, 60).red());
    assertThat(slope).isCloseTo(Math.log(fall(110, 60) / fall(90, 60)), within(0.01));
    // A plane in logarithms: as much again on the other side.
    assertThat(Math.log(light.at(130, 60).red() / light.at(110, 60).red()))
        .isCloseTo(slope, within(1e-9));
  }

  // Samples and cells alike are divided by the light at their place; shares stay.
  @Test
  void anEvenedSampleIsWhatEvenLightWouldShow() {
    ArgbPhoto photo = twoPaints();
    Illumination light = Illumination.fittedTo(photo, List.of(new Region(0, 0, SIDE, 100)));
    Region there = new Region(10, 20, 30, 30);

    RegionSample sample = light.sample(photo, there);

    double mean = 0;
    for (int x = 10; x < 40; x++) {
      for (int y = 20; y < 50; y++) {
        mean += 0.9 * fall(x + 0.5, y + 0.5) / light.at(x + 0.5, y + 0.5).red() / 900;
      }
    }
    assertThat(sample.mean().red()).isCloseTo(mean, within(0.005));
    assertThat(sample.shares()).isEqualTo(RegionSampler.sample(photo, there).shares());
    assertThat(sample.pixels().get(0).red()).isCloseTo(mean, within(0.02));
    assertThat(Illumination.even().at(3, 4)).isEqualTo(new LinearRgb(1, 1, 1));
  }
}
