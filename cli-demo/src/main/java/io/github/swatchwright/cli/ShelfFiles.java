package io.github.swatchwright.cli;

import io.github.swatchwright.exchange.GimpPalette;
import io.github.swatchwright.exchange.ImportDefaults;
import io.github.swatchwright.exchange.ShelfCsv;
import io.github.swatchwright.exchange.ShelfImport;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** Shelves from and to other formats than their own, by the ending of a file's name. */
final class ShelfFiles {
  private static final long MOST_BYTES = 10_000_000;

  private ShelfFiles() {}

  /**
   * Imports a shelf.
   *
   * @throws IllegalArgumentException when the file can't be taken
   */
  static Shelf read(Path file, Optional<Medium> medium) {
    String name = String.valueOf(file.getFileName());
    try {
      if (ending(file).equals("json")) {
        return ShelfJson.read(file);
      }
      ShelfImport format =
          ShelfImport.ofFileName(name)
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "--import: "
                              + file
                              + " must end in .csv, .gpl, .cgats, .txt, .ti3, .it8"
                              + " or .json"));
      if (Files.size(file) > MOST_BYTES) {
        throw new IllegalArgumentException(
            file + ": is longer than " + MOST_BYTES + " bytes, the most that is read");
      }
      String shelfName = name.substring(0, name.lastIndexOf('.'));
      return format.read(
          Files.readAllBytes(file), file.toString(), new ImportDefaults(shelfName, medium));
    } catch (NoSuchFileException e) {
      throw new IllegalArgumentException("--import: there is no file " + file, e);
    } catch (IOException e) {
      throw new IllegalArgumentException(
          "--import: " + file + " can't be read: " + e.getMessage(), e);
    }
  }

  /**
   * Exports a shelf.
   *
   * @throws IllegalArgumentException for another ending, and when it can't be written there
   */
  static void write(String option, Path file, Shelf shelf) {
    String text =
        switch (ending(file)) {
          case "json" -> ShelfJson.toText(shelf);
          case "csv" -> ShelfCsv.toText(shelf);
          case "gpl" -> GimpPalette.toText(shelf);
          default ->
              throw new IllegalArgumentException(
                  option + ": " + file + " must end in .csv, .gpl or .json");
        };
    WholeFile.write(option, file, text);
  }

  private static String ending(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
