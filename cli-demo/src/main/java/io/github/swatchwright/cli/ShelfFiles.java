package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.exchange.GimpPalette;
import io.github.swatchwright.exchange.ImportDefaults;
import io.github.swatchwright.exchange.ReadLimits;
import io.github.swatchwright.exchange.ShelfCsv;
import io.github.swatchwright.exchange.ShelfImport;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.Optional;

/** Shelves from and to other formats than their own, by the ending of a file's name. */
final class ShelfFiles {
  private ShelfFiles() {}

  /**
   * Imports a shelf.
   *
   * @throws IllegalArgumentException when the file can't be taken
   */
  static Shelf read(GivenFile file, Optional<Medium> medium) {
    if (file.ending().equals("json")) {
      return file.read("--import", ShelfJson::read);
    }
    String name = String.valueOf(file.path().getFileName());
    ShelfImport format =
        ShelfImport.ofFileName(name)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "--import: "
                            + file.path()
                            + " must end in .csv, .gpl, .cgats, .txt, .ti3, .it8 or .json"));
    String shelfName = name.substring(0, name.lastIndexOf('.'));
    byte[] content = file.read("--import", path -> content(Files.newInputStream(path)));
    return format.read(content, file.path().toString(), new ImportDefaults(shelfName, medium));
  }

  /** At most one byte more than is taken: a file may have no end, such as a device. */
  private static byte[] content(InputStream in) throws IOException {
    try (in) {
      return in.readNBytes(ReadLimits.USUAL.mostBytes() + 1);
    }
  }

  /** A shelf in the format that a new file's ending names. */
  static String toText(Shelf shelf, NewFile file) {
    return switch (file.ending()) {
      case "csv" -> ShelfCsv.toText(shelf);
      case "gpl" -> GimpPalette.toText(shelf);
      default -> ShelfJson.toText(shelf);
    };
  }
}
