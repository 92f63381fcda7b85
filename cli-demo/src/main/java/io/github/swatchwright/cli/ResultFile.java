package io.github.swatchwright.cli;

import io.github.swatchwright.exchange.CsvText;
import io.github.swatchwright.exchange.GimpPalette;
import io.github.swatchwright.json.ResultTable;
import java.nio.file.Path;
import java.util.Locale;

/** A command's result in the format that a file's ending names. */
final class ResultFile {
  private ResultFile() {}

  /**
   * Writes it.
   *
   * @param result the result, a JSON object
   * @throws IllegalArgumentException for another ending, and when it can't be written there
   */
  static void write(Path file, String result) {
    String name = String.valueOf(file.getFileName());
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    String text =
        switch (ending) {
          case "json" -> result;
          case "csv" -> CsvText.toText(ResultTable.of(result).records());
          case "gpl" -> GimpPalette.toText("Swatchwright", ResultTable.of(result).colours());
          default ->
              throw new IllegalArgumentException(
                  "--table: " + file + " must end in .csv, .gpl or .json");
        };
    WholeFile.write("--table", file, text);
  }
}
