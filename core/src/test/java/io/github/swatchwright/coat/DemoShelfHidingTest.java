package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** How many coats the demo shelf's paints take, beside what painters say of such paints. */
class DemoShelfHidingTest {
  private static final Path PAGE = Path.of("..", "cli-demo", "docs", "hiding.md");
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final ShelfReport REPORT =
      ShelfReport.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);

  /**
   * Coats that such paints usually take over black and white: common practice of the trade, without
   * a source. White, yellow, orange and red are worst; earths, greys and black are best.
   *
   * @param kind what painters call it
   * @param least the fewest coats
   * @param most the most coats; 0 where it never hides
   * @param paints names on the shelf, commas between them
   */
  private record Usual(String kind, int least, int most, String paints) {
    boolean holds(OptionalInt coats) {
      return most == 0
          ? coats.isEmpty()
          : coats.isPresent() && coats.getAsInt() >= least && coats.getAsInt() <= most;
    }

    String range() {
      return most == 0 ? "never" : least == most ? "" + least : least + " to " + most;
    }
  }

  private static final Usual[] PRACTICE = {
    new Usual("white and off-white", 3, 6, "Titanium white, Enamel off-white"),
    new Usual("yellow and orange", 4, 6, "Arylide yellow, Bright orange"),
    new Usual("red", 3, 5, "Signal red"),
    new Usual("earth", 1, 3, "Yellow oxide, Red oxide, Burnt umber, Raw umber"),
    new Usual("strong blue and green", 2, 5, "Ultramarine blue, Phthalo blue, Phthalo green"),
    new Usual("chrome oxide green", 1, 2, "Chrome oxide green"),
    new Usual("grey", 1, 2, "Dredger grey"),
    new Usual("cream", 2, 3, "Deckhouse cream"),
    new Usual(
        "mixed dark body colour",
        1,
        2,
        "Boot-topping red, Quay-mud brown, Bucket-chain rust, Spud-leg brown, Engine-room green,"
            + " Tarpaulin blue"),
    new Usual("black", 1, 1, "Lamp black, Hull black"),
    new Usual(
        "wash and filter", 0, 0, "Whitewash wash, Rust-brown wash, Blue filter, Harbour-dirt wash"),
  };

  private static double coats(String name) {
    return REPORT.paints().stream()
        .filter(entry -> entry.paint().name().equals(name))
        .findFirst()
        .orElseThrow()
        .coatsToHide()
        .orElseThrow();
  }

  @Test
  void everyPaintHidesInTheCoatsThatPaintersSay() {
    Set<String> listed = new TreeSet<>();
    for (Usual usual : PRACTICE) {
      for (String name : usual.paints.split(", ", -1)) {
        listed.add(name);
        OptionalInt coats = HidingCoats.whole(coats(name));
        assertThat(usual.holds(coats))
            .as("%s: %s, usually %s", name, coats, usual.range())
            .isTrue();
        if (usual.most > 0 && SHELF.paint(name).medium() == Medium.ACRYLIC) {
          assertThat(coats.getAsInt()).as(name).isBetween(1, 6);
        }
      }
    }
    assertThat(listed)
        .containsExactlyInAnyOrderElementsOf(
            REPORT.paints().stream()
                .filter(entry -> entry.coatsToHide().isPresent())
                .map(entry -> entry.paint().name())
                .toList());
  }

  @Test
  void thePageIsWhatTheProgramSays() throws IOException {
    if (Boolean.getBoolean("docs.write")) {
      Files.writeString(PAGE, page());
    }
    assertThat(Files.readString(PAGE)).as("write it with -Ddocs.write=true").isEqualTo(page());
  }

  private static String page() {
    StringBuilder page =
        new StringBuilder(
            """
            # How many coats the demo shelf takes

            *Computed* is how much of the usual wet coat hides black and white (contrast ratio 0.98); *coats* is
            that as a painter counts, in whole ones. *Usual* is common practice of the trade, without a source,
            for paint of that kind. The shelf is invented; your own bottles and your own brush win.
            `DemoShelfHidingTest` writes this page from what the program says, and fails where a paint leaves
            its range.

            | kind | paint | computed | coats | usual |
            |---|---|---|---|---|
            """);
    for (Usual usual : PRACTICE) {
      for (String name : usual.paints.split(", ", -1)) {
        OptionalInt coats = HidingCoats.whole(coats(name));
        page.append(
            String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s | %s |%n",
                usual.kind,
                name,
                coats.isEmpty() ? "-" : String.format(Locale.ROOT, "%.1f", coats(name)),
                coats.isEmpty() ? "never" : "" + coats.getAsInt(),
                usual.range()));
      }
    }
    return page.toString().replace(System.lineSeparator(), "\n");
  }
}
