package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.card.ReachPlot;
import io.github.swatchwright.cli.file.Endings;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.match.ShelfReach;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Checks and lists a shelf. */
@CommandLine.Command(
    name = "shelf",
    description = "Checks a shelf, and lists its paints with colour, medium and hiding.",
    footer = {
      "",
      "Examples:",
      "  swatchwright shelf --light A",
      "  swatchwright shelf --export bench.csv",
      "  swatchwright shelf --import bench.csv --out bench.shelf.json",
      "  swatchwright shelf --shelf bench.shelf.json --add bottles.csv",
      "  swatchwright shelf --shelf bench.shelf.json --add new.jpg --regions new.regions.csv"
          + " --medium acrylic"
    })
final class ShelfCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Mixin CardOption card = new CardOption();

  @Option(
      names = "--import",
      paramLabel = "FILE",
      description =
          "Take the paints of this file: CSV, GIMP palette (.gpl), JSON, what colour instruments"
              + " write (CGATS text, .txt), or a photo with --regions.")
  @Nullable GivenFile importFile;

  @Option(
      names = "--add",
      paramLabel = "FILE",
      description =
          "Add the paints of this file, one bottle or many, to the shelf that --shelf names; the"
              + " formats are those of --import. The shelf as it was is kept beside it, with .bak"
              + " at its end.")
  @Nullable GivenFile addFile;

  @Option(
      names = "--regions",
      paramLabel = "FILE",
      description =
          "With --import or --add of a photo: where its swatches are, as CSV with the columns name"
              + " and region; the page of sample --pick saves such a file.")
  @Nullable GivenFile regions;

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Option(
      names = "--replace",
      description =
          "With --add: new paints take the place of those of the same name. With --import: --out"
              + " may be a shelf that is there already; it is kept with .bak at its end.")
  boolean replace;

  @Option(
      names = "--medium",
      paramLabel = "MEDIUM",
      description =
          "With --import or --add: the medium where the file tells none: acrylic, lacquer, enamel,"
              + " oil or water.")
  @Nullable String medium;

  @Option(
      names = "--out",
      paramLabel = "NEW",
      description = "With --import or --add: the shelf file to write, as JSON.")
  @Nullable NewFile newFile;

  @Option(
      names = "--export",
      paramLabel = "FILE",
      description = "Write the shelf as CSV, GIMP palette (.gpl) or JSON.")
  @Endings({"csv", "gpl", "json"})
  @Nullable NewFile exportFile;

  @Option(
      names = "--plot",
      paramLabel = "FILE.svg",
      description = "Draw what the shelf can be mixed to, and what it can't.")
  @Endings("svg")
  @Nullable NewFile plotFile;

  ShelfCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    if (regions == null && !reference.isEmpty()) {
      throw new IllegalArgumentException(
          "--grey, --chart, --even-light and --beside go with --regions");
    }
    TristimulusWeights light = shared.weights();
    Shelf shelf = shelf();
    Optional<NewFile> to = shelfToWrite();
    if (to.isPresent()) {
      write(shelf, to.get(), light);
      return;
    }
    if (exportFile != null) {
      Shelf written =
          exportFile.ending().equals("json") ? shelf : ShelfFiles.withoutDrawdowns(shelf);
      output.files().write("--export", exportFile, ShelfFiles.toText(written, exportFile));
    }
    ShelfOptics optics = ShelfOptics.estimate(shelf);
    ShelfReport report = ShelfReport.of(optics, light);
    Optional<ShelfReach> reach =
        optics.paints().isEmpty() ? Optional.empty() : Optional.of(ShelfReach.of(optics, light));
    if (plotFile != null) {
      plot(plotFile, report, reach);
    }
    card.write(output, shared, () -> Card.of(report, reach, shared.light()));
    shared.give(
        output,
        () -> JsonResult.of(report, reach, shared.light()),
        () -> {
          ShelfText text = new ShelfText(output);
          text.print(report, shared.light());
          reach.ifPresent(text::print);
        });
  }

  private void plot(NewFile file, ShelfReport report, Optional<ShelfReach> reach) {
    ShelfReach known =
        reach.orElseThrow(
            () ->
                new IllegalArgumentException(
                    "--plot: the shelf '"
                        + report.name()
                        + "' holds no paint that can be computed with"));
    output.files().write("--plot", file, new ReachPlot(report, known).toSvg());
  }

  /** A new shelf is looked through as far as it takes no estimate: it may be a large one. */
  private void write(Shelf shelf, NewFile file, TristimulusWeights light) {
    ShelfFiles.replace(output.files(), file.path(), shelf);
    ShelfReport report = ShelfReport.ofLabels(shelf, light);
    card.write(output, shared, () -> Card.of(report, Optional.empty(), shared.light()));
    shared.give(
        output,
        () -> JsonResult.of(report, shared.light()),
        () -> {
          report.problems().forEach(problem -> output.line("Note: %s.", problem.text()));
          output.line("%s written to %s.", Words.count(report.paints().size(), "paint"), file);
        });
  }

  private Optional<NewFile> shelfToWrite() {
    NewFile out = newFile;
    GivenFile own = shared.shelfFile;
    if (addFile != null && own != null && out == null) {
      return Optional.of(new NewFile(own.path()));
    }
    boolean isOwn = addFile != null && own != null && out != null && own.path().equals(out.path());
    if (out != null && !isOwn && !replace) {
      ShelfFiles.requireFree(out, "--add FILE");
    }
    return Optional.ofNullable(out);
  }

  private Shelf shelf() {
    Optional<Medium> stated =
        Optional.ofNullable(medium)
            .map(word -> Words.one("--medium", word, Medium.values(), Medium::word));
    if (addFile != null) {
      if (importFile != null) {
        throw new IllegalArgumentException("--add and --import exclude each other");
      }
      if (shared.shelfFile == null) {
        throw new IllegalArgumentException("--add needs --shelf FILE, the shelf to add to");
      }
      Shelf added = paints("--add", addFile, stated);
      return ShelfFiles.merged(shared.shelf(), added, replace);
    }
    if (importFile == null) {
      if (newFile != null || medium != null || replace || regions != null) {
        throw new IllegalArgumentException(
            "--out, --medium, --regions and --replace go with --import or --add");
      }
      return shared.shelf();
    }
    return paints("--import", importFile, stated);
  }

  /** The paints of a file, or of the regions of a photo. */
  private Shelf paints(String option, GivenFile file, Optional<Medium> stated) {
    GivenFile places = regions;
    if (places == null) {
      return ShelfFiles.read(option, file, stated);
    }
    Medium all =
        stated.orElseThrow(
            () -> new IllegalArgumentException("--regions needs --medium, such as acrylic"));
    Photo photo = PhotoFile.open(file.path());
    PhotoReader reader = reference.reader(photo, shared.shelf());
    List<RegionColour> colours =
        PhotoRegions.of(places, photo).stream().map(named -> named.in(reader)).toList();
    return PhotoShelf.of(String.valueOf(file.path().getFileName()), colours, all);
  }
}
