package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.Srgb;
import java.util.Arrays;
import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;

class RegionSamplerTest {
  private static final int SIDE = 64;
  private static final Region ALL = new Region(0, 0, SIDE, SIDE);

  private static ArgbPhoto photo(IntBinaryOperator argbOfXAndY) {
    int[] argb = new int[SIDE * SIDE];
    for (int i = 0; i < argb.length; i++) {
      argb[i] = argbOfXAndY.applyAsInt(i % SIDE, i / SIDE);
    }
    return new ArgbPhoto(SIDE, SIDE, argb, RgbSpace.SRGB);
  }

  private static ArgbPhoto checkerboard(int one, int other) {
    return photo((x, y) -> (x + y) % 2 == 0 ? one : other);
  }

  private static int hex(RegionSample sample) {
    return sample.mean().encode().toPacked();
  }

  @Test
  void blackAndWhiteSquaresAverageTo188AndNotTo128() {
    RegionSampler sampler = RegionSampler.ofEverything(ALL, RgbSpace.SRGB);
    checkerboard(0xFF000000, 0xFFFFFFFF).read(ALL, sampler);

    assertThat(hex(sampler.result())).isEqualTo(0xBCBCBC);
  }

  @Test
  void bothColoursOfATextureAreKept() {
    RegionSample sample = RegionSampler.sample(checkerboard(0xFF303030, 0xFFE0E0E0), ALL);

    double light = (RgbSpace.SRGB.decode(0x30 / 255.0) + RgbSpace.SRGB.decode(0xE0 / 255.0)) / 2;
    assertThat(sample.mean().green()).isCloseTo(light, within(1e-12));
    assertThat(sample.shares().used()).isEqualTo(1);
  }

  @Test
  void highlightsShadowsHolesAndStrayPixelsAreLeftOutAndCounted() {
    int[] kinds = {0xFFFFFFFF, 0xFF030303, 0x80406080, 0xFFC0C0C0};
    RegionSample sample =
        RegionSampler.sample(
            photo((x, y) -> x % 16 < 4 && y % 4 == 0 ? kinds[x % 16] : 0xFF406080), ALL);

    assertThat(hex(sample)).isEqualTo(0x406080);
    PixelShares shares = sample.shares();
    assertThat(shares.clipped()).isEqualTo(1.0 / 64);
    assertThat(shares.nearBlack()).isEqualTo(1.0 / 64);
    assertThat(shares.transparent()).isEqualTo(1.0 / 64);
    assertThat(shares.stray()).isEqualTo(1.0 / 64);
    assertThat(shares.used()).isEqualTo(60.0 / 64);
  }

  @Test
  void strongColoursWithAnEmptyChannelAreMarkedAsCrushed() {
    assertThat(RegionSampler.sample(photo((x, y) -> 0xFF00A0A0), ALL).shares().isCrushed())
        .isTrue();
    assertThat(RegionSampler.sample(photo((x, y) -> 0xFF08A0A0), ALL).shares().isCrushed())
        .isFalse();
  }

  @Test
  void sixteenBitsAChannelAreKept() {
    RegionSampler sampler = new RegionSampler(ALL, RgbSpace.WIDE);
    long[] row = new long[SIDE];
    Arrays.fill(row, 0xFFFF_8001_8001_8001L);
    for (int y = 0; y < SIDE; y++) {
      sampler.deepArgb(row, 0, SIDE);
    }

    double light = RgbSpace.WIDE.decode(0x8001 / 65535.0);
    // The matrices to XYZ and back lose a few units in the last place.
    assertThat(sampler.result().mean().green()).isCloseTo(light, within(1e-12));
  }

  @Test
  void theSameColourComesOutOfEverySpace() {
    Srgb rust = Srgb.parse("#8A4B2A");
    for (RgbSpace space : new RgbSpace[] {RgbSpace.DISPLAY_P3, RgbSpace.ADOBE_RGB}) {
      double[] linear = space.linearOf(rust.toXyz());
      int packed = 0xFF;
      for (double channel : linear) {
        packed = packed << 8 | (int) Math.round(255 * space.encode(channel));
      }
      int[] argb = new int[SIDE * SIDE];
      Arrays.fill(argb, packed);
      RegionSample sample = RegionSampler.sample(new ArgbPhoto(SIDE, SIDE, argb, space), ALL);

      // Half an 8-bit step of each channel.
      assertThat(sample.mean().encode().red()).isCloseTo(rust.red(), within(0.004));
      assertThat(sample.mean().encode().green()).isCloseTo(rust.green(), within(0.004));
      assertThat(sample.mean().encode().blue()).isCloseTo(rust.blue(), within(0.004));
    }
  }

