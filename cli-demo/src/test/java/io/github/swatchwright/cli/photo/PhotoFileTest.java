package io.github.swatchwright.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import io.github.swatchwright.testdata.ExternalCheck;
import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One scene of six invented colours, saved in the ways in which cameras and programs save. None is
 * darker than L* 35: below that, one 8-bit step of a channel, which JPEG rounds to, nears ΔE00 1.
 */
class PhotoFileTest {
  private static final ExternalCheck LITTLE_CMS =
      ExternalCheck.against(
          "Little CMS 2.14", "Display P3 and Adobe RGB pixels to CIELAB under D50, in ΔE00");

  static final List<Srgb> SCENE =
      Stream.of("#8A4B2A", "#C48A2C", "#4E6078", "#B8B4A8", "#5A6E3C", "#5E5048")
          .map(Srgb::parse)
          .toList();
  private static final int SIDE = 32;

  /** Well below what is seen; dithered 8-bit steps leave about 0.1. */
  private static final double LOSSLESS = 0.5;

  private static final double JPEG = 1.0;

  /** Noise of a camera in good light, sd of an encoded channel. */
  private static final double GRAIN = 2.0 / 255;

  @TempDir private Path folder = Path.of("");

  /**
   * With a photo's grain in 8 bits: without it, whole 8-bit steps of dark colours reach ΔE00 0.8.
   */
  private static int level(int patch, int channel, RgbSpace space, int highest, Random noise) {
    double[] linear = space.linearOf(SCENE.get(patch).toXyz());
    double grain = highest == 255 ? GRAIN * noise.nextGaussian() : 0;
    return (int) Math.round(highest * (space.encode(linear[channel]) + grain));
  }

