package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.cli.photo.PhotoBytes;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a photo of swatches that lie anywhere to a shelf, by a list of named regions. */
class SampleRegionsTest {
  private static final String GREY = "120,0,40,40@18%";

  @TempDir Path folder = Path.of("");
  private String photo = "";
  private String regions = "";

  /** Three stripes: rust, off-white, and a grey card as it looks in even light. */
  @BeforeEach
  void shoot() throws IOException {
    BufferedImage image = new BufferedImage(160, 40, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    int[] colours = {0x8A4B2A, 0xD8D0C0, 0x767676};
    int[] lefts = {0, 60, 120};
    for (int i = 0; i < 3; i++) {
      graphics.setColor(new Color(colours[i]));
      graphics.fillRect(lefts[i], 0, 60, 40);
    }
    graphics.dispose();
    photo = Files.write(folder.resolve("bench.png"), PhotoBytes.png(image)).toString();
    regions = file("bench.regions.csv", "name,region\nRust,\"5,5,40,30\"\nWhite,\"65,5,40,30\"\n");
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private static void refused(Run run, String... why) {
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(why);
  }

  @Test
  void aPhotoBecomesAShelfThatMatchUses() throws IOException {
    Path shelf = folder.resolve("bench.shelf.json");

    Run run =
        Run.of("sample", photo, "--regions", regions, "--grey", GREY, "--out", shelf.toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Rust\n", "White\n", "Shelf with 2 paints (acrylic) written");
    Shelf read = ShelfJson.read(shelf);
    assertThat(read.paints()).extracting(Paint::name).containsExactly("Rust", "White");
    assertThat(read.paints()).extracting(Paint::medium).containsOnly(Medium.ACRYLIC);
    assertThat(read.paint("Rust").masstone().orElseThrow().lab().toSrgb().toHex())
        .isEqualTo("#8A4B2A");
    // A photo by a grey card is that far off: GreyCorrection's sds, 2.6 to 4 by chroma.
    assertThat(read.paint("White").swatchError().orElseThrow()).isBetween(2.0, 4.0);
    assertThat(Run.of("match", "#B08A70", "--shelf", shelf.toString()).status()).isZero();
    refused(
        Run.of("sample", photo, "--regions", regions, "--out", shelf.toString()),
        "is there already; --replace writes over it");
  }

  @Test
  void aTableOfNamedColoursIsAListOfRegionsAndAShelfAgain() throws IOException {
    String table = folder.resolve("table.csv").toString();
    String direct = folder.resolve("direct.json").toString();
    Run.of(
        "sample", photo, "--regions", regions, "--grey", GREY, "--table", table, "--out", direct);

    assertThat(Run.of("sample", photo, "--regions", table, "--json").out())
        .contains("\"name\" : \"Rust\"", "\"5,5,40,30\"");
    Path again = folder.resolve("again.json");
    Run.of("shelf", "--import", table, "--medium", "acrylic", "--out", again.toString());
    Paint first = ShelfJson.read(Path.of(direct)).paint("White");
    Paint second = ShelfJson.read(again).paint("White");
    assertThat(second.medium()).isEqualTo(first.medium());
    // Tables give four digits, shelves two of the error.
    assertThat(second.swatchError().orElseThrow())
        .isCloseTo(first.swatchError().orElseThrow(), within(0.006));
    assertThat(second.masstone().orElseThrow().lab().l())
        .isCloseTo(first.masstone().orElseThrow().lab().l(), within(1e-4));
  }

  @Test
  void swatchesOfAPhotoAreAddedToAShelf() throws IOException {
    Path own = Files.copy(Path.of(Run.fiveShelf()), folder.resolve("own.json"));
    String[] add = {
      "shelf", "--shelf", own.toString(), "--add", photo, "--regions", regions, "--grey", GREY
    };
    refused(Run.of(add), "--regions needs --medium");
    refused(Run.of(Run.with(add, "--medium", "acrylic")), "on the shelf already: 'Rust', 'White'");
    String one = file("one.csv", "name,region\nHull rust,\"5,5,40,30\"\n");

    Run added =
        Run.of(
            "shelf",
            "--shelf",
            own.toString(),
            "--add",
            photo,
            "--regions",
            one,
            "--grey",
            GREY,
            "--medium",
            "acrylic");

    assertThat(added.err()).isEmpty();
    Shelf after = ShelfJson.read(own);
    assertThat(after.paints()).hasSize(6);
    assertThat(after.paint("Hull rust").masstone().orElseThrow().lab().l())
        .isCloseTo(39, within(2.0));
    refused(Run.of("shelf", "--shelf", own.toString(), "--add", photo), "read with --regions");
    refused(Run.of("shelf", "--regions", one), "go with --import or --add");
    refused(
        Run.of("shelf", "--shelf", own.toString(), "--add", photo, "--grey", GREY),
        "--grey, --chart, --even-light and --beside go with --regions");
  }

  @Test
  void whatCannotBeAShelfIsRefusedAndNothingWritten() throws IOException {
    String out = folder.resolve("x.json").toString();
    refused(
        Run.of("sample", photo, "--region", "5,5,20,20", "--out", out),
        "a shelf needs names: give the regions by --regions");
    refused(
        Run.of(
            "sample",
            photo,
            "--regions",
            regions,
            "--colours",
            "2",
            "--out",
            out,
            "--region",
            "0,0,9,9"),
        "a shelf needs names");
    String wrong = file("wrong.csv", "name,region\nRust,\"5,5,40,30\"\nFar,\"900,5,40,30\"\n");
    refused(
        Run.of("sample", photo, "--regions", wrong, "--out", out),
        "wrong.csv: line 3: the region '900,5,40,30' reaches outside the picture");
    refused(
        Run.of("sample", photo, "--regions", folder.resolve("no.csv").toString()),
        "--regions: there is no file");
    refused(
        Run.of(
            "sample", photo, "--pick", folder.resolve("p.html").toString(), "--regions", regions),
        "--pick reads no colours yet");
    refused(Run.of("sample", photo, "--replace"), "--medium and --replace go with --out");
    refused(Run.of("sample", photo, "--medium", "oil"), "--medium and --replace go with --out");
    refused(Run.of("sample", photo, "--radius", "5%"), "--radius goes with --at");
    refused(
        Run.of("sample", photo, "--pick", folder.resolve("p.html").toString(), "--grey", GREY),
        "mark a grey card on the page");
    assertThat(folder.resolve("x.json")).doesNotExist();
    assertThat(folder.resolve("p.html")).doesNotExist();
  }

  @Test
  void aRegionOfTwoColoursSaysSo() {
    Run run = Run.of("sample", photo, "--region", "30,0,60,40");
    assertThat(run.out()).contains("several   #D8D0C0 and #8A4B2A, 50 % and 50 % of the pixels");
    assertThat(Run.of("sample", photo, "--region", "30,0,60,40", "--json").out())
        .contains("\"several\"");
    assertThat(Run.of("sample", photo, "--region", "5,5,40,30").out()).doesNotContain("several");
  }
}
