package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.photo.Illumination;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PhotoCorrection;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import io.github.swatchwright.photo.ShadeSearch;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * Prints how long a photo of 48 megapixels takes to decode by the platform's reader alone, and to
 * sample as a whole, upright and turned, in sRGB and through a profile. To be run with {@code
 * -Xmx512m}; times are processor time, the best of three.
 */
final class LargePhotoTimes {
  private static final int WIDTH = 8000;
  private static final int HEIGHT = 6000;

  private LargePhotoTimes() {}

  /** What is timed. */
  private interface Work {
    void run() throws IOException;
  }

  private static byte[] photo(byte[]... segments) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
    Random random = new Random(48);
    int[] row = new int[WIDTH];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        row[x] = 0x8A4B2A + 0x010101 * (random.nextInt(24) + x / 100 % 20);
      }
      image.setRGB(0, y, WIDTH, 1, row, 0, WIDTH);
    }
    return PhotoBytes.jpeg(image, 0.9f, segments);
  }

  private static double seconds(Work work) throws IOException {
    double best = Double.MAX_VALUE;
    for (int i = 0; i < 3; i++) {
      long start = processorTime();
      work.run();
      best = Math.min(best, (processorTime() - start) / 1e9);
    }
    return best;
  }

  /** Of this thread, so that other work on the machine counts less. */
  private static long processorTime() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static void print(String what, double seconds, double decoding) {
    System.out.printf(
        Locale.ROOT, "%-36s %6.2f s  %5.2f of decoding%n", what, seconds, seconds / decoding);
  }

  private static void sample(Path file) {
    Photo photo = PhotoFile.open(file);
    RegionSampler.sample(photo, new Region(0, 0, photo.width(), photo.height()));
  }

  private static void shades(Path file) {
    Photo photo = PhotoFile.open(file);
    new ShadeSearch(OptionalInt.empty(), 1)
        .in(
            photo,
            new Region(0, 0, photo.width(), photo.height()),
            Illumination.even(),
            PhotoCorrection.ofNothing());
  }

  /**
   * Measures.
   *
   * @param args a folder for the photos
   */
  public static void main(String... args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    Path plain = folder.resolve("plain.jpg");
    Path turned = folder.resolve("turned.jpg");
    Path wide = folder.resolve("display-p3.jpg");
    if (!Files.exists(wide)) {
      byte[] jpeg = photo();
      Files.write(plain, jpeg);
      Files.write(turned, PhotoBytes.withSegments(jpeg, PhotoBytes.orientationSegment(6)));
      byte[] profile = PhotoBytes.profileSegment(PhotoBytes.profile(RgbSpace.DISPLAY_P3));
      Files.write(wide, PhotoBytes.withSegments(jpeg, profile));
    }
    double decoding = seconds(() -> ImageIO.read(plain.toFile()));
    print("decoded by the platform's reader", decoding, decoding);
    print("sampled", seconds(() -> sample(plain)), decoding);
    print("sampled, turned upright", seconds(() -> sample(turned)), decoding);
    print("sampled, Display P3", seconds(() -> sample(wide)), decoding);
    print("its shades", seconds(() -> shades(plain)), decoding);
  }
}