  /** The scene, stored so that the orientation turns it upright. */
  private static BufferedImage scene(RgbSpace space, int orientation) {
    int w = SCENE.size() * SIDE;
    int h = SIDE;
    Random noise = new Random(orientation);
    boolean exchanged = orientation >= 5;
    BufferedImage image =
        new BufferedImage(exchanged ? h : w, exchanged ? w : h, BufferedImage.TYPE_3BYTE_BGR);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int rgb = 0;
        for (int channel = 0; channel < 3; channel++) {
          rgb = rgb << 8 | level(x / SIDE, channel, space, 255, noise);
        }
        int mirroredX = w - 1 - x;
        int mirroredY = h - 1 - y;
        switch (orientation) {
          case 1 -> image.setRGB(x, y, rgb);
          case 2 -> image.setRGB(mirroredX, y, rgb);
          case 3 -> image.setRGB(mirroredX, mirroredY, rgb);
          case 4 -> image.setRGB(x, mirroredY, rgb);
          case 5 -> image.setRGB(y, x, rgb);
          case 6 -> image.setRGB(y, mirroredX, rgb);
          case 7 -> image.setRGB(mirroredY, mirroredX, rgb);
          default -> image.setRGB(mirroredY, x, rgb);
        }
      }
    }
    return image;
  }

  private Lab sampled(byte[] file, int patch) throws IOException {
    Path path = folder.resolve("photo");
    Files.write(path, file);
    PhotoFile photo = PhotoFile.open(path);
    assertThat(photo.width()).isEqualTo(SCENE.size() * SIDE);
    Region middle = new Region(patch * SIDE + SIDE / 4, SIDE / 4, SIDE / 2, SIDE / 2);
    return RegionSampler.sample(photo, middle).mean().toXyz().toLab();
  }

  private void assertScene(byte[] file, double tolerance) throws IOException {
    for (int patch = 0; patch < SCENE.size(); patch++) {
      Lab truth = SCENE.get(patch).toLab();
      assertThat(Ciede2000.deltaE(sampled(file, patch), truth))
          .as("ΔE00 of patch %d", patch)
          .isLessThan(tolerance);
    }
  }

  @Test
  void readsAnUntaggedPngAsSrgb() throws IOException {
    assertScene(PhotoBytes.png(scene(RgbSpace.SRGB, 1)), LOSSLESS);
  }

  @Test
  void readsADisplayP3Png() throws IOException {
    byte[] png = PhotoBytes.png(scene(RgbSpace.DISPLAY_P3, 1));
    byte[] chunk = PhotoBytes.profileChunk(PhotoBytes.profile(RgbSpace.DISPLAY_P3));
    assertScene(PhotoBytes.withChunk(png, "iCCP", chunk), LOSSLESS);
  }

  @Test
  void readsADisplayP3Jpeg() throws IOException {
    byte[] segment = PhotoBytes.profileSegment(PhotoBytes.profile(RgbSpace.DISPLAY_P3));
    assertScene(PhotoBytes.jpeg(scene(RgbSpace.DISPLAY_P3, 1), segment), JPEG);
  }

  @Test
  void readsAnAdobeRgbTiffOfSixteenBits() throws IOException {
    BufferedImage image = PhotoBytes.deepImage(SCENE.size() * SIDE, SIDE, RgbSpace.ADOBE_RGB);
    Random noise = new Random(16);
    for (int y = 0; y < SIDE; y++) {
      for (int x = 0; x < SCENE.size() * SIDE; x++) {
        for (int channel = 0; channel < 3; channel++) {
          int level = level(x / SIDE, channel, RgbSpace.ADOBE_RGB, 65535, noise);
          image.getRaster().setSample(x, y, channel, level);
        }
      }
    }
    assertScene(PhotoBytes.tiff(image), LOSSLESS / 5);
  }

  @ParameterizedTest(name = "EXIF orientation {0}")
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void turnsAPhotoUpright(int orientation) throws IOException {
    byte[] segment = PhotoBytes.orientationSegment(orientation);
    assertScene(PhotoBytes.jpeg(scene(RgbSpace.SRGB, orientation), segment), JPEG);
  }

  @Test
  void readsAWebp() throws IOException {
    Path path = folder.resolve("flat.webp");
    Files.write(path, PhotoBytes.flatWebp(40, 30, 0x8A4B2A));
    PhotoFile photo = PhotoFile.open(path);

    assertThat(photo.width()).isEqualTo(40);
    Srgb mean = RegionSampler.sample(photo, new Region(0, 0, 40, 30)).mean().encode();
    assertThat(mean.toHex()).isEqualTo("#8A4B2A");
  }

  @Test
  void sixteenBitsOfAPngAreKept() throws IOException {
    BufferedImage image = PhotoBytes.deepImage(16, 16, RgbSpace.SRGB);
    for (int i = 0; i < 256; i++) {
      image.getRaster().setPixel(i % 16, i / 16, new int[] {0x8A40, 0x4B20, 0x2A10});
    }
    Path path = folder.resolve("deep.png");
    Files.write(path, PhotoBytes.png(image));
    Srgb mean =
        RegionSampler.sample(PhotoFile.open(path), new Region(0, 0, 16, 16)).mean().encode();

    // A tenth of a step of 8 bits; the quarter step that is looked for would be rounded off.
    assertThat(255 * mean.red()).isCloseTo(0x8A40 / 257.0, within(0.1));
    assertThat(255 * mean.green()).isCloseTo(0x4B20 / 257.0, within(0.1));
    assertThat(255 * mean.blue()).isCloseTo(0x2A10 / 257.0, within(0.1));
  }

  @Test
  void aGreyPngIsNotTakenForLinear() throws IOException {
    BufferedImage image = new BufferedImage(16, 16, BufferedImage.TYPE_BYTE_GRAY);
    for (int i = 0; i < 256; i++) {
      image.getRaster().setSample(i % 16, i / 16, 0, 118);
    }
    Path path = folder.resolve("grey.png");
    Files.write(path, PhotoBytes.png(image));
    PhotoFile photo = PhotoFile.open(path);

    Srgb mean = RegionSampler.sample(photo, new Region(0, 0, 16, 16)).mean().encode();
    assertThat(mean.toHex()).isEqualTo("#767676");
  }

  @Test
  @Tag("external")
  @DisplayName("Display P3 and Adobe RGB pixels as liblcms2 2.14 converts them (fixture)")
  void agreesWithLittleCms() throws IOException {
    String fixture = "/io/github/swatchwright/testdata/profile-conversions-lcms.csv";
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(PhotoFileTest.class.getResourceAsStream(fixture)),
                StandardCharsets.UTF_8))) {
      for (String line : reader.lines().filter(line -> !line.startsWith("#")).skip(1).toList()) {
        String[] cells = line.split(",", -1);
        RgbSpace space = cells[0].equals("p3") ? RgbSpace.DISPLAY_P3 : RgbSpace.ADOBE_RGB;
        int rgb =
            Integer.parseInt(cells[1]) << 16
                | Integer.parseInt(cells[2]) << 8
                | Integer.parseInt(cells[3]);
        BufferedImage image = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 64; i++) {
          image.setRGB(i % 8, i / 8, rgb);
        }
        byte[] chunk = PhotoBytes.profileChunk(PhotoBytes.profile(space));
        Path path = folder.resolve("one.png");
        Files.write(path, PhotoBytes.withChunk(PhotoBytes.png(image), "iCCP", chunk));
        Lab lab =
            RegionSampler.sample(PhotoFile.open(path), new Region(0, 0, 8, 8))
                .mean()
                .toXyz()
                .adaptTo(WhitePoint.D50)
                .toLab();
        Lab lcms =
            new Lab(
                Double.parseDouble(cells[4]),
                Double.parseDouble(cells[5]),
                Double.parseDouble(cells[6]),
                WhitePoint.D50);
        // Both work with 16-bit steps and D50 of four digits.
        LITTLE_CMS.atMost(Ciede2000.deltaE(lab, lcms), LOSSLESS / 2, line);
      }
    }
  }
}
