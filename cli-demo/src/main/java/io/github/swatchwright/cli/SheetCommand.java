package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.cli.file.Endings;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.sheet.SeenPicture;
import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.sheet.SheetPage;
import io.github.swatchwright.sheet.SheetReading;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints a sheet for strokes of paint, or reads photos of it into a shelf. */
@CommandLine.Command(
    name = "sheet",
    description =
        "Prints a sheet for one stroke of each paint, or reads photos of it into a shelf.",
    footer = {
      "",
      "Print the sheet, paint one stroke in each field, let it dry, photograph it, read it:",
      "  swatchwright sheet --names 'Yellow oxide, Red oxide' --out sheet.pdf",
      "  swatchwright sheet --read photo.jpg --grey 18%% --out bench.shelf.json --picture seen.png"
    })
final class SheetCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Mixin SheetPrinting printing = new SheetPrinting();

  @Mixin SheetPhotos reading = new SheetPhotos();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description =
          "The sheet to print: .pdf, .html, .svg, or .json for its layout. With --read: the shelf"
              + " to write.")
  @Endings({"pdf", "html", "svg", "json"})
  @Nullable NewFile out;

  @Option(
      names = "--cards",
      paramLabel = "FILE",
      description = "With --read: write the fields of mixes as test cards.")
  @Endings("json")
  @Nullable NewFile cardsFile;

  @Option(
      names = "--painted",
      paramLabel = "DAY",
      description =
          "With --read: the day on which the sheet was painted, such as 2026-11-20, for its cards:"
              + " bottles are as strong as they were on that day.")
  @Nullable LocalDate painted;

  @Option(
      names = "--add-to",
      paramLabel = "SHELF",
      description =
          "With --read: the shelf that the paints are added to. Without --out it is itself"
              + " written, and kept as it was beside it, with .bak at its end.")
  @Nullable GivenFile addTo;

  @Option(
      names = "--replace",
      description = "With --read: what was read replaces paints of that name.")
  boolean replace;

  @Option(
      names = "--finish",
      paramLabel = "FINISH",
      defaultValue = "matt",
      description = "With --read: the strokes are matt, satin or gloss (default ${DEFAULT-VALUE}).")
  String finish = "";

  @Option(
      names = "--picture",
      paramLabel = "FILE.png",
      description = "With --read: draw the flattened sheet with what was read where.")
  @Endings("png")
  @Nullable NewFile picture;

  SheetCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    if (reading.photos.isEmpty()) {
      print();
    } else {
      read();
    }
  }

  private void print() {
    boolean writesWhatIsRead =
        cardsFile != null || addTo != null || replace || picture != null || painted != null;
    if (writesWhatIsRead || reading.haveOptions()) {
      throw new IllegalArgumentException(
          "--cards, --add-to, --replace, --picture, --painted, --grey, --chart, --paper-white,"
              + " --corners, --layout and --partial go with --read");
    }
    if (shared.wantsResult()) {
      throw new IllegalArgumentException(
          "--json, --table and --notebook go with --read: a sheet to print is no result yet");
    }
    NewFile file = out;
    if (file == null) {
      throw new IllegalArgumentException("--out is missing, such as --out sheet.pdf");
    }
    List<SheetPage> pages = printing.pages(shared.shelfFile == null ? null : shared.shelf());
    SheetPrinting.write(output.files(), file, pages);
    output.line(
        "%s on %s written to %s. Print at 100 %%, paint, let dry, photograph, then:",
        Words.count(pages.stream().mapToInt(page -> page.labels().size()).sum(), "field"),
        Words.count(pages.size(), "page"),
        file);
    output.line("  swatchwright sheet --read PHOTO --out my.shelf.json --picture seen.png");
  }

  private void read() {
    if (printing.isAsked()) {
      throw new IllegalArgumentException(
          "--names, --blank, --tints, --white, --mix and --fields are for a sheet to print; leave"
              + " them out with --read");
    }
    Finish how = Words.one("--finish", finish, Finish.values(), Finish::word);
    if (out != null && !out.ending().equals("json")) {
      throw new IllegalArgumentException("--out: " + out + " must end in .json, it is a shelf");
    }
    Optional<Shelf> before =
        Optional.ofNullable(addTo).map(file -> file.read("--add-to", ShelfJson::read));
    List<SeenPicture.Page> pages = reading.read();
    List<SheetReading> readings = pages.stream().map(SeenPicture.Page::reading).toList();
    boolean ofThis = before.map(shelf -> isOf(readings, shelf)).orElse(false);
    NewFile stated = out;
    NewFile drawn = picture;
    GivenFile added = addTo;
    Path to = stated != null ? stated.path() : added != null ? added.path() : null;
    Optional<Shelf> shelf =
        to == null
            ? Optional.empty()
            : Optional.of(SheetShelf.shelf(readings, before, how, replace || ofThis));
    Optional<CardSet> cards = SheetShelf.cards(readings, Optional.ofNullable(painted));
    boolean same = stated != null && added != null && stated.path().equals(added.path());
    if (stated != null && !same && !replace && Files.exists(stated.path())) {
      throw new IllegalArgumentException(
          "--out: "
              + out
              + " is there already; --add-to "
              + out
              + " adds to it, --replace"
              + " writes over it");
    }
    write(shelf, to, cards);
    if (drawn != null) {
      output.files().write("--picture", drawn, SeenPicture.png(pages));
    }
    shared.give(
        output,
        () -> JsonResult.ofSheet(readings),
        () -> new SheetText(output).print(readings, to, cards, cardsFile != null));
  }

  /** Whether the sheet was printed for that shelf; one for another shelf is refused. */
  private static boolean isOf(List<SheetReading> readings, Shelf shelf) {
    String code = readings.get(0).layout().page().shelf();
    if (code.equals(SheetPage.NO_SHELF)) {
      return false;
    }
    if (!code.equals(SheetPage.shelfCode(shelf.name()))) {
      throw new IllegalArgumentException(
          "--add-to: the sheet was printed for another shelf than '" + shelf.name() + "'");
    }
    return true;
  }

  private void write(Optional<Shelf> shelf, @Nullable Path to, Optional<CardSet> cards) {
    if (shelf.isPresent() && to != null) {
      ShelfFiles.replace(output.files(), to, shelf.get());
    }
    NewFile cardsTo = cardsFile;
    if (cardsTo != null) {
      CardSet set =
          cards.orElseThrow(
              () -> new IllegalArgumentException("--cards: no field of a mix could be read"));
      output.files().write("--cards", cardsTo, CardsJson.toText(set));
    }
  }
}
