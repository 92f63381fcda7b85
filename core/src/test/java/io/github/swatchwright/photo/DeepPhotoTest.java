package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The same picture in 8 and in 16 bits a channel must come to the same. */
class DeepPhotoTest {
  private static final int WIDTH = 210;
  private static final int HEIGHT = 150;
  private static final Region INNER = new Region(7, 5, 190, 140);
  private static final ArgbPhoto SHALLOW = photo();
  private static final DeepPhoto DEEP = new DeepPhoto(SHALLOW);

  /**
   * Rust, grey and a strong cyan, with grain; holes, highlights, shadows and stray pixels in it.
   */
  private static ArgbPhoto photo() {
    Random random = new Random(11);
    int[] kinds = {0xFFFFFF, 0x070707, 0x050107, 0x00F0A0, 0xFE2020};
    int[] argb = new int[WIDTH * HEIGHT];
    for (int i = 0; i < argb.length; i++) {
      int x = i % WIDTH;
      int colour = x < 70 ? 0x8A4B2A : x < 140 ? 0x707880 : 0x0190A8;
      int packed = 0xFF;
      for (int shift = 16; shift >= 0; shift -= 8) {
        int level = (colour >> shift & 0xFF) + random.nextInt(7) - 3;
        packed = packed << 8 | Math.max(0, level);
      }
      argb[i] = random.nextInt(12) == 0 ? 0xFF000000 | kinds[random.nextInt(5)] : packed;
      argb[i] = random.nextInt(40) == 0 ? argb[i] & 0x80FFFFFF : argb[i];
    }
    return new ArgbPhoto(WIDTH, HEIGHT, argb, RgbSpace.SRGB);
  }

  /** 257·level ÷ 65535 and level ÷ 255 differ in their last digit. */
  private static Offset<Double> digits() {
    return within(1e-12);
  }

  private static void assertSame(LinearRgb one, LinearRgb other) {
    assertThat(one.red()).isCloseTo(other.red(), digits());
    assertThat(one.green()).isCloseTo(other.green(), digits());
    assertThat(one.blue()).isCloseTo(other.blue(), digits());
  }

  @Test
  void aSampleIsTheSame() {
    RegionSample shallow = RegionSampler.sample(SHALLOW, INNER);
    RegionSample deep = RegionSampler.sample(DEEP, INNER);

    assertSame(deep.mean(), shallow.mean());
    assertThat(deep.shares()).isEqualTo(shallow.shares());
    assertThat(deep.pixels()).hasSameSizeAs(shallow.pixels());
    double green = 0;
    for (int i = 0; i < deep.pixels().size(); i++) {
      assertSame(deep.pixels().get(i), shallow.pixels().get(i));
      green += deep.pixels().get(i).green() / deep.pixels().size();
    }
    // Of some thousand pixels drawn, against the mean without strays.
    assertThat(green).isCloseTo(deep.mean().green(), within(0.02));
  }

  /** The definitions, one pixel at a time: clipped from 254, black below 8, crushed up to 1. */
  @Test
  void theSharesAreThoseOfACountByHand() {
    int[] counts = new int[4];
    int used = 0;
    for (int y = INNER.y(); y < INNER.y() + INNER.height(); y++) {
      for (int x = INNER.x(); x < INNER.x() + INNER.width(); x++) {
        int p = rgb(x, y);
        List<Integer> levels = List.of(p >> 16 & 0xFF, p >> 8 & 0xFF, p & 0xFF);
        if (p >>> 24 < 255) {
          counts[0]++;
        } else if (levels.stream().anyMatch(level -> level >= 254)) {
          counts[1]++;
        } else if (levels.stream().allMatch(level -> level < 8)) {
          counts[2]++;
        } else {
          used++;
          counts[3] += levels.stream().anyMatch(level -> level <= 1) ? 1 : 0;
        }
      }
    }
    PixelShares shares = RegionSampler.sample(SHALLOW, INNER).shares();
    double all = INNER.pixels();
    assertThat(shares.transparent()).isEqualTo(counts[0] / all);
    assertThat(shares.clipped()).isEqualTo(counts[1] / all).isPositive();
    assertThat(shares.nearBlack()).isEqualTo(counts[2] / all).isPositive();
    assertThat(shares.crushed()).isEqualTo(counts[3] / all).isPositive();
    assertThat(shares.used() + shares.stray()).isCloseTo(used / all, digits());
  }

  private static int rgb(int x, int y) {
    int[] found = new int[1];
    SHALLOW.read(
        new Region(x, y, 1, 1),
        new PixelRows() {
          @Override
          public void argb(int[] argb, int offset, int count) {
            found[0] = argb[offset];
          }

          @Override
          public void deepArgb(long[] argb, int offset, int count) {
            throw new IllegalStateException("the picture has 8 bits a channel");
          }
        });
    return found[0];
  }

