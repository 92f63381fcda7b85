package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.Endings;
import io.github.swatchwright.cli.file.FileReason;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.file.NotebookFile;
import io.github.swatchwright.exchange.CsvText;
import io.github.swatchwright.exchange.GimpPalette;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.NotebookEntry;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.io.IOException;
import java.io.InputStream;
import java.time.temporal.ChronoUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What every command takes. */
final class SharedOptions {
  @Option(
      names = "--shelf",
      paramLabel = "FILE",
      description = "The paints you own, as JSON. Without it, an invented demo shelf is used.")
  @Nullable GivenFile shelfFile;

  @Option(
      names = "--light",
      paramLabel = "LIGHT",
      defaultValue = "D65",
      description = "The light to look under: D65 (daylight), D50, A (tungsten), F11 or LED-B3.")
  String lightName = "";

  @Option(
      names = "--notebook",
      paramLabel = "FILE",
      description = "Write down what was asked and found, at the end of this file.")
  @Nullable NotebookFile notebookFile;

  @Option(
      names = "--table",
      paramLabel = "FILE",
      description = "Also write the result as a table: CSV, GIMP palette (.gpl) or JSON.")
  @Endings({"csv", "gpl", "json"})
  @Nullable NewFile tableFile;

  @Option(names = "--json", description = "Print one JSON object.")
  boolean json;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  boolean help;

  private @Nullable Shelf shelf;

  /** The light. */
  Illuminant light() {
    try {
      return Illuminant.parse(lightName);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("--light: " + e.getMessage(), e);
    }
  }

  /** The light as an observer's weights. */
  TristimulusWeights weights() {
    return TristimulusWeights.of(light(), Observer.CIE_1931);
  }

  /** The shelf. */
  Shelf shelf() {
    if (shelf == null) {
      shelf = readShelf();
    }
    return shelf;
  }

  private Shelf readShelf() {
    GivenFile file = shelfFile;
    try {
      return file == null ? demoShelf() : file.read("--shelf", ShelfJson::read);
    } catch (IOException e) {
      throw new IllegalArgumentException("the demo shelf can't be read: " + FileReason.of(e), e);
    }
  }

  /** Whether the result is asked for in another form than words. */
  boolean wantsResult() {
    return json || tableFile != null || notebookFile != null;
  }

  /** Gives a command's result in the form that was asked for. */
  void give(Output output, Supplier<JsonResult> result, Runnable words) {
    if (json) {
      output.json(result.get().toText());
    } else {
      words.run();
    }
    if (tableFile != null) {
      output.files().write("--table", tableFile, table(tableFile, result.get()));
    }
    if (notebookFile != null) {
      writeDown(notebookFile, output, result.get().toText());
    }
  }

  /** The result in the format that the file's ending names. */
  private static String table(NewFile file, JsonResult result) {
    return switch (file.ending()) {
      case "csv" -> CsvText.toText(result.toTable().records());
      case "gpl" -> GimpPalette.toText("Swatchwright", result.toTable().colours());
      default -> result.toText();
    };
  }

  /** The number of the entry that is written down, or 0 where none is. */
  int nextEntry() {
    NotebookFile file = notebookFile;
    if (file == null) {
      return 0;
    }
    return 1
        + file.given()
            .readIfThere("--notebook", path -> Notebook.at(path).read())
            .map(contents -> contents.entries().size())
            .orElse(0);
  }

  private void writeDown(NotebookFile file, Output output, String found) {
    Shelf used = shelf();
    NotebookEntry entry =
        new NotebookEntry(
            output.clock().instant().truncatedTo(ChronoUnit.SECONDS),
            NotebookEntry.LIBRARY_VERSION,
            used.name(),
            ShelfJson.hash(used),
            output.typed().without("--notebook", true).without("--json", false).arguments(),
            found);
    output.files().append("--notebook", file, path -> Notebook.at(path).append(entry));
  }

  private static Shelf demoShelf() throws IOException {
    try (InputStream in = DemoShelf.open()) {
      return ShelfJson.read(in, DemoShelf.SOURCE);
    }
  }
}
