package io.github.swatchwright.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.photo.ArgbPhoto;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.Region;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** What the picture shows where, found by looking at its pixels. */
class PreviewPictureTest {
  private static final int LEFT = 48;
  private static final int TOP = 26;
  private static final Lab GREY = Lab.ofD65(50, 0, 0);

  private static Photo plain(int width, int height) {
    int[] pixels = new int[width * height];
    Arrays.fill(pixels, 0xFF406080);
    return new ArgbPhoto(width, height, pixels, RgbSpace.SRGB);
  }

  private static PreviewPicture.Read read(String name, int x, int y) {
    return new PreviewPicture.Read(name, new Region(x, y, 40, 30), List.of(GREY), List.of(1.0));
  }

  private static BufferedImage picture(Photo photo, List<PreviewPicture.Read> reads)
      throws IOException {
    return ImageIO.read(new ByteArrayInputStream(PreviewPicture.png(photo, reads, List.of())));
  }

  /** How many pixels of a part of the picture are of that colour. */
  private static int count(BufferedImage image, int rgb, int x, int y, int width, int height) {
    int count = 0;
    for (int row = y; row < y + height; row++) {
      for (int column = x; column < x + width; column++) {
        count += (image.getRGB(column, row) & 0xFFFFFF) == rgb ? 1 : 0;
      }
    }
    return count;
  }

  /** Whether a part of the ground holds something light. */
  private static boolean light(BufferedImage image, int x, int y, int width, int height) {
    return IntStream.range(0, width * height)
        .anyMatch(i -> (image.getRGB(x + i % width, y + i / width) >> 8 & 0xFF) > 0xC0);
  }

  @Test
  void theGridCountsRoundNumbersOfThePhotosOwnPixels() throws IOException {
    // Twice as large as it is shown: a line for each 200 pixels of the photo is one for each 100.
    BufferedImage image = picture(plain(2000, 1200), List.of(read("", 30, 40)));
    int plain = 0x406080;
    for (int x = 100; x < 1000; x += 100) {
      assertThat(image.getRGB(LEFT + x, TOP + 250) & 0xFFFFFF).as("at %d", x).isNotEqualTo(plain);
      assertThat(image.getRGB(LEFT + x + 50, TOP + 250) & 0xFFFFFF).isEqualTo(plain);
    }
    // Words stand at all four sides: light on the dark ground about the photo.
    assertThat(light(image, LEFT, 0, 1000, TOP)).isTrue();
    assertThat(light(image, 0, TOP + 50, LEFT, 550)).isTrue();
    assertThat(light(image, LEFT, TOP + 606, 1000, 20)).isTrue();
    assertThat(light(image, LEFT + 1006, TOP, 38, 590)).isTrue();
  }

  @Test
  void tagsAndRegionsNeverCoverEachOther() throws IOException {
    List<PreviewPicture.Read> reads = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      reads.add(read("Paint with a long name " + i, 20 + 44 * i, 100));
    }
    BufferedImage image = picture(plain(600, 300), reads);
    for (int i = 0; i < 12; i++) {
      // Within each region, the photo is seen but for the grid.
      int seen = count(image, 0x406080, LEFT + 20 + 44 * i + 3, TOP + 103, 34, 24);
      assertThat(seen).as("region %d", i + 1).isGreaterThan(34 * 24 / 2);
    }
  }

  @Test
  void namesInAnyScriptAndManyRegionsAreTaken() throws IOException {
    List<PreviewPicture.Read> reads = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      reads.add(read(i % 2 == 0 ? "\u8D64 \uD83C\uDFA8" : "", 4 * i, 3 * i));
    }
    BufferedImage image = picture(plain(300, 200), reads);
    assertThat(image.getHeight()).isGreaterThan(TOP + 200 + 40 * 26 / 2);
  }
}
