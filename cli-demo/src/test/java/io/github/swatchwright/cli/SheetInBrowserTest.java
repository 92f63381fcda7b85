package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A sheet to print as a browser shows it. Runs where a {@code chromium} is on the path; where the
 * environment says {@code BROWSER_TESTS=required}, not finding one fails.
 */
class SheetInBrowserTest {
  private static Optional<Chromium> browser = Optional.empty();

  @BeforeAll
  static void startBrowser(@TempDir Path profile) throws IOException, InterruptedException {
    browser = Optional.of(Chromium.start(profile));
  }

  @AfterAll
  static void stopBrowser() {
    browser.ifPresent(Chromium::close);
  }

  /** Marks and code can be read off the picture, and then only paint is missing. */
  @ParameterizedTest(name = "as {0}, {1}")
  @CsvSource({"html, light", "html, dark", "svg, light", "svg, dark"})
  void isBlackOnWhiteAndReadable(String form, String scheme, @TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("sheet." + form);
    assertThat(Run.of("sheet", "--names", "Rust, Hull grey", "--out", file.toString()).err())
        .isEmpty();
    BrowserPage page = browser.orElseThrow().open(file.toUri());
    page.show("screen", scheme);
    BufferedImage shown = page.screenshot();
    Path picture = folder.resolve("shown.png");
    ImageIO.write(shown, "png", picture.toFile());

    // Bare paper, 3 mm from the left and half-way down.
    assertThat(shown.getRGB(11, 560) & 0xFFFFFF).isEqualTo(0xFFFFFF);
    assertThat(
            Run.of(
                    "sheet",
                    "--read",
                    picture.toString(),
                    "--out",
                    folder.resolve("my.shelf.json").toString())
                .err())
        .contains("no field of the sheet could be read as a paint");
  }
}
