package io.github.swatchwright.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import io.github.swatchwright.testdata.ReferenceTable;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The scene of the other formats, in four inks. */
class CmykPhotoTest {
  private static final int SIDE = 32;
  private static final int WIDTH = PhotoFileTest.SCENE.size() * SIDE;

  /** What JPEG and eight bits may lose. */
  private static final double JPEG = 1.0;

  private static final double LOSSLESS = 0.5;

  @TempDir private Path folder = Path.of("");

  /** Ink amounts of the scene, 255 full, with a photo's grain. */
  private static WritableRaster inks() {
    WritableRaster raster =
        Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, WIDTH, SIDE, 4, null);
    Random noise = new Random(4);
    for (int y = 0; y < SIDE; y++) {
      for (int x = 0; x < WIDTH; x++) {
        Srgb srgb = PhotoFileTest.SCENE.get(x / SIDE);
        double[] channels = {srgb.red(), srgb.green(), srgb.blue()};
        for (int ink = 0; ink < 3; ink++) {
          double grainy = 255 * InkProfile.ink(channels[ink]) + 2 * noise.nextGaussian();
          raster.setSample(x, y, ink, (int) Math.max(0, Math.min(255, Math.round(grainy))));
        }
      }
    }
    return raster;
  }

  private static WritableRaster inverted(WritableRaster inks) {
    int[] samples = inks.getPixels(0, 0, inks.getWidth(), inks.getHeight(), (int[]) null);
    Arrays.setAll(samples, i -> 255 - samples[i]);
    inks.setPixels(0, 0, inks.getWidth(), inks.getHeight(), samples);
    return inks;
  }

  /** Luminance and colour differences (T.871) of the first three inks; black inverted. */
  private static WritableRaster ycck(WritableRaster inks) {
    for (int y = 0; y < inks.getHeight(); y++) {
      for (int x = 0; x < inks.getWidth(); x++) {
        double c = inks.getSample(x, y, 0);
        double m = inks.getSample(x, y, 1);
        double yellow = inks.getSample(x, y, 2);
        double luma = 0.299 * c + 0.587 * m + 0.114 * yellow;
        inks.setSample(x, y, 0, (int) Math.round(luma));
        inks.setSample(x, y, 1, (int) Math.round(128 + (yellow - luma) / 1.772));
        inks.setSample(x, y, 2, (int) Math.round(128 + (c - luma) / 1.402));
        inks.setSample(x, y, 3, 255 - inks.getSample(x, y, 3));
      }
    }
    return inks;
  }

  private static byte[] adobe(int transform) {
    return ByteBuffer.allocate(16)
        .putShort((short) 0xFFEE)
        .putShort((short) 14)
        .put("Adobe".getBytes(StandardCharsets.US_ASCII))
        .putShort((short) 100)
        .putInt(0)
        .put((byte) transform)
        .array();
  }

  private static byte[] profile() {
    return PhotoBytes.profileSegments(InkProfile.bytes());
  }

  private PhotoFile photo(byte[] file) throws IOException {
    Path path = folder.resolve("photo");
    Files.write(path, file);
    return PhotoFile.open(path);
  }

  private void assertScene(byte[] file, double tolerance) throws IOException {
    PhotoFile photo = photo(file);
    for (int patch = 0; patch < PhotoFileTest.SCENE.size(); patch++) {
      Region middle = new Region(patch * SIDE + SIDE / 4, SIDE / 4, SIDE / 2, SIDE / 2);
      Lab lab = RegionSampler.sample(photo, middle).mean().toXyz().toLab();
      Lab truth = PhotoFileTest.SCENE.get(patch).toLab();
      assertThat(Ciede2000.deltaE(lab, truth)).as("ΔE00 of patch %d", patch).isLessThan(tolerance);
    }
  }

  @Test
  void readsACmykJpegThroughItsProfile() throws IOException {
    assertScene(PhotoBytes.withSegments(PhotoBytes.jpeg(inks()), profile()), JPEG);
  }

  @Test
  void readsInvertedInksWhereAnAdobeSegmentIs() throws IOException {
    byte[] jpeg = PhotoBytes.jpeg(inverted(inks()));
    assertScene(PhotoBytes.withSegments(jpeg, adobe(0), profile()), JPEG);
  }

  @Test
  void readsInksAsLuminanceAndColourDifferences() throws IOException {
    byte[] jpeg = PhotoBytes.jpeg(ycck(inks()));
    assertScene(PhotoBytes.withSegments(jpeg, adobe(2), profile()), JPEG);
  }

  @Test
  void readsACmykTiffThroughItsProfile() throws IOException {
    assertScene(PhotoBytes.cmykTiff(inks(), InkProfile.bytes()), LOSSLESS);
  }

  @Test
  void refusesInksWithoutProfileAndWithAnotherOne() throws IOException {
    byte[] jpeg = PhotoBytes.jpeg(inks());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> photo(jpeg))
        .withMessageEndingWith(
            "is in CMYK without a colour profile, must have one or be saved as RGB");
    byte[] rgb = PhotoBytes.profileSegment(PhotoBytes.profile(RgbSpace.DISPLAY_P3));
    PhotoFile mismatched = photo(PhotoBytes.withSegments(jpeg, rgb));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RegionSampler.sample(mismatched, new Region(0, 0, 8, 8)))
        .withMessageEndingWith("has 4 channels, but a profile for 3");
  }

  @Test
  @DisplayName("inks as liblcms2 2.14 converts them through the same profile (fixture)")
  void agreesWithLittleCms() throws IOException {
    List<ReferenceTable.Row> rows = ReferenceTable.load("ink-conversions-lcms.csv").rows();
    assertThat(rows).hasSize(24);
    for (ReferenceTable.Row row : rows) {
      WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 16, 16, 4, null);
      double[] inks = row.numbers("cyan", "magenta", "yellow", "black");
      for (int i = 0; i < 256; i++) {
        raster.setPixel(i % 16, i / 16, inks);
      }
      PhotoFile photo = photo(PhotoBytes.cmykTiff(raster, InkProfile.bytes()));
      Lab lab =
          RegionSampler.sample(photo, new Region(0, 0, 16, 16))
              .mean()
              .toXyz()
              .adaptTo(WhitePoint.D50)
              .toLab();
      double[] lcms = row.numbers("L", "a", "b");
      Lab theirs = new Lab(lcms[0], lcms[1], lcms[2], WhitePoint.D50);
      // Both work in 16-bit steps and with a D50 of four digits.
      assertThat(Ciede2000.deltaE(lab, theirs)).as("%s", row).isLessThan(LOSSLESS / 2);
    }
  }
}
