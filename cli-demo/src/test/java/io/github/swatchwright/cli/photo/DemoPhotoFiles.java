package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.testdata.DemoPhoto;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the demo photo into {@code testdata/photos}, in sRGB and in Display P3. */
final class DemoPhotoFiles {
  static final String SRGB = "hull-plate.jpg";
  static final String DISPLAY_P3 = "hull-plate-display-p3.jpg";

  private DemoPhotoFiles() {}

  static BufferedImage image(boolean displayP3) {
    BufferedImage image =
        new BufferedImage(DemoPhoto.WIDTH, DemoPhoto.HEIGHT, BufferedImage.TYPE_INT_RGB);
    int[] argb = DemoPhoto.argb(displayP3);
    image.setRGB(0, 0, DemoPhoto.WIDTH, DemoPhoto.HEIGHT, argb, 0, DemoPhoto.WIDTH);
    return image;
  }

  static byte[] srgb() {
    return PhotoBytes.jpeg(image(false), 0.9f);
  }

  static byte[] displayP3() {
    byte[] profile = PhotoBytes.profileSegment(PhotoBytes.profile(RgbSpace.DISPLAY_P3));
    return PhotoBytes.jpeg(image(true), 0.9f, profile);
  }

  /**
   * Writes both.
   *
   * @param args the folder
   */
  public static void main(String... args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    Files.write(folder.resolve(SRGB), srgb());
    Files.write(folder.resolve(DISPLAY_P3), displayP3());
  }
}
