package io.github.swatchwright.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import io.github.swatchwright.testdata.Mutations;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spoilt pictures are read or refused by one line, whatever is broken in them. */
class PhotoHeaderFuzzTest {
  private static final int INPUTS = 1500;
  private static final List<String> WORDS =
      List.of(
          "\u0000\u0000\u0000\u0000",
          "\u007f\u007f\u007f\u007f",
          "Exif\u0000\u0000",
          "IHDR",
          "iCCP",
          "MM\u0000*");

  @Test
  void spoiltPicturesAreReadOrRefused(@TempDir Path folder) throws IOException {
    BufferedImage image = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
    byte[] profile = PhotoBytes.profile(RgbSpace.DISPLAY_P3);
    List<byte[]> seeds =
        List.of(
            PhotoBytes.png(image),
            PhotoBytes.withChunk(PhotoBytes.png(image), "iCCP", PhotoBytes.profileChunk(profile)),
            PhotoBytes.tiff(image),
            PhotoBytes.jpeg(image),
            PhotoBytes.jpeg(
                image, PhotoBytes.orientationSegment(6), PhotoBytes.profileSegment(profile)));
    Mutations mutations = new Mutations(seeds, WORDS, 4);
    Path path = folder.resolve("spoilt");
    int read = 0;
    for (int i = 0; i < INPUTS; i++) {
      Files.write(path, mutations.next());
      try {
        RegionSampler.sample(PhotoFile.open(path), new Region(0, 0, 8, 8));
        read++;
      } catch (IllegalArgumentException refusal) {
        assertThat(refusal).message().isNotBlank();
      }
    }
    assertThat(read).isBetween(1, INPUTS - 1);
  }
}