  @Test
  void aRegionThatTellsNoColourIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RegionSampler.sample(photo((x, y) -> 0xFFFFFFFF), ALL))
        .withMessageStartingWith(
            "the region 0,0,64,64 tells no colour: it is overexposed or pure white, so that its"
                + " brightness is lost; of its pixels 0 % usable, 100 % clipped");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RegionSampler.sample(photo((x, y) -> 0xFF808080), new Region(3, 3, 1, 1)))
        .withMessageContaining("it has fewer than 4 pixels");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RegionSampler.sample(photo((x, y) -> 0xFF010101), ALL))
        .withMessageContaining("it is too dark to tell from noise");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RegionSampler.sample(photo((x, y) -> 0x808080), ALL))
        .withMessageContaining("it is transparent; of its pixels 0 % usable");
  }

  @Test
  void aPointerOverThePictureGetsAnAnswerWithoutExceptions() {
    assertThat(RegionSampler.trySample(photo((x, y) -> 0xFFFFFFFF), ALL)).isEmpty();
    assertThat(RegionSampler.trySample(photo((x, y) -> 0xFF00A0A0), ALL))
        .hasValueSatisfying(
            sample -> assertThat(sample.mean().encode().toHex()).isEqualTo("#00A0A0"));
  }

  @Test
  void pixelsWithoutAnAlphaByteAreOpaqueWhenSaidSo() {
    int[] rgb = new int[SIDE * SIDE];
    Arrays.fill(rgb, 0x00A0A0);
    ArgbPhoto photo = ArgbPhoto.opaque(SIDE, SIDE, rgb, RgbSpace.SRGB);
    assertThat(RegionSampler.sample(photo, ALL).mean().encode().toHex()).isEqualTo("#00A0A0");
  }

  @Test
  void aRegionOverTheEdgeIsRefusedAndItsInnerPartOffered() {
    // Rows of 40 pixels: read on beyond the edge, the region would wrap into the next rows.
    ArgbPhoto photo = new ArgbPhoto(40, 30, new int[40 * 30], RgbSpace.SRGB);
    for (Region over :
        new Region[] {new Region(30, 5, 20, 4), new Region(50, 5, 2, 2), new Region(5, 28, 4, 4)}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> RegionSampler.sample(photo, over))
          .withMessage(
              "the region '%s' reaches outside the picture, which is 40 x 30 pixels",
              over.toText());
      assertThatIllegalArgumentException()
          .isThrownBy(() -> photo.read(over, new RegionSampler(over, RgbSpace.SRGB)));
    }
    assertThat(new Region(30, 5, 20, 4).clippedTo(40, 30)).contains(new Region(30, 5, 10, 4));
    assertThat(new Region(5, 28, 4, 4).clippedTo(40, 30)).contains(new Region(5, 28, 4, 2));
    assertThat(new Region(50, 5, 2, 2).clippedTo(40, 30)).isEmpty();
  }

  @Test
  void aSquareAboutAPixelIsCutAtTheEdges() {
    assertThat(Region.around(20, 15, 4, 40, 30)).contains(new Region(16, 11, 9, 9));
    assertThat(Region.around(0, 29, 4, 40, 30)).contains(new Region(0, 25, 5, 5));
    assertThat(Region.around(39, 0, 0, 40, 30)).contains(new Region(39, 0, 1, 1));
    assertThat(Region.around(-1, 5, 4, 40, 30)).isEmpty();
    assertThat(Region.around(5, 30, 4, 40, 30)).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Region.around(5, 5, -1, 40, 30))
        .withMessage("reach is -1, must be within [0, 1000]");
  }

  @Test
  void regionsAreReadInPixelsAndPercent() {
    assertThat(Region.parse("10, 20,30,40", 100, 200)).isEqualTo(new Region(10, 20, 30, 40));
    assertThat(Region.parse("10%,10%,50%,25%", 100, 200)).isEqualTo(new Region(10, 20, 50, 50));
  }

  @Test
  void badRegionsAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Region.parse("1,1,0,5", 100, 100))
        .withMessage("the region '1,1,0,5' is empty, must be at least 1 pixel wide and high");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Region.parse("90,1,20,5", 100, 100))
        .withMessage(
            "the region '90,1,20,5' reaches outside the picture, which is 100 x 100 pixels");
    assertThatIllegalArgumentException().isThrownBy(() -> Region.parse("-1,0,5,5", 100, 100));
    assertThatIllegalArgumentException().isThrownBy(() -> Region.parse("NaN,0,5,5", 100, 100));
    assertThatIllegalArgumentException().isThrownBy(() -> Region.parse("a,0,5,5", 100, 100));
    assertThatIllegalArgumentException().isThrownBy(() -> Region.parse("1,2,3", 100, 100));
  }
}
