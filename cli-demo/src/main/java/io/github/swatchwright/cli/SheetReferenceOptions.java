package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.json.ChartJson;
import io.github.swatchwright.sheet.SheetReference;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What on a photographed sheet has known colours: options of {@code sheet}. */
final class SheetReferenceOptions {
  @Option(
      names = "--grey",
      paramLabel = "Y%",
      description =
          "With --read: a grey card lies in its place on the sheet; it reflects this share of"
              + " light, such as 18%%.")
  @Nullable String grey;

  @Option(
      names = "--chart",
      paramLabel = "FILE",
      description =
          "With --read: a colour chart of these known colours, as JSON, fills the place for it.")
  @Nullable GivenFile chart;

  @Option(
      names = "--paper-white",
      paramLabel = "COLOUR",
      description =
          "With --read: the paper's colour, such as 'lab(95, 1, -4)', when neither a grey card nor"
              + " a chart lies on the sheet; usual white paper when left out.")
  @Nullable String paperWhite;

  /** Whether none is given. */
  boolean isEmpty() {
    return grey == null && chart == null && paperWhite == null;
  }

  /** What colours are corrected by: usual white paper when nothing is given. */
  SheetReference reference() {
    if (Stream.of(grey, chart, paperWhite).filter(Objects::nonNull).count() > 1) {
      throw new IllegalArgumentException(
          "--grey, --chart and --paper-white exclude each other; give what is most exact");
    }
    String card = grey;
    GivenFile known = chart;
    String white = paperWhite;
    if (card != null) {
      if (!card.matches("\\d{1,3}(\\.\\d{1,3})?%")) {
        throw new IllegalArgumentException(
            "--grey: '" + card + "' isn't of the form 18%, what the card reflects");
      }
      return SheetReference.ofGreyCard(Double.parseDouble(card.substring(0, card.length() - 1)));
    }
    if (known != null) {
      return SheetReference.ofChart(known.read("--chart", ChartJson::read));
    }
    if (white != null) {
      return SheetReference.ofPaper(paper(white));
    }
    return SheetReference.ofPaper(SheetReference.USUAL_PAPER);
  }

  private static Lab paper(String text) {
    try {
      return Lab.parse(text);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("--paper-white: " + e.getMessage(), e);
    }
  }
}
