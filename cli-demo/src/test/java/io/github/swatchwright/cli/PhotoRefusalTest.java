package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.photo.PhotoBytes;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Broken, absurd and hostile photo files: one line, exit status 2, nothing on standard output. */
class PhotoRefusalTest {
  private static final int WIDTH = 64;
  private static final int HEIGHT = 48;

  @TempDir private Path folder = Path.of("");

  private static BufferedImage picture() {
    Random random = new Random(2);
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < WIDTH * HEIGHT; i++) {
      image.setRGB(i % WIDTH, i / WIDTH, 0x8A4B2A + random.nextInt(8) * 0x010101);
    }
    return image;
  }

  private static Map<String, byte[]> whole() {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("photo.png", PhotoBytes.png(picture()));
    files.put("photo.jpg", PhotoBytes.jpeg(picture()));
    files.put("photo.tif", tiff());
    files.put("photo.webp", PhotoBytes.flatWebp(WIDTH, HEIGHT, 0x8A4B2A));
    return files;
  }

  /** With its directory in front of the pixels. */
  private static byte[] tiff() {
    Raster inks = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, WIDTH, HEIGHT, 4, null);
    return PhotoBytes.cmykTiff(inks, PhotoBytes.inkProfile());
  }

  private Run sample(String name, byte[] bytes, String... options) throws IOException {
    Path path = folder.resolve(name);
    Files.write(path, bytes);
    return Run.of(
        Stream.concat(Stream.of("sample", path.toString()), Stream.of(options))
            .toArray(String[]::new));
  }

  private static void assertRefused(Run run, String words) {
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains(words);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> aFileCutOffAnywhereIsRefusedOrReadInFull() {
    return whole().entrySet().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getKey(),
                    () -> {
                      for (int part = 1; part < 8; part++) {
                        byte[] cut =
                            Arrays.copyOf(file.getValue(), file.getValue().length * part / 8);
                        Run run = sample(file.getKey(), cut);
                        // A flat WebP has all its pixels in its first bytes.
                        if (run.status() != 0 || !file.getKey().endsWith("webp")) {
                          assertThat(run.status()).as("part %d: %s", part, run.out()).isEqualTo(2);
                          assertThat(run.err().lines()).hasSize(1);
                        }
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> aHeaderOfGigapixelsIsRefusedWithoutReadingOn() {
    return whole().entrySet().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getKey(),
                    () -> {
                      byte[] bomb = enlarged(file.getKey(), file.getValue().clone());
                      assertRefused(sample(file.getKey(), bomb), "pixels, must have at most");
                    }));
  }

  /** The size in the header set to 100,000 × 100,000, or the most that the format can state. */
  private static byte[] enlarged(String name, byte[] file) {
    ByteBuffer bytes = ByteBuffer.wrap(file);
    switch (name) {
      case "photo.png" -> {
        bytes.putInt(16, 100_000).putInt(20, 100_000);
        CRC32 crc = new CRC32();
        crc.update(file, 12, 17);
        bytes.putInt(29, (int) crc.getValue());
      }
      case "photo.jpg" -> {
        int at = 2;
        while ((bytes.getShort(at) & 0xFFFF) != 0xFFC0) {
          at += 2 + (bytes.getShort(at + 2) & 0xFFFF);
        }
        bytes.putShort(at + 5, (short) 65_500).putShort(at + 7, (short) 65_500);
      }
      case "photo.tif" -> bytes.putInt(18, 100_000).putInt(30, 100_000);
      default -> {
        return PhotoBytes.flatWebp(16_384, 16_384, 0x8A4B2A);
      }
    }
    return file;
  }

  @Test
  void aWholePictureThatIsTooLargeToDecodeIsRefusedButAPartIsRead() throws IOException {
    byte[] large = PhotoBytes.flatWebp(10_000, 10_000, 0x8A4B2A);
    assertRefused(sample("large.webp", large), "has more than 64000000 pixels");
  }

  @Test
  void absurdProfilesAreRefused() throws IOException {
    byte[] png = PhotoBytes.png(picture());
    byte[] vast = PhotoBytes.profileChunk(new byte[40_000_000]);
    assertRefused(
        sample("vast.png", PhotoBytes.withChunk(png, "iCCP", vast)), "has a broken colour profile");
    byte[] noise = new byte[3000];
    new Random(1).nextBytes(noise);
    assertRefused(sample("noise.png", PhotoBytes.withChunk(png, "iCCP", noise)), "broken");
    byte[] profile = PhotoBytes.inkProfile();
    ByteBuffer.wrap(profile).putInt(128, Integer.MAX_VALUE);
    byte[] jpeg = PhotoBytes.jpeg(picture(), PhotoBytes.profileSegments(profile));
    assertRefused(sample("tags.jpg", jpeg), "colour profile");
  }

  @Test
  void textNoiseAndNothingAreNoPhotos() throws IOException {
    assertRefused(sample("empty.jpg", new byte[0]), "is no picture that can be read");
    assertRefused(sample("text.jpg", "a note".getBytes(StandardCharsets.UTF_8)), "is no picture");
    byte[] noise = new byte[5000];
    new Random(3).nextBytes(noise);
    assertRefused(sample("noise.jpg", noise), "is no picture");
    assertRefused(Run.of("sample", folder.toString()), "there is no file");
    byte[] single = PhotoBytes.flatWebp(1, 1, 0x808080);
    assertRefused(sample("single.webp", single, "--colours"), "tells no colour");
  }
}
