package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.card.SheetPrint;
import io.github.swatchwright.cli.file.FileWrites;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.sheet.PagePdf;
import io.github.swatchwright.cli.sheet.SheetCodes;
import io.github.swatchwright.json.SheetLayoutJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetDrawing;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What a sheet to print is for, and how it is laid out: options of {@code sheet}. */
final class SheetPrinting {
  private static final int MOST_FIELDS = 24;
  private static final long LONGEST_LIST = 100_000;

  @Option(
      names = "--names",
      paramLabel = "FILE|NAMES",
      description =
          "The paints: a text file with a name on each line, or the names themselves with commas"
              + " between them. Without it, the paints of --shelf.")
  @Nullable String names;

  @Option(names = "--blank", paramLabel = "N", description = "Instead of names, N numbered fields.")
  @Nullable Integer blank;

  @Option(
      names = "--tints",
      paramLabel = "P:W,…",
      description =
          "Also fields for each paint let down with white, such as 1:5,1:1 (paint : white).")
  @Nullable String tints;

  @Option(names = "--white", paramLabel = "NAME", description = "With --tints: the white.")
  @Nullable String white;

  @Option(
      names = "--mix",
      paramLabel = "MIX",
      description = "Also a field for this mix, such as calibrate --next asks for; give it again.")
  List<String> mixes = new ArrayList<>();

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "A4",
      description = "A4, A5 or Letter (default ${DEFAULT-VALUE}).")
  String paper = "";

  @Option(
      names = "--fields",
      paramLabel = "N",
      description = "Fields on a page, 1 to 24; 18 on A4 and Letter, 12 on A5 when left out.")
  @Nullable Integer fields;

  @Option(
      names = "--medium",
      paramLabel = "MEDIUM",
      defaultValue = "acrylic",
      description =
          "The medium of all paints: acrylic, lacquer, enamel, oil or water (default"
              + " ${DEFAULT-VALUE}).")
  String medium = "";

  /** Whether it is said what a sheet to print is for. */
  boolean isAsked() {
    return names != null
        || blank != null
        || tints != null
        || white != null
        || !mixes.isEmpty()
        || fields != null;
  }

  /** The pages that are asked for. */
  List<SheetPage> pages(@Nullable Shelf shelf) {
    Paper size = Words.one("--paper", paper, Paper.values(), Paper::word);
    Integer stated = fields;
    int most = stated == null ? SheetPage.usualFields(size) : stated;
    Require.within("--fields", most, 1, MOST_FIELDS);
    String code =
        names == null && blank == null && shelf != null
            ? SheetPage.shelfCode(shelf.name())
            : SheetPage.NO_SHELF;
    return SheetPage.pages(
        size,
        labels(shelf),
        most,
        code,
        Words.one("--medium", medium, Medium.values(), Medium::word));
  }

  private List<String> labels(@Nullable Shelf shelf) {
    List<String> paints = paints(shelf);
    String ratios = tints;
    List<String> labels = new ArrayList<>();
    for (String paint : paints) {
      labels.add(paint);
      if (ratios != null && !paint.equals(white)) {
        for (String tint : ratios.split(",", -1)) {
          labels.add(SheetPage.MIX + tint(paint, tint.trim()));
        }
      }
    }
    mixes.forEach(mix -> labels.add(SheetPage.MIX + mix.trim()));
    Require.within("the number of fields", labels.size(), 1, MOST_FIELDS * SheetPage.MOST_PAGES);
    return labels;
  }

  private String tint(String paint, String ratio) {
    if (white == null) {
      throw new IllegalArgumentException("--tints needs --white, the name of the white");
    }
    if (!ratio.matches("\\d{1,4}(\\.\\d{1,3})?:\\d{1,4}(\\.\\d{1,3})?")) {
      throw new IllegalArgumentException(
          "--tints: '" + ratio + "' isn't of the form 1:5, parts of paint to parts of white");
    }
    String[] parts = ratio.split(":", -1);
    return white + ":" + parts[1] + ", " + paint + ":" + parts[0];
  }

  private List<String> paints(@Nullable Shelf shelf) {
    Integer count = blank;
    String listed = names;
    if (count != null) {
      Require.within("--blank", count, 1, MOST_FIELDS * SheetPage.MOST_PAGES);
      List<String> numbered = new ArrayList<>();
      for (int i = 1; i <= count; i++) {
        numbered.add("Paint " + i);
      }
      return numbered;
    }
    if (listed != null) {
      return distinct(listed(listed));
    }
    if (shelf == null) {
      throw new IllegalArgumentException(
          "which paints is the sheet for? Give --names \"Yellow oxide, Red oxide\", --names"
              + " FILE with a name on each line, --shelf FILE, or --blank 18");
    }
    return shelf.paints().stream().map(Paint::name).toList();
  }

  private static List<String> listed(String text) {
    if (text.indexOf(',') < 0 && Files.isRegularFile(Path.of(text))) {
      return new GivenFile(Path.of(text)).read("--names", SheetPrinting::lines);
    }
    return Arrays.asList(text.split(",", -1));
  }

  private static List<String> lines(Path file) throws IOException {
    if (Files.size(file) > LONGEST_LIST) {
      throw new IllegalArgumentException(
          "--names: " + file + " is longer than " + LONGEST_LIST + " bytes");
    }
    return Files.readAllLines(file);
  }

  private static List<String> distinct(List<String> lines) {
    Set<String> seen = new LinkedHashSet<>();
    for (String line : lines) {
      String name = line.strip();
      if (!name.isEmpty() && !seen.add(name)) {
        throw new IllegalArgumentException("--names: '" + name + "' is named twice");
      }
      if (name.startsWith(SheetPage.MIX)) {
        throw new IllegalArgumentException(
            "--names: '" + name + "' begins with " + SheetPage.MIX + "; name mixes with --mix");
      }
    }
    return new ArrayList<>(seen);
  }

  /** Writes the pages, in the form that the file's name asks for, at the end of the command. */
  static void write(FileWrites files, NewFile file, List<SheetPage> pages) {
    List<SheetDrawing> drawings =
        pages.stream()
            .map(page -> SheetDrawing.of(SheetLayout.of(page), SheetCodes.of(page)))
            .toList();
    String ending = file.ending();
    if ((ending.equals("svg") || ending.equals("json")) && pages.size() > 1) {
      throw new IllegalArgumentException(
          "--out: "
              + file
              + " holds one page, the sheet has "
              + pages.size()
              + "; write it as .pdf or .html, or fewer fields");
    }
    switch (ending) {
      case "pdf" ->
          files.write(
              "--out",
              file,
              PagePdf.of("Swatch sheet", drawings.stream().map(SheetPrint::page).toList()));
      case "html" -> files.write("--out", file, SheetPrint.toHtml(drawings));
      case "svg" -> files.write("--out", file, SheetPrint.toSvg(drawings.get(0)));
      default -> files.write("--out", file, SheetLayoutJson.toText(SheetLayout.of(pages.get(0))));
    }
  }
}
