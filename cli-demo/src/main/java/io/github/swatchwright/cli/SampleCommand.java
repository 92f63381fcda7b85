package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.cli.file.Endings;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.cli.photo.PreviewPicture;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.photo.ShadeSearch;
import io.github.swatchwright.spectrum.Illuminant;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
      "  swatchwright sample hull.jpg --region 40%%,40%%,30%%,30%% --colours 4 --json > rust.json"
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

  @Option(
      names = "--region",
      paramLabel = "X,Y,W,H",
      description =
          "Where to read a colour; give it again for more. Without it, the whole picture.")
  List<String> regions = new ArrayList<>();

  @Option(
      names = "--at",
      paramLabel = "X,Y",
      description =
          "Where to read a colour, as the middle of a square, such as 40%%,60%%; give it again for"
              + " more.")
  List<String> places = new ArrayList<>();

  @Option(
      names = "--radius",
      paramLabel = "R",
      defaultValue = "2%",
      description =
          "With --at: half the side of the square, in pixels or in percent of the picture's shorter"
              + " side (default 2%%).")
  String radius = "";

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
          "Write a small PNG of the photo with the regions and their swatches drawn into it.")
  @Endings("png")
  @Nullable NewFile preview;

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
    Path file = Objects.requireNonNull(photo).path();
    Photo opened = PhotoFile.open(file);
    PhotoReader reader = reference.reader(opened, shared.shelf());
    List<RegionColour> colours =
        regions(opened).stream().flatMap(region -> read(reader, region)).toList();
    card.write(
        output,
        shared,
        () -> Card.ofSample(String.valueOf(file.getFileName()), reader.reference(), colours));
    if (preview != null) {
      writePreview(preview, reader, colours);
    }
    shared.give(
        output,
        () -> JsonResult.ofSample(file.toString(), reader.reference(), colours),
        () -> {
          output.line("Reference: %s", reader.reference());
          colours.forEach(this::print);
        });
  }

  private Stream<RegionColour> read(PhotoReader reader, Region region) {
    if (shades == null) {
      return Stream.of(RegionColour.of(region, reader.colour(region)));
    }
    return reader.shades(region, search(shades)).stream()
        .map(shade -> RegionColour.of(region, shade));
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

  private List<Region> regions(Photo photo) {
    if (regions.isEmpty() && places.isEmpty()) {
      return List.of(new Region(0, 0, photo.width(), photo.height()));
    }
    List<Region> all = new ArrayList<>();
    regions.forEach(text -> all.add(Region.parse(text, photo.width(), photo.height())));
    places.forEach(text -> all.add(SquareAt.parse(text, radius, photo)));
    return all;
  }

  private void print(RegionColour read) {
    PhotoColour colour = read.colour();
    output.line("");
    output.line("%s%s", output.block(colour.lab()), Output.notation(colour.lab()));
    output.line("  region    %s", read.region().toText());
    if (shades != null) {
      output.line("  share     %.0f %% of the region's area", 100 * read.share());
    }
    output.line("  pixels    %s", colour.shares().toText());
    output.line("  texture   ΔE00 %.1f holds 80 %% of the pixels", colour.pixelSpread());
    output.line("  error     ΔE00 %.1f holds the true colour in 80 %%", colour.intervalDeltaE00());
    if (!colour.lightnessKnown()) {
      output.line("  lightness unknown: nothing in the photo tells how bright its light was");
    }
    if (colour.shares().isCrushed()) {
      output.line("  strength  at least this: the colour is stronger than the file can hold");
    }
  }
}
