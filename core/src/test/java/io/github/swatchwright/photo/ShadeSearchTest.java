package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Invented rust in patches with a photo's grain: what is there is known. */
class ShadeSearchTest {
  private static final int SIDE = 320;
  private static final Region ALL = new Region(0, 0, SIDE, SIDE);

  /** Sd of an encoded channel: a photo in poor light, about ΔE00 3 from pixel to pixel. */
  private static final double GRAIN = 6;

  private static final ShadeSearch BY_ITSELF = new ShadeSearch(OptionalInt.empty(), 1);

  /** Blocks of 16 × 16 pixels in those colours, dealt out by their shares in percent. */
  private static ArgbPhoto patches(List<String> colours, int... percent) {
    Random random = new Random(7);
    List<Integer> deck = new ArrayList<>();
    int blocks = SIDE / 16 * (SIDE / 16);
    for (int i = 0; i < percent.length; i++) {
      for (int n = 0; n < percent[i] * blocks / 100; n++) {
        deck.add(Srgb.parse(colours.get(i)).toPacked());
      }
    }
    Collections.shuffle(deck, random);
    int[] argb = new int[SIDE * SIDE];
    for (int i = 0; i < argb.length; i++) {
      int colour = deck.get(i / SIDE / 16 * (SIDE / 16) + i % SIDE / 16);
      int packed = 0xFF;
      for (int shift = 16; shift >= 0; shift -= 8) {
        double grainy = (colour >> shift & 0xFF) + GRAIN * random.nextGaussian();
        packed = packed << 8 | (int) Math.max(0, Math.min(255, Math.round(grainy)));
      }
      argb[i] = colour == 0xFFFFFF ? -1 : packed;
    }
    return new ArgbPhoto(SIDE, SIDE, argb, RgbSpace.SRGB);
  }

  private static void assertShade(RegionShade shade, String colour, double share) {
    // A mean of some thousand pixels errs by a hundredth of their grain; clamping at 0 adds a bit.
    assertThat(Ciede2000.deltaE(shade.colour().lab(), Srgb.parse(colour).toLab())).isLessThan(0.7);
    // Of 4,096 cells drawn from 6,400, two standard deviations are 0.012.
    assertThat(shade.share()).isCloseTo(share, within(0.02));
  }

  @Test
  void findsTheShadesThatAreThereAndTheirShares() {
    List<String> rust = List.of("#6B3A26", "#A4552A", "#4A3A34", "#C98A4B");
    List<RegionShade> shades =
        BY_ITSELF.in(patches(rust, 45, 30, 15, 10), ALL, Illumination.even(), new NoReference());

    assertThat(shades).hasSize(4);
    assertShade(shades.get(0), "#6B3A26", 0.45);
    assertShade(shades.get(1), "#A4552A", 0.30);
    assertShade(shades.get(2), "#4A3A34", 0.15);
    assertShade(shades.get(3), "#C98A4B", 0.10);
    assertThat(shades.stream().mapToDouble(RegionShade::share).sum()).isCloseTo(1, within(1e-12));
  }

  @Test
  void grainAloneIsOneShade() {
    List<RegionShade> shades =
        BY_ITSELF.in(patches(List.of("#8A4B2A"), 100), ALL, Illumination.even(), new NoReference());

    assertThat(shades).hasSize(1);
    assertShade(shades.get(0), "#8A4B2A", 1);
    // 16 pixels a cell: a quarter of the grain is left.
    assertThat(shades.get(0).colour().pixelSpread()).isBetween(0.5, 2.5);
  }

  @Test
  void shadesThatOneCantTellApartAreOne() {
    List<String> close = List.of("#8A4B2A", "#8C4D2B", "#3C5A78");
    List<RegionShade> shades =
        new ShadeSearch(OptionalInt.of(3), 1)
            .in(patches(close, 40, 30, 30), ALL, Illumination.even(), new NoReference());

    assertThat(shades).hasSize(2);
    assertThat(shades.get(0).share()).isCloseTo(0.7, within(0.02));
  }

  @Test
  void highlightsAreNoShade() {
    List<String> glint = List.of("#8A4B2A", "#FFFFFF");
    List<RegionShade> shades =
        BY_ITSELF.in(patches(glint, 75, 25), ALL, Illumination.even(), new NoReference());

    assertThat(shades).hasSize(1);
    assertShade(shades.get(0), "#8A4B2A", 1);
    assertThat(shades.get(0).colour().shares().clipped()).isCloseTo(0.25, within(1e-9));
  }

  @Test
  void theSameSeedGivesTheSameShades() {
    ArgbPhoto photo = patches(List.of("#6B3A26", "#A4552A", "#C98A4B"), 50, 30, 20);
    ShadeSearch five = new ShadeSearch(OptionalInt.of(5), 3);

    List<RegionShade> once = five.in(photo, ALL, Illumination.even(), new NoReference());
    List<RegionShade> again = five.in(photo, ALL, Illumination.even(), new NoReference());
    assertThat(again.stream().map(shade -> shade.colour().lab()).toList())
        .isEqualTo(once.stream().map(shade -> shade.colour().lab()).toList());
  }

  @Test
  void countsOutOfRangeAndRegionsWithoutColourAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ShadeSearch(OptionalInt.of(0), 1))
        .withMessage("the number of shades is 0, must be within [1, 24]");
    ArgbPhoto white = patches(List.of("#FFFFFF"), 100);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BY_ITSELF.in(white, ALL, Illumination.even(), new NoReference()))
        .withMessageContaining("tells no colour");
  }
}
