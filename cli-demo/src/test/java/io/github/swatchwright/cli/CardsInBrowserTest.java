package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Srgb;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every card as a browser shows it. Runs where a {@code chromium} is on the path; where the
 * environment says {@code BROWSER_TESTS=required}, not finding one fails.
 */
class CardsInBrowserTest {
  private static final String SWATCHES = "[class=swatch]";

  /** Points of an inch by millimetres of an inch. */
  private static final double POINTS = 72 / 25.4;

  private static final int DPI = 150;

  private static Optional<Chromium> browser = Optional.empty();
  private static Path photos = Path.of("");

  /** Pages in HTML, each made once for the screen and for print, by their command. */
  private static final Map<String, CardExample.Made> PAGES = new HashMap<>();

  @BeforeAll
  static void startBrowser(@TempDir Path profile, @TempDir Path folder)
      throws IOException, InterruptedException {
    photos = folder;
    browser = Optional.of(Chromium.start(profile));
  }

  @AfterAll
  static void stopBrowser() {
    browser.ifPresent(Chromium::close);
  }

  static Stream<Arguments> cards() {
    return CardExample.all(photos).stream()
        .flatMap(example -> Stream.of(Arguments.of("html", example), Arguments.of("svg", example)));
  }

  @ParameterizedTest(name = "{1} as {0}")
  @MethodSource("cards")
  void isShownTrueQuietAndInWords(String form, CardExample example, @TempDir Path folder)
      throws IOException {
    CardExample.Made card = form.equals("html") ? page(example) : example.make(folder, form);
    List<String> expected = card.colours();
    BrowserPage page = browser.orElseThrow().open(card.file().toUri());

    List<BrowserPage.Place> middles =
        page.middles(form.equals("html") ? "main " + SWATCHES : SWATCHES);
    assertThat(middles).hasSameSizeAs(expected);
    for (String scheme : List.of("light", "dark")) {
      page.show("screen", scheme);
      BufferedImage picture = page.screenshot();
      assertColours(picture, middles, expected);
      boolean isLight = new Color(picture.getRGB(1, 1)).getGreen() > 127;
      assertThat(isLight).as("light paper").isEqualTo(scheme.equals("light"));
    }
    assertThat(page.spoken()).contains(expected);
    assertThat(page.requests()).containsExactly(page.address().toString());
    assertThat(page.complaints()).isEmpty();
  }

  static Stream<CardExample> examples() {
    return CardExample.all(photos).stream();
  }

  // A5 is 148 mm × 210 mm (ISO 216). Chromium rounds paper to whole points.
  @ParameterizedTest
  @MethodSource("examples")
  void printsOnSoManyPagesOfA5WithEveryColour(CardExample example, @TempDir Path folder)
      throws IOException {
    CardExample.Made card = page(example);
    byte[] printed = browser.orElseThrow().open(card.file().toUri()).printed();
    byte[] written = Files.readAllBytes(example.make(folder, "pdf").file());
    for (byte[] pdf : List.of(printed, written)) {
      try (PDDocument document = Loader.loadPDF(pdf)) {
        assertThat(document.getNumberOfPages()).isEqualTo(example.pages());
        List<Color> seen = new ArrayList<>();
        for (int i = 0; i < document.getNumberOfPages(); i++) {
          PDRectangle paper = document.getPage(i).getMediaBox();
          assertThat((double) paper.getWidth()).isCloseTo(148 * POINTS, within(1.0));
          assertThat((double) paper.getHeight()).isCloseTo(210 * POINTS, within(1.0));
          seen.addAll(colours(new PDFRenderer(document).renderImageWithDPI(i, DPI)));
        }
        for (String wanted : card.colours()) {
          assertThat(seen).as(wanted).anyMatch(colour -> isNear(colour, wanted));
        }
        assertThat(new PDFTextStripper().getText(document)).contains("Print isn", "Date");
      }
    }
  }

  private static CardExample.Made page(CardExample example) throws IOException {
    CardExample.Made made = PAGES.get(example.toString());
    if (made == null) {
      made = example.make(Files.createTempDirectory(photos, "page"), "html");
      PAGES.put(example.toString(), made);
    }
    return made;
  }

  private static Set<Color> colours(BufferedImage image) {
    Set<Integer> packed = new HashSet<>();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        packed.add(image.getRGB(x, y));
      }
    }
    return packed.stream().map(Color::new).collect(Collectors.toSet());
  }

  private static boolean isNear(Color shown, String hex) {
    int wanted = Srgb.parse(hex).toPacked();
    return Math.abs(shown.getRed() - (wanted >> 16 & 0xFF)) <= 1
        && Math.abs(shown.getGreen() - (wanted >> 8 & 0xFF)) <= 1
        && Math.abs(shown.getBlue() - (wanted & 0xFF)) <= 1;
  }

  /** A channel may be one step off: JSON rounds to 8 bits, and so does the screen. */
  private static void assertColours(
      BufferedImage picture, List<BrowserPage.Place> places, List<String> expected) {
    for (int i = 0; i < expected.size(); i++) {
      Color shown = new Color(picture.getRGB((int) places.get(i).x(), (int) places.get(i).y()));
      int wanted = Srgb.parse(expected.get(i)).toPacked();
      assertThat(shown.getRed()).isCloseTo(wanted >> 16 & 0xFF, within(1));
      assertThat(shown.getGreen()).isCloseTo(wanted >> 8 & 0xFF, within(1));
      assertThat(shown.getBlue()).isCloseTo(wanted & 0xFF, within(1));
    }
  }
}
