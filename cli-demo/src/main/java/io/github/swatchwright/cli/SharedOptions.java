package io.github.swatchwright.cli;

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
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
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
  @Nullable Path shelfFile;

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
  @Nullable Path notebookFile;

  @Option(
      names = "--table",
      paramLabel = "FILE",
      description = "Also write the result as a table: CSV, GIMP palette (.gpl) or JSON.")
  @Nullable Path tableFile;

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
    Path file = shelfFile;
    try {
      return file == null ? demoShelf() : shelf("--shelf", file);
    } catch (IOException e) {
      throw new IllegalArgumentException("the demo shelf can't be read: " + e.getMessage(), e);
    }
  }

  /** A shelf that an option names. */
  static Shelf shelf(String option, Path file) {
    try {
      return ShelfJson.read(file);
    } catch (NoSuchFileException e) {
      throw new IllegalArgumentException(option + ": there is no file " + file, e);
    } catch (IOException e) {
      String why =
          Files.isDirectory(file)
              ? "is a directory, must be a file"
              : "can't be read: " + e.getMessage();
      throw new IllegalArgumentException(option + ": " + file + " " + why, e);
    }
  }

  /** Gives a command's result in the form that was asked for. */
  void give(Output output, Supplier<String> jsonText, Runnable words) {
    if (json) {
      output.text(jsonText.get());
    } else {
      words.run();
    }
    if (tableFile != null) {
      ResultFile.write(tableFile, jsonText.get());
    }
    if (notebookFile != null) {
      writeDown(notebookFile, output, jsonText.get());
    }
  }

  private void writeDown(Path file, Output output, String found) {
    Shelf used = shelf();
    try {
      Notebook.at(file)
          .append(
              new NotebookEntry(
                  output.clock().instant().truncatedTo(ChronoUnit.SECONDS),
                  NotebookEntry.LIBRARY_VERSION,
                  used.name(),
                  ShelfJson.hash(used),
                  output.asked().without("--notebook", true).without("--json", false).arguments(),
                  found));
    } catch (NoSuchFileException e) {
      throw new IllegalArgumentException("--notebook: there is no folder for " + file, e);
    } catch (IOException | IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "--notebook: " + file + " can't be written: " + e.getMessage(), e);
    }
  }

  private static Shelf demoShelf() throws IOException {
    try (InputStream in = DemoShelf.open()) {
      return ShelfJson.read(in, DemoShelf.SOURCE);
    }
  }
}
