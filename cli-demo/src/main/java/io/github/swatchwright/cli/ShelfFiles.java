package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.cli.file.FileWrites;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.exchange.GimpPalette;
import io.github.swatchwright.exchange.ImportDefaults;
import io.github.swatchwright.exchange.ReadLimits;
import io.github.swatchwright.exchange.ShelfCsv;
import io.github.swatchwright.exchange.ShelfImport;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Shelves from and to other formats than their own, by the ending of a file's name. */
final class ShelfFiles {
  private ShelfFiles() {}

  /**
   * Imports a shelf.
   *
   * @param option what names the file
   * @throws IllegalArgumentException when the file can't be taken
   */
  static Shelf read(String option, GivenFile file, Optional<Medium> medium) {
    if (file.ending().equals("json")) {
      return file.read(option, ShelfJson::read);
    }
    String name = String.valueOf(file.path().getFileName());
    ShelfImport format =
        ShelfImport.ofFileName(name)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        option
                            + ": "
                            + file.path()
                            + " must end in .csv, .gpl, .json, or .txt (CGATS text); the swatches"
                            + " of a photo are read with --regions"));
    String shelfName = name.substring(0, name.lastIndexOf('.'));
    byte[] content = file.read(option, ShelfFiles::content);
    return format.read(content, file.path().toString(), new ImportDefaults(shelfName, medium));
  }

  /** At most one byte more than is taken: a file may have no end, such as a device. */
  static byte[] content(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(ReadLimits.USUAL.mostBytes() + 1);
    }
  }

  /**
   * Refuses a shelf that is there already as the place of a new one.
   *
   * @param adding options of {@code shelf} that add the new paints to it instead
   */
  static void requireFree(NewFile out, String adding) {
    if (Files.exists(out.path())) {
      throw new IllegalArgumentException(
          "--out: "
              + out
              + " is there already; --replace writes over it and keeps it with .bak at its end,"
              + " shelf --shelf "
              + out
              + " "
              + adding
              + " adds to it");
    }
  }

  /** Writes a shelf; one that is there already is kept beside it, with .bak at its end. */
  static void replace(FileWrites files, Path to, Shelf shelf) {
    new GivenFile(to)
        .readIfThere("--out", Files::readAllBytes)
        .ifPresent(
            old ->
                files.write(
                    "--out", new NewFile(to.resolveSibling(to.getFileName() + ".bak")), old));
    files.write("--out", new NewFile(to), ShelfJson.toText(shelf));
  }

  /**
   * For formats without drawdowns: masstones and contrast ratios of one coat that follow from them.
   */
  static Shelf withoutDrawdowns(Shelf shelf) {
    if (shelf.paints().stream().noneMatch(ShelfFiles::isDrawn)) {
      return shelf;
    }
    ShelfOptics optics = ShelfOptics.estimate(shelf);
    HidingPower hiding = new HidingPower(new Viewing(TristimulusWeights.D65, optics.surface()));
    return new Shelf(
        shelf.name(),
        shelf.paints().stream()
            .map(
                paint ->
                    isDrawn(paint) && paint.whyNotComputable().isEmpty()
                        ? paint
                            .withMasstone(optics.colour(paint.name()))
                            .withHiding(
                                new Hiding.ContrastRatio(
                                    hiding.contrastRatio(
                                        optics.of(paint.name()).constants(), Film.COAT)))
                        : paint)
            .toList(),
        shelf.surface());
  }

  private static boolean isDrawn(Paint paint) {
    return paint.masstone().isEmpty() && paint.drawdown().isPresent();
  }

  /**
   * Both shelves as one, with the first one's name and surface.
   *
   * @param replace whether a paint of the second takes the place of one of that name
   * @throws IllegalArgumentException when a paint is on both, unless it may be replaced
   */
  static Shelf merged(Shelf there, Shelf added, boolean replace) {
    Map<String, Paint> paints = new LinkedHashMap<>();
    there.paints().forEach(paint -> paints.put(paint.name(), paint));
    List<String> clashes =
        added.paints().stream()
            .map(Paint::name)
            .filter(paints::containsKey)
            .map(Printable::quoted)
            .toList();
    if (!clashes.isEmpty() && !replace) {
      throw new IllegalArgumentException(
          "on the shelf already: "
              + String.join(", ", clashes)
              + "; --replace takes the new ones instead, or give them other names");
    }
    added.paints().forEach(paint -> paints.put(paint.name(), paint));
    return new Shelf(there.name(), List.copyOf(paints.values()), there.surface());
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
