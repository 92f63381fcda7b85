package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.cli.file.Endings;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.cli.photo.PickPage;
import io.github.swatchwright.cli.photo.PreviewPicture;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.photo.ShadeSearch;
import io.github.swatchwright.spectrum.Illuminant;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads colours from a photo. */
@CommandLine.Command(
    name = "sample",
    description = "Reads the colours of regions of a photo, as they are under daylight.",
    footer = {
      "",
      "A region is x,y,w,h in pixels of the upright picture, or in percent: 10%%,20%%,5%%,5%%.",
      "",
      "Examples:",
      "  swatchwright sample hull.jpg --region 40%%,40%%,10%%,10%% --grey 120,80,60,60@18%%",
      "  swatchwright sample hull.jpg --region 40%%,40%%,30%%,30%% --colours 4 --json > rust.json",
      "  swatchwright sample bench.jpg --pick pick.html",
      "  swatchwright sample bench.jpg --regions bench.regions.csv --out bench.shelf.json"
    })
final class SampleCommand implements Command {
  /** What an option without its number comes as. */
  private static final String BY_ITSELF = "auto";

  /** The same photo gives the same shades. */
  private static final long SEED = 1;

  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Mixin CardOption card = new CardOption();

  @Parameters(index = "0", paramLabel = "PHOTO", description = "A JPEG, PNG, WebP or TIFF file.")
  @Nullable GivenFile photo;

  @Mixin PhotoRegions regions = new PhotoRegions();

  @Option(
      names = "--colours",
      paramLabel = "N",
      arity = "0..1",
      fallbackValue = BY_ITSELF,
      description =
          "Read the shades that a region consists of, with their shares of the area: at most N, or"
              + " as many as stand for it when no number is given.")
  @Nullable String shades;

  @Option(
      names = "--preview",
      paramLabel = "FILE",
      description =
          "Write a small PNG of the photo with a grid, the regions with their numbers and names,"
              + " and their swatches.")
  @Endings("png")
  @Nullable NewFile preview;

  @Option(
      names = "--pick",
      paramLabel = "FILE",
      description =
          "Read nothing yet: write a page for a browser, on which regions of the photo are picked"
              + " by click or by key, and named.")
  @Endings("html")
  @Nullable NewFile pick;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "With --regions: write the colours as paints of a shelf, by their names.")
  @Endings("json")
  @Nullable NewFile out;

  @Option(
      names = "--medium",
      paramLabel = "MEDIUM",
      description =
          "With --out: the medium of all paints: acrylic, lacquer, enamel, oil or water (default"
              + " acrylic).")
  @Nullable String medium;

  @Option(
      names = "--replace",
      description =
          "With --out: write over a shelf that is there, and keep it with .bak at its end.")
  boolean replace;

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  SampleCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    if (!shared.light().equals(Illuminant.D65)) {
      throw new IllegalArgumentException(
          "--light is " + shared.light() + ", must be D65: a photo tells no other light's colours");
    }
    if (out == null && (replace || medium != null)) {
      throw new IllegalArgumentException("--medium and --replace go with --out");
    }
    Path file = Objects.requireNonNull(photo).path();
    Photo opened = PhotoFile.open(file);
    if (pick != null) {
      writePick(pick, opened, file);
      return;
    }
    PhotoReader reader = reference.reader(opened, shared.shelf());
    List<RegionColour> colours =
        regions.in(opened).stream().flatMap(region -> read(reader, region).stream()).toList();
    card.write(
        output,
        shared,
        () -> Card.ofSample(String.valueOf(file.getFileName()), reader.reference(), colours));
    if (preview != null) {
      writePreview(preview, reader, colours);
    }
    if (out != null) {
      writeShelf(out, file, colours);
    }
    shared.give(
        output,
        () -> JsonResult.ofSample(file.toString(), reader.reference(), colours),
        () -> {
          new SampleText(output, shades != null).print(reader.reference(), colours);
          tellOut(colours.size());
        });
  }

  private void writePick(NewFile page, Photo opened, Path file) {
    boolean readsColours =
        !regions.isEmpty() || shades != null || preview != null || out != null || card.file != null;
    if (!reference.isEmpty()) {
      throw new IllegalArgumentException(
          "--pick reads no colours yet: leave out --grey, --chart, --even-light and --beside, and"
              + " mark a grey card on the page");
    }
    if (readsColours || shared.wantsResult()) {
      throw new IllegalArgumentException(
          "--pick reads no colours yet: leave out --region, --at, --regions, --colours, --preview,"
              + " --out, --card, --json, --table and --notebook");
    }
    String name = String.valueOf(file.getFileName());
    String bare = name.lastIndexOf('.') > 0 ? name.substring(0, name.lastIndexOf('.')) : name;
    output
        .files()
        .write(
            "--pick",
            page,
            PickPage.of(opened, name, TypedLine.quoted(file.toString()), bare + ".regions.csv"));
    output.line(
        "%s written. Open it in a browser, pick and name the swatches, save them as %s.regions.csv;"
            + " the page shows the command that reads them.",
        page, bare);
  }

  private void writeShelf(NewFile to, Path file, List<RegionColour> colours) {
    if (!replace) {
      ShelfFiles.requireFree(to, "--add " + file + " --regions FILE");
    }
    String name = String.valueOf(file.getFileName());
    ShelfFiles.replace(output.files(), to.path(), PhotoShelf.of(name, colours, medium()));
  }

  private Medium medium() {
    return medium == null
        ? Medium.ACRYLIC
        : Words.one("--medium", medium, Medium.values(), Medium::word);
  }

  private void tellOut(int paints) {
    if (out != null) {
      output.line("");
      output.line(
          "Shelf with %s (%s) written to %s.", Words.count(paints, "paint"), medium().word(), out);
    }
  }

  private List<RegionColour> read(PhotoReader reader, PhotoRegions.Named named) {
    return shades == null ? List.of(named.in(reader)) : named.in(reader, search(shades));
  }

  private void writePreview(NewFile to, PhotoReader reader, List<RegionColour> colours) {
    Map<Region, List<RegionColour>> byRegion =
        colours.stream()
            .collect(
                Collectors.groupingBy(
                    RegionColour::region, LinkedHashMap::new, Collectors.toList()));
    List<PreviewPicture.Read> reads =
        byRegion.entrySet().stream()
            .map(
                region ->
                    new PreviewPicture.Read(
                        region.getValue().get(0).name().orElse(""),
                        region.getKey(),
                        region.getValue().stream().map(read -> read.colour().lab()).toList(),
                        region.getValue().stream().map(RegionColour::share).toList()))
            .toList();
    output
        .files()
        .write("--preview", to, PreviewPicture.png(reader.photo(), reads, reader.references()));
  }

  private static ShadeSearch search(String most) {
    if (most.equals(BY_ITSELF)) {
      return new ShadeSearch(OptionalInt.empty(), SEED);
    }
    try {
      return new ShadeSearch(OptionalInt.of(Integer.parseInt(most)), SEED);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("--colours: '" + most + "' is not a whole number", e);
    }
  }
}