  @Test
  void cellsAreTheSameAndEachTheMeanOfItsUsablePixels() {
    List<RegionCells.Cell> shallow = RegionCells.of(SHALLOW, INNER);
    List<RegionCells.Cell> deep = RegionCells.of(DEEP, INNER);

    assertThat(deep).hasSameSizeAs(shallow).hasSizeGreaterThan(1000);
    int crushed = 0;
    for (int i = 0; i < deep.size(); i++) {
      assertSame(deep.get(i).light(), shallow.get(i).light());
      assertThat(deep.get(i).x()).isEqualTo(shallow.get(i).x());
      assertThat(deep.get(i).y()).isEqualTo(shallow.get(i).y());
      assertThat(deep.get(i).crushed()).isEqualTo(shallow.get(i).crushed());
      crushed += shallow.get(i).crushed() ? 1 : 0;
      assertSame(shallow.get(i).light(), byHand(shallow.get(i)));
    }
    // The strong cyan has red levels of 0 to 4: two in five are up to 1, with those cut off at 0.
    assertThat(crushed).isBetween(deep.size() / 20, deep.size() / 2);
  }

  /** Cells of the region's shorter side ÷ 64, so 2 × 2 pixels about their middle. */
  private static LinearRgb byHand(RegionCells.Cell cell) {
    List<LinearRgb> usable = new ArrayList<>();
    for (int y = (int) cell.y() - 1; y <= cell.y(); y++) {
      for (int x = (int) cell.x() - 1; x <= cell.x(); x++) {
        int p = rgb(x, y);
        int r = p >> 16 & 0xFF;
        int g = p >> 8 & 0xFF;
        int b = p & 0xFF;
        int highest = Math.max(r, Math.max(g, b));
        if (p >>> 24 == 255 && highest < 254 && highest >= 8) {
          usable.add(new LinearRgb(light(r), light(g), light(b)));
        }
      }
    }
    assertThat(usable).hasSizeGreaterThanOrEqualTo(2);
    return new LinearRgb(
        usable.stream().mapToDouble(LinearRgb::red).average().orElseThrow(),
        usable.stream().mapToDouble(LinearRgb::green).average().orElseThrow(),
        usable.stream().mapToDouble(LinearRgb::blue).average().orElseThrow());
  }

  private static double light(int level) {
    return RgbSpace.SRGB.decode(level / 255.0);
  }

  @Test
  void shadesAndChartsAreTheSame() {
    ShadeSearch three = new ShadeSearch(OptionalInt.of(3), 1);
    PhotoCorrection nothing = PhotoCorrection.ofNothing();
    List<RegionShade> shallow = three.in(SHALLOW, INNER, Illumination.even(), nothing);
    List<RegionShade> deep = three.in(DEEP, INNER, Illumination.even(), nothing);
    assertThat(deep).hasSize(3);
    for (int i = 0; i < 3; i++) {
      assertThat(deep.get(i).share()).isEqualTo(shallow.get(i).share());
      // The cyan is the one that is stronger than the file can hold.
      boolean isCyan = shallow.get(i).colour().lab().a() < -15;
      assertThat(deep.get(i).colour().shares().crushed() > 0.1).isEqualTo(isCyan);
      assertThat(deep.get(i).colour().lab().l())
          .isCloseTo(shallow.get(i).colour().lab().l(), within(1e-9));
    }
    Chart chart = Chart.ofGrid(6, Collections.nCopies(18, Lab.ofD65(50, 0, 0)));
    List<ChartPatch> shallowPatches = chart.seenIn(SHALLOW, Illumination.even(), INNER);
    List<ChartPatch> deepPatches = chart.seenIn(DEEP, Illumination.even(), INNER);
    assertThat(deepPatches).hasSameSizeAs(shallowPatches);
    for (int i = 0; i < deepPatches.size(); i++) {
      assertSame(deepPatches.get(i).seen(), shallowPatches.get(i).seen());
    }
  }

  @Test
  void rowsOfBothDepthsInOneRegionAreRefused() {
    RegionSampler shallow = new RegionSampler(INNER, RgbSpace.SRGB);
    SHALLOW.read(INNER, shallow);
    assertThatIllegalStateException()
        .isThrownBy(() -> DEEP.read(INNER, shallow))
        .withMessage("the region has rows of 8 bits a channel already");
    RegionSampler deep = new RegionSampler(INNER, RgbSpace.SRGB);
    DEEP.read(INNER, deep);
    assertThatIllegalStateException()
        .isThrownBy(() -> SHALLOW.read(INNER, deep))
        .withMessage("the region has rows of 16 bits a channel already");
  }
}
