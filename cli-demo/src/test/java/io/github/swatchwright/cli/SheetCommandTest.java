package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.sheet.PhotographedSheet;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command as a painter uses it, on one invented photo that is turned and spoilt. */
class SheetCommandTest {
  @TempDir Path folder = Path.of("");
  private static Path photo = Path.of("");

  @BeforeAll
  static void shoot(@TempDir Path photos) throws IOException {
    photo = photos.resolve("photo.jpg");
    Files.write(photo, PhotographedSheet.withGreyCard(5, 1800));
  }

  private String in(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void aPhotoBecomesAShelfThatMatchUses() {
    Run read =
        Run.of(
            "sheet",
            "--read",
            photo.toString(),
            "--grey",
            "18%",
            "--out",
            in("my.json"),
            "--picture",
            in("seen.png"));
    assertThat(read.err()).isEmpty();
    assertThat(read.out()).contains("white 1", "Shelf written");
    assertThat(Files.exists(folder.resolve("seen.png"))).isTrue();
    Run match = Run.of("match", "#A06050", "--shelf", in("my.json"));
    assertThat(match.status()).isZero();
    Run again =
        Run.of("sheet", "--read", photo.toString(), "--grey", "18%", "--out", in("my.json"));
    refused(again, "is there already");
    Run added =
        Run.of("sheet", "--read", photo.toString(), "--grey", "18%", "--add-to", in("my.json"));
    refused(added, "on the shelf already: 'white 1'");
    Run replaced =
        Run.of(
            "sheet",
            "--read",
            photo.toString(),
            "--grey",
            "18%",
            "--add-to",
            in("my.json"),
            "--replace");
    assertThat(replaced.status()).isZero();
    assertThat(Files.exists(folder.resolve("my.json.bak"))).isTrue();
  }

  @Test
  void anUpsideDownPhotoIsReadAndAMirroredOneRefused() throws IOException {
    BufferedImage image = ImageIO.read(photo.toFile());
    int w = image.getWidth();
    int h = image.getHeight();
    BufferedImage turned = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    BufferedImage mirrored = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        turned.setRGB(w - 1 - x, h - 1 - y, image.getRGB(x, y));
        mirrored.setRGB(w - 1 - x, y, image.getRGB(x, y));
      }
    }
    ImageIO.write(turned, "png", folder.resolve("turned.png").toFile());
    ImageIO.write(mirrored, "png", folder.resolve("mirrored.png").toFile());
    assertThat(Run.of("sheet", "--read", in("turned.png")).out()).contains("white 1");
    refused(Run.of("sheet", "--read", in("mirrored.png"), "--out", in("x.json")), "mirrored");
    assertThat(Files.exists(folder.resolve("x.json"))).isFalse();
  }

  @Test
  void whatIsNoSheetIsRefusedInOneLine() throws IOException {
    BufferedImage plain = new BufferedImage(600, 800, BufferedImage.TYPE_INT_RGB);
    ImageIO.write(plain, "png", folder.resolve("plain.png").toFile());
    refused(Run.of("sheet", "--read", in("plain.png"), "--out", in("x.json")), "no sheet found");
    BufferedImage small = new BufferedImage(100, 80, BufferedImage.TYPE_INT_RGB);
    ImageIO.write(small, "png", folder.resolve("small.png").toFile());
    refused(Run.of("sheet", "--read", in("small.png")), "has 100 x 80 pixels");
    refused(Run.of("sheet", "--read", photo.toString(), photo.toString()), "is in two photos");
    refused(Run.of("sheet", "--out", in("x.pdf")), "which paints");
    refused(Run.of("sheet", "--names", "a", "--out", in("x.pdf"), "--json"), "go with --read");
    refused(
        Run.of("sheet", "--names", "a", "--out", in("x.pdf"), "--grey", "18%"), "go with --read");
    refused(
        Run.of("sheet", "--read", photo.toString(), "--names", "a", "--out", in("x.json")),
        "leave them out with --read");
    refused(Run.of("sheet", "--names", "=a:1", "--out", in("x.pdf")), "name mixes with --mix");
    refused(Run.of("sheet", "--names", "a, a", "--out", in("x.pdf")), "named twice");
    refused(Run.of("sheet", "--names", "a, b", "--out", in("x.doc")), "must end in");
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("plain.png", "small.png");
  }

  @Test
  void twoSheetsInOnePhotoAreRefused() throws IOException {
    BufferedImage image = ImageIO.read(photo.toFile());
    BufferedImage two =
        new BufferedImage(2 * image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    two.getGraphics().drawImage(image, 0, 0, null);
    two.getGraphics().drawImage(image, image.getWidth(), 0, null);
    ImageIO.write(two, "png", folder.resolve("two.png").toFile());
    refused(Run.of("sheet", "--read", in("two.png")), "two sheets");
  }

  @Test
  void aSheetOfTwoPagesMissesTheOther() {
    assertThat(Run.of("sheet", "--blank", "30", "--out", in("s.html")).out())
        .contains("30 fields on 2 pages");
    refused(Run.of("sheet", "--blank", "30", "--out", in("s.svg")), "has 2");
  }

  private static void refused(Run run, String why) {
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(why);
    assertThat(run.err().lines()).hasSize(1);
  }
}
