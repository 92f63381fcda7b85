package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.photo.PhotoBytes;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.json.SampleJson;
import io.github.swatchwright.testdata.DemoPhoto;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SampleTest {
  private static final String DEMO = "../testdata/photos/hull-plate.jpg";

  @TempDir private Path folder = Path.of("");

  /** Left half rust, right half a grey card in a dim warm light. */
  private static BufferedImage picture() {
    BufferedImage image = new BufferedImage(80, 40, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(new Color(0x8A4B2A));
    graphics.fillRect(0, 0, 40, 40);
    graphics.setColor(new Color(0x7A6A58));
    graphics.fillRect(40, 0, 40, 40);
    graphics.dispose();
    return image;
  }

  private String file(byte[] bytes) throws IOException {
    Path path = folder.resolve("photo");
    Files.write(path, bytes);
    return path.toString();
  }

  private static void assertRefused(Run run, String... words) {
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains(words);
  }

  @Test
  void samplesARegionWithoutReference() throws IOException {
    Run run = Run.of("sample", file(PhotoBytes.png(picture())), "--region", "0,0,50%,100%");

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("#8A4B2A", "Reference: none", "lightness unknown");
  }

  @Test
  void samplesARegionByAGreyCardAsJson() throws IOException {
    String photo = file(PhotoBytes.png(picture()));
    Run run =
        Run.of("sample", photo, "--region", "4,4,30,30", "--grey", "45,5,30,30@18%", "--json");

    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("\"reference\" : \"grey patch\"", "\"lightnessKnown\" : true", "\"spread\"")
        .contains("\"share\" : 1.0", "\"lab\"", "\"srgb\"", "\"deltaE00\"");
    Run grey = Run.of("sample", photo, "--region", "45,5,30,30", "--grey", "45,5,30,30@18%");
    assertThat(grey.out()).contains("#767676  lab(49.50,");
  }

  @Test
  void aRegionOfAPhotoIsAColourEverywhere() throws IOException {
    String photo = file(PhotoBytes.png(picture()));

    Run run = Run.of("compare", "#8A4B2A", photo + "@4,4,30,30");
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains("note: ", "holds the true colour", "lightness is unknown");
    assertThat(run.out()).contains("ΔE00    0.00");
    assertThat(Run.of("match", photo + "@4,4,30,30").status()).isZero();
  }

  @Test
  void refusesRegionsAndGreyPatchesThatTellNothing() throws IOException {
    String photo = file(PhotoBytes.png(picture()));

    assertRefused(Run.of("sample", photo, "--region", "0,0,0,5"), "is empty");
    assertRefused(Run.of("sample", photo, "--region", "60,0,40,5"), "outside the picture");
    assertRefused(Run.of("sample", photo, "--grey", "1,1,5,5"), "--grey", "form x,y,w,h@18%");
    assertRefused(Run.of("sample", photo, "--grey", "1,1,5,5@x%"), "not a number of percent");
    assertRefused(Run.of("sample", photo, "--light", "A"), "--light is A, must be D65");
    BufferedImage bright = picture();
    bright.setRGB(0, 0, 40, 40, filled(0xFFFFFF), 0, 40);
    assertRefused(
        Run.of("sample", file(PhotoBytes.png(bright)), "--grey", "0,0,40,40@18%"), "clipped");
    bright.setRGB(0, 0, 40, 40, filled(0x20C020), 0, 40);
    assertRefused(
        Run.of("sample", file(PhotoBytes.png(bright)), "--grey", "0,0,40,40@18%"), "coloured");
  }

  @Test
  void shadesOfARegionComeWithTheirSharesAndAreReadBack() throws IOException {
    String photo = file(PhotoBytes.png(picture()));
    Run run = Run.of("sample", photo, "--colours", "--json");
    assertThat(run.err()).isEmpty();
    assertThat(SampleJson.parse(run.out(), "sample"))
        .hasSize(2)
        .allSatisfy(
            colour -> {
              assertThat(colour.share()).isEqualTo(0.5);
              assertThat(colour.lightnessKnown()).isFalse();
              assertThat(colour.intervalDeltaE00().orElse(0)).isGreaterThan(5);
            })
        .anySatisfy(colour -> assertThat(colour.lab().toSrgb().toHex()).isEqualTo("#8A4B2A"));

    assertThat(Run.of("sample", photo, "--colours", "1").out())
        .contains("share     100 % of the region's area");
    assertRefused(Run.of("sample", photo, "--colours", "0"), "is 0, must be within [1, 24]");
    assertRefused(Run.of("sample", photo, "--colours", "x"), "'x' is not a whole number");
  }

  @Test
  void aPreviewShowsTheRegionsAndTheirSwatches() throws IOException {
    String photo = file(PhotoBytes.png(picture()));
    Path preview = folder.resolve("seen.png");
    Run run =
        Run.of(
            "sample",
            photo,
            "--region",
            "4,4,30,30",
            "--grey",
            "45,5,30,30@18%",
            "--preview",
            preview.toString());
    assertThat(run.status()).isZero();
    BufferedImage seen = ImageIO.read(preview.toFile());
    // The photo begins 48 pixels from the left and 26 from the top; axes are about it.
    assertThat(seen.getRGB(48 + 25, 26 + 30) & 0xFFFFFF).isEqualTo(0x8A4B2A);
    assertThat(seen.getRGB(48 + 4, 26 + 30) & 0xFFFFFF).as("outline").isEqualTo(0xFFFFFF);
    // The swatch below is the corrected colour, which the command prints.
    String swatch = String.format(Locale.ROOT, "#%06X", seen.getRGB(60, 26 + 40 + 42) & 0xFFFFFF);
    assertThat(run.out()).contains(swatch);

    Path itself = Files.copy(Path.of(photo), folder.resolve("photo.png"));
    assertRefused(
        Run.of("sample", itself.toString(), "--preview", itself.toString()),
        "--preview: " + itself + " is PHOTO as well, must be another file");
    assertRefused(
        Run.of("sample", photo, "--preview", folder.resolve("no/seen.png").toString()),
        "--preview: there is no folder");
    assertRefused(
        Run.of("sample", photo, "--preview", folder.resolve("seen.bmp").toString()),
        "must end in .png");
  }

  @Test
  void everyPhotoColourOfACommandIsSeenByTheGreyCard() throws IOException {
    String photo = file(PhotoBytes.png(picture()));
    String grey = "45,5,30,30@18%";
    String card = photo + "@45,5,30,30";

    assertThat(Run.of("compare", "lab(49.496, 0, 0)", card, "--grey", grey).out())
        .contains("ΔE00    0.0");
    Run match = Run.of("match", card, "--grey", grey, "--max-drops", "4");
    assertThat(match.status()).isZero();
    assertThat(match.out()).contains("lab(49.5");
    assertThat(match.err()).contains("holds the true colour").doesNotContain("unknown");
    String mix = "Titanium white:6, Red oxide:2";
    Run correct = Run.of("correct", mix, "--measured", card, "--target", "#B47A68", "--grey", grey);
    assertThat(correct.status()).isZero();
  }

  @Test
  void aColourChartCorrectsAPhotoByItsFile() throws IOException {
    StringBuilder patches = new StringBuilder();
    BufferedImage image = new BufferedImage(120, 120, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 16; i++) {
      Srgb known = Srgb.ofPacked(0x301020 + 0x0B0000 * i + 0x2700 * (i % 4) + 0x25 * (i / 3));
      patches.append(i == 0 ? "" : ",").append("{\"lab\":[");
      Lab lab = known.toLab();
      patches.append(lab.l()).append(',').append(lab.a()).append(',').append(lab.b()).append("]}");
      LinearRgb light = known.decode();
      int seen =
          new LinearRgb(0.9 * light.red(), 0.6 * light.green(), 0.4 * light.blue())
              .encode()
              .toPacked();
      image.setRGB(i % 4 * 30, i / 4 * 30, 30, 30, filled(seen), 0, 30);
    }
    Path chart = folder.resolve("chart.json");
    Files.writeString(
        chart,
        "{\"format\":\"swatchwright-chart\",\"version\":1,\"columns\":4,\"patches\":["
            + patches
            + "]}");
    String photo = file(PhotoBytes.png(image));
    String where = chart + "@0,0,100%,100%";

    Run run = Run.of("sample", photo, "--region", "35,5,20,20", "--chart", where, "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("\"colour chart (");
    // Steps of 8 bits.
    assertThat(Ciede2000.deltaE(lab(run), Srgb.parse("#3B3720").toLab())).isLessThan(1);
    assertThat(Run.of("compare", "#3B3720", photo + "@35,5,20,20", "--chart", where).out())
        .contains("match");
    assertRefused(Run.of("sample", photo, "--chart", chart.toString()), "form FILE@x,y,w,h");
    assertRefused(
        Run.of("sample", photo, "--chart", "no.json@0,0,9,9"), "there is no file no.json");
    assertRefused(
        Run.of("sample", photo, "--chart", where, "--grey", "0,0,9,9@18%"), "exclude each other");
    assertRefused(
        Run.of("sample", photo, "--chart", chart + "@0,0,9,9"), "neither clipped nor too dark");
    Files.writeString(chart, "{}");
    assertRefused(
        Run.of("sample", photo, "--chart", where), "chart.json: $: has no field 'format'");
  }

  @Test
  void aPlainAreaEvensTheLight() {
    String[] command = {
      "sample", DEMO, "--region", "20,20,50,50", "--grey", "510,56,76,76@18%", "--json"
    };
    Run uneven = Run.of(command);
    Run even =
        Run.of(
            Stream.concat(
                    Stream.of(command),
                    Stream.of("--even-light", "230,20,200,340", "--even-light", "20,20,180,70"))
                .toArray(String[]::new));
    assertThat(even.err()).isEmpty();
    assertThat(even.out()).contains("uneven light evened");
    Lab paint = Srgb.ofPacked(DemoPhoto.Material.HULL_PAINT.srgb()).toLab();
    assertThat(Ciede2000.deltaE(lab(uneven), paint)).isGreaterThan(6);
    // Dirt in the paint's texture is left.
    assertThat(Ciede2000.deltaE(lab(even), paint)).isLessThan(3);

    assertRefused(
        Run.of("sample", DEMO, "--even-light", "0,0,10,10"),
        "--even-light: the plain areas span 2 %");
    assertRefused(
        Run.of("sample", DEMO, "--even-light", "30,180,200,240"), "the plain areas aren't plain");
  }

  private static Lab lab(Run run) {
    return SampleJson.parse(run.out(), "sample").get(0).lab();
  }

  private static int[] filled(int rgb) {
    int[] pixels = new int[1600];
    Arrays.fill(pixels, rgb);
    return pixels;
  }

  @Test
  void refusesWhatIsNoPhoto() throws IOException {
    assertRefused(Run.of("sample", folder.resolve("none.jpg").toString()), "there is no file");
    assertRefused(
        Run.of("sample", file("not a picture at all".getBytes(StandardCharsets.US_ASCII))),
        "is no picture that can be read, must be JPEG, PNG, WebP or TIFF");
    BufferedImage single = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    single.setRGB(0, 0, 0x808080);
    assertRefused(Run.of("sample", file(PhotoBytes.png(single))), "tells no colour");
  }

  @Test
  void refusesTruncatedFiles() throws IOException {
    byte[] png = PhotoBytes.png(picture());
    byte[] jpeg = PhotoBytes.jpeg(picture());
    assertRefused(Run.of("sample", file(Arrays.copyOf(png, png.length / 2))), "cut off or broken");
    assertRefused(Run.of("sample", file(Arrays.copyOf(jpeg, 100))), "cut off or broken");
  }

  @Test
  void refusesAHeaderOfTenGigapixelsWithoutReadingOn() throws IOException {
    byte[] png = PhotoBytes.png(picture());
    ByteBuffer.wrap(png).putInt(16, 100_000).putInt(20, 100_000);
    CRC32 crc = new CRC32();
    crc.update(png, 12, 17);
    ByteBuffer.wrap(png).putInt(29, (int) crc.getValue());
    assertRefused(Run.of("sample", file(png)), "100000 x 100000 pixels, must have at most");
  }

  @Test
  void refusesBrokenProfilesAndOrientations() throws IOException {
    byte[] absurd =
        "not a profile, but long enough to be one".repeat(10).getBytes(StandardCharsets.US_ASCII);
    assertRefused(
        Run.of("sample", file(PhotoBytes.jpeg(picture(), PhotoBytes.profileSegment(absurd)))),
        "has a broken colour profile");
    assertRefused(
        Run.of("sample", file(PhotoBytes.jpeg(picture(), PhotoBytes.orientationSegment(99)))),
        "has the EXIF orientation 99, must be within [1, 8]");
    byte[] garbage = PhotoBytes.orientationSegment(1);
    Arrays.fill(garbage, 14, garbage.length, (byte) 0x7F);
    assertRefused(
        Run.of("sample", file(PhotoBytes.jpeg(picture(), garbage))), "has a broken EXIF block");
  }
}
