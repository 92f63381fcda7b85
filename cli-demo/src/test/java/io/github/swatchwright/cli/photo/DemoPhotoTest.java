package io.github.swatchwright.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import io.github.swatchwright.testdata.DemoPhoto;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class DemoPhotoTest {
  private static final Path FOLDER = Path.of("../testdata/photos");

  @Test
  void theFilesAreWhatTheGeneratorMakes() throws IOException {
    BufferedImage read = ImageIO.read(FOLDER.resolve(DemoPhotoFiles.SRGB).toFile());
    BufferedImage made = DemoPhotoFiles.image(false);
    double sum = 0;
    for (int i = 0; i < DemoPhoto.WIDTH * DemoPhoto.HEIGHT; i++) {
      int x = i % DemoPhoto.WIDTH;
      int y = i / DemoPhoto.WIDTH;
      int green = read.getRGB(x, y) >> 8 & 0xFF;
      sum += Math.abs(green - (made.getRGB(x, y) >> 8 & 0xFF));
    }
    // Quality 90 rounds the grain of about 3 levels off; another scene would be tens away.
    assertThat(sum / DemoPhoto.WIDTH / DemoPhoto.HEIGHT).isLessThan(4);
  }

  @Test
  void bothFilesShowTheSameColours() {
    for (String region : new String[] {"260,60,80,80", "70,200,60,60", "510,56,76,76"}) {
      Lab srgb = sampled(DemoPhotoFiles.SRGB, region);
      Lab displayP3 = sampled(DemoPhotoFiles.DISPLAY_P3, region);
      // What JPEG may lose.
      assertThat(Ciede2000.deltaE(srgb, displayP3)).as(region).isLessThan(1);
    }
  }

  private static Lab sampled(String file, String region) {
    PhotoFile photo = PhotoFile.open(FOLDER.resolve(file));
    Region where = Region.parse(region, photo.width(), photo.height());
    return RegionSampler.sample(photo, where).mean().toXyz().toLab();
  }

  @Test
  void theFilesAreSmall() throws IOException {
    for (String file : new String[] {DemoPhotoFiles.SRGB, DemoPhotoFiles.DISPLAY_P3}) {
      assertThat(Files.size(FOLDER.resolve(file))).isLessThan(150_000);
    }
  }
}
