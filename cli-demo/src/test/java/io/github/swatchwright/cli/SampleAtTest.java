package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Places of a photo told by their middle. */
class SampleAtTest {
  @TempDir Path folder = Path.of("");

  private String photo() throws IOException {
    Path file = folder.resolve("photo.png");
    BufferedImage image = new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 200 * 100; i++) {
      image.setRGB(i % 200, i / 200, 0x8A8A80);
    }
    ImageIO.write(image, "png", file.toFile());
    return file.toString();
  }

  @Test
  void aSquareAboutAPlaceIsRead() throws IOException {
    assertThat(Run.of("sample", photo(), "--at", "50%,40", "--json").out())
        .contains("\"98,38,4,4\"");
    assertThat(Run.of("sample", photo(), "--at", "50%,40%", "--radius", "10", "--json").out())
        .contains("\"90,30,20,20\"");
  }

  @Test
  void whatIsNoPlaceIsRefused() throws IOException {
    assertThat(Run.of("sample", photo(), "--at", "50%").err())
        .contains("--at: '50%' isn't of the form x,y");
    assertThat(Run.of("sample", photo(), "--at", "1,1", "--radius", "x").err())
        .contains("--radius: 'x' is not a number");
    assertThat(Run.of("sample", photo(), "--at", "0,0").err()).contains("outside the picture");
    assertThat(Run.of("sample", photo(), "--at", "400%,60%").err())
        .contains("--at: '400%,60%'", "outside the picture")
        .doesNotContain(".0000");
    assertThat(Run.of("sample", photo(), "--at", "1,1", "--radius", "NaN").err())
        .contains("--radius: 'NaN' is too large, or no number");
  }
}
