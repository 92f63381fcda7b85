package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.sheet.PrintedSheet;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetPage;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Photos that can't become a shelf: one line that says why, and nothing is written. */
class SheetRefusalTest {
  /** Pixels of a millimetre, as in a photo of one megapixel. */
  private static final double USUAL = 4;

  @TempDir Path photos = Path.of("");
  @TempDir Path written = Path.of("");

  private static SheetPage page(String... names) {
    return SheetPage.pages(Paper.A4, List.of(names), 12, SheetPage.NO_SHELF, Medium.ACRYLIC).get(0);
  }

  private String photo(String name, BufferedImage image) throws IOException {
    Path file = photos.resolve(name);
    ImageIO.write(image, "png", file.toFile());
    return file.toString();
  }

  private void refused(String why, String... photosAndOptions) {
    String[] command =
        Run.with(
            Run.with(new String[] {"sheet", "--read"}, photosAndOptions),
            "--out",
            written.resolve("my.shelf.json").toString(),
            "--picture",
            written.resolve("seen.png").toString());
    Run run = Run.of(command);
    assertThat(run.err()).contains(why);
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
  }

  @AfterEach
  void nothingIsWritten() {
    assertThat(written).isEmptyDirectory();
  }

  @Test
  void whatIsNoSheet() throws IOException {
    Random random = new Random(4);
    BufferedImage noise = new BufferedImage(900, 1200, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 900 * 1200; i++) {
      noise.setRGB(i % 900, i / 900, random.nextInt(1 << 24));
    }
    refused("no sheet found", photo("noise.png", noise));
    refused("it has 900 x 1200 pixels, photos of 1800 and more", photo("noise.png", noise));
    refused("no sheet found", "../testdata/photos/hull-plate.jpg");
  }

  @Test
  void aSheetOnWhichNothingIsPainted() throws IOException {
    refused(
        "no field of the sheet could be read as a paint",
        photo("blank.png", PrintedSheet.of(page("Rust", "Hull grey"), USUAL)));
  }

  @Test
  void twoSheetsBesideEachOther() throws IOException {
    BufferedImage one = PrintedSheet.of(page("Rust", "Hull grey"), 5);
    BufferedImage two =
        new BufferedImage(2 * one.getWidth(), one.getHeight(), BufferedImage.TYPE_INT_RGB);
    two.getGraphics().drawImage(one, 0, 0, null);
    two.getGraphics().drawImage(one, one.getWidth(), 0, null);
    refused("there are two sheets in the photo", photo("two.png", two));
  }

  @Test
  void aSheetOfAnotherShelf() throws IOException {
    Path own = Files.copy(Path.of(Run.fiveShelf()), photos.resolve("own.json"));
    SheetPage other =
        SheetPage.pages(
                Paper.A4, List.of("Rust"), 12, SheetPage.shelfCode("Another"), Medium.ACRYLIC)
            .get(0);
    refused(
        "--add-to: the sheet was printed for another shelf than",
        photo("other.png", PrintedSheet.of(other, USUAL)),
        "--add-to",
        own.toString());
    assertThat(own).hasSameBinaryContentAs(Path.of(Run.fiveShelf()));
  }

  @Test
  void pagesThatAreMissingTwiceOrOfTwoSheets() throws IOException {
    List<String> names = IntStream.range(0, 20).mapToObj(i -> "Paint " + i).toList();
    List<SheetPage> pages =
        SheetPage.pages(Paper.A4, names, 12, SheetPage.NO_SHELF, Medium.ACRYLIC);
    String first = photo("1.png", PrintedSheet.of(pages.get(0), USUAL));
    String second = photo("2.png", PrintedSheet.of(pages.get(1), USUAL));
    String stranger = photo("3.png", PrintedSheet.of(page("Rust", "Hull grey"), USUAL));
    refused("page 2 of 2 is missing; give its photo too, or --partial", first);
    refused("page 1 of 2 is missing", second);
    refused("page 2 of the sheet is in two photos", first, second, second);
    refused("the photos are of two sheets", first, stranger);
  }

  @Test
  void blurredAndTooSmallPhotos() throws IOException {
    BufferedImage sharp = PrintedSheet.of(page("Rust", "Hull grey"), USUAL);
    float[] box = new float[121];
    Arrays.fill(box, 1 / 121f);
    ConvolveOp blur = new ConvolveOp(new Kernel(11, 11, box));
    refused("sharp", photo("blurred.png", blur.filter(sharp, null)));
    for (double scale : new double[] {0.5, 1}) {
      BufferedImage small = PrintedSheet.of(page("Rust", "Hull grey"), scale);
      refused("pixels, must have at least 400 each way", photo("small.png", small));
    }
  }

  @Test
  void aMirroredSheet() throws IOException {
    BufferedImage image = PrintedSheet.of(page("Rust", "Hull grey"), USUAL);
    BufferedImage mirrored =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    mirrored
        .getGraphics()
        .drawImage(image, image.getWidth(), 0, -image.getWidth(), image.getHeight(), null);
    refused("the sheet is mirrored", photo("mirrored.png", mirrored));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://example.org/$(reboot)",
        "SWATCHSHEET9 A4 1x2 1/1 5F3A9C - acrylic\nRust\nHull grey",
        "SWATCHSHEET1 A4 1x2 1/1 ../../etc - acrylic\nRust\nHull grey",
        "SWATCHSHEET1 A4 1x2 9/1 5F3A9C - acrylic\nRust\nHull grey",
        "SWATCHSHEET1 A4 99999x99999 1/1 5F3A9C - acrylic\nRust\nHull grey",
        "SWATCHSHEET1 A4 1x2 1/1 5F3A9C - acrylic\n\u001b[2J\u202eRust\nHull grey",
        "SWATCHSHEET1 A4 1x2 1/1 5F3A9C - acrylic\nRust\nRust",
        "SWATCHSHEET1 A4 1x2 1/1 5F3A9C - acrylic\n=Rust:NaN\n=:::,"
      })
  void codesThatSayWhatNoSheetHas(String text) throws IOException {
    BufferedImage image = PrintedSheet.saying(text, page("Rust", "Hull grey"), USUAL);
    refused("", photo("hostile.png", image));
  }
}
