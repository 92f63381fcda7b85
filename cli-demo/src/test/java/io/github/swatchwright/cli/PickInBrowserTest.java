package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.cli.BrowserPage.Place;
import io.github.swatchwright.cli.photo.PhotoBytes;
import io.github.swatchwright.colour.Srgb;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page of {@code sample --pick} in a browser, from picking to the shelf. Runs where a {@code
 * chromium} is on the path; where the environment says {@code BROWSER_TESTS=required}, not finding
 * one fails.
 */
class PickInBrowserTest {
  /** A name that tries to run something in a shell, in HTML and in the page's own places. */
  private static final String FILE = "it's {{width}} <b>.png";

  private static Optional<Chromium> browser = Optional.empty();

  @TempDir Path folder = Path.of("");
  private Path photo = Path.of("");
  private Optional<BrowserPage> opened = Optional.empty();

  @BeforeAll
  static void startBrowser(@TempDir Path profile) throws IOException, InterruptedException {
    browser = Optional.of(Chromium.start(profile));
  }

  @AfterAll
  static void stopBrowser() {
    browser.ifPresent(Chromium::close);
  }

  /** Rust at the left and a dim grey card at the right; 1600 pixels wide, shown smaller. */
  @BeforeEach
  void openPage() throws IOException {
    BufferedImage image = new BufferedImage(1600, 800, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(new Color(0x8A4B2A));
    graphics.fillRect(0, 0, 800, 800);
    graphics.setColor(new Color(0x767676));
    graphics.fillRect(800, 0, 800, 800);
    graphics.dispose();
    photo = Files.write(folder.resolve(FILE), PhotoBytes.png(image));
    Path file = folder.resolve("pick.html");
    assertThat(Run.of("sample", photo.toString(), "--pick", file.toString()).err()).isEmpty();
    opened = Optional.of(browser.orElseThrow().open(file.toUri()));
  }

  private BrowserPage page() {
    return opened.orElseThrow();
  }

  private String value(String id) {
    return page().evaluate("document.getElementById('" + id + "').value").asText();
  }

  /** A pixel of the photo as a place of the page. */
  private Place at(double x, double y) {
    Place middle = page().middles("#photo").get(0);
    double scale =
        page().evaluate("document.getElementById('photo').getBoundingClientRect().width").asDouble()
            / 1600;
    return new Place(middle.x() + (x - 800) * scale, middle.y() + (y - 400) * scale);
  }

  private static int[] numbers(String region) {
    String[] parts = region.split(",", -1);
    int[] numbers = new int[4];
    for (int i = 0; i < 4; i++) {
      numbers[i] = Integer.parseInt(parts[i]);
    }
    return numbers;
  }

  private String region(int row) {
    return page()
        .evaluate("document.querySelectorAll('.region')[" + row + "].textContent")
        .asText();
  }

  @Test
  void clickedAndDraggedSwatchesBecomeAShelf() throws IOException {
    page().drag(at(400, 200), at(400, 200));
    page().type("=Rust, \"old\"");
    page().drag(at(100, 500), at(500, 700));
    page().type("Rust again");
    page().drag(at(1000, 300), at(1400, 500));
    page()
        .evaluate(
            "(() => {const kind = document.querySelectorAll('li select')[2]; kind.value = 'grey';"
                + " kind.dispatchEvent(new Event('change'));})()");

    // A click reads 1/25 of the shorter side; a dragged corner may be one screen pixel off.
    assertThat(region(0)).isEqualTo("384,184,32,32");
    int[] dragged = numbers(region(1));
    double pixel = 1600 / 300.0;
    assertThat((double) dragged[0]).isCloseTo(100, within(pixel));
    assertThat((double) dragged[2]).isCloseTo(400, within(2 * pixel));
    assertThat((double) dragged[3]).isCloseTo(200, within(2 * pixel));

    Path regions = folder.resolve("picked.regions.csv");
    Files.writeString(regions, value("csv"));
    assertThat(value("command"))
        .isEqualTo(
            "swatchwright sample '"
                + photo.toString().replace("'", "'\\''")
                + "' --regions 'it'\\''s {{width}} <b>.regions.csv' --grey "
                + region(2)
                + "@18% --medium acrylic --out my.shelf.json");
    Path shelf = folder.resolve("my.shelf.json");
    List<String> command = new ArrayList<>(List.of("sample", photo.toString()));
    command.addAll(List.of("--regions", regions.toString(), "--grey", region(2) + "@18%"));
    command.addAll(List.of("--medium", "oil", "--out", shelf.toString()));
    assertThat(Run.of(command.toArray(String[]::new)).err()).isEmpty();
    Shelf read = ShelfJson.read(shelf);
    assertThat(read.paints())
        .extracting(Paint::name)
        .containsExactly("=Rust, \"old\"", "Rust again");
    assertThat(read.paints()).extracting(Paint::medium).containsOnly(Medium.OIL);
    // #767676 is what a card of 18 % looks like, so that the correction changes next to nothing.
    assertThat(read.paints().get(0).masstone().orElseThrow().lab().toSrgb().toHex())
        .isEqualTo(Srgb.parse("#8A4B2A").toHex());
  }

  @Test
  void theKeyboardAloneWillDo() {
    page().evaluate("document.getElementById('stage').focus()");
    for (int i = 0; i < 5; i++) {
      page().press("ArrowLeft");
    }
    page().press("ArrowDown");
    page().press("Enter");
    page().type("Rust");
    page().press("Enter");
    page().press("+");
    page().press("Enter");
    page().type("Rust");

    // Steps of 1/50 of the longer side from the middle; the square grows by a quarter and one.
    assertThat(region(0)).isEqualTo("624,416,32,32");
    assertThat(region(1)).isEqualTo("620,412,41,41");
    assertThat(page().evaluate("document.getElementById('doubt').textContent").asText())
        .isEqualTo("Two swatches are named “Rust”.");
    page().type(" 2");
    assertThat(page().evaluate("document.getElementById('doubt').textContent").asText()).isEmpty();
    assertThat(value("csv"))
        .isEqualTo("name,region\nRust,\"624,416,32,32\"\nRust 2,\"620,412,41,41\"\n");
    assertThat(page().evaluate("document.getElementById('save').href").asText())
        .isEqualTo(
            "data:text/csv;charset=utf-8,name%2Cregion%0D%0A"
                + "Rust%2C%22624%2C416%2C32%2C32%22%0D%0ARust%202%2C%22620%2C412%2C41%2C41%22%0D%0A");
  }

  @Test
  void isQuietReadableAndShownInLightAndDark() {
    page().drag(at(400, 200), at(400, 200));
    for (String scheme : List.of("light", "dark")) {
      page().show("screen", scheme);
      boolean isLight = new Color(page().screenshot().getRGB(1, 1)).getGreen() > 127;
      assertThat(isLight).as(scheme).isEqualTo(scheme.equals("light"));
    }
    assertThat(page().spoken())
        .contains("Photo: move the cross", "Name of 1", "Remove 1", "What 1 is", "1 picked at");
    assertThat(page().requests())
        .filteredOn(request -> !request.startsWith("data:image/jpeg;base64,"))
        .containsExactly(page().address().toString());
    assertThat(page().complaints()).isEmpty();
  }
}
