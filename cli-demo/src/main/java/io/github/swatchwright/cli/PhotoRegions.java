package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.exchange.NamedRegion;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.photo.ShadeSearch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where in a photo colours are read: options of {@code sample}. */
final class PhotoRegions {
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
      description =
          "With --at: half the side of the square, in pixels or in percent of the picture's shorter"
              + " side (default 2%%).")
  @Nullable String radius;

  @Option(
      names = "--regions",
      paramLabel = "FILE",
      description =
          "Where to read colours, as CSV with the columns name and region; the page of --pick saves"
              + " such a file.")
  @Nullable GivenFile file;

  /**
   * A region and what is in it.
   *
   * @param name what it is called, if anybody says
   * @param region where it is
   */
  record Named(Optional<String> name, Region region) {
    /** Its colour. */
    RegionColour in(PhotoReader reader) {
      return called(RegionColour.of(region, reader.colour(region)));
    }

    /** Its shades. */
    List<RegionColour> in(PhotoReader reader, ShadeSearch search) {
      return reader.shades(region, search).stream()
          .map(shade -> called(RegionColour.of(region, shade)))
          .toList();
    }

    private RegionColour called(RegionColour read) {
      return name.map(read::withName).orElse(read);
    }
  }

  /** Whether any is given. */
  boolean isEmpty() {
    return regions.isEmpty() && places.isEmpty() && file == null;
  }

  /** All of them, in a photo; the whole of it when none is given. */
  List<Named> in(Photo photo) {
    if (radius != null && places.isEmpty()) {
      throw new IllegalArgumentException("--radius goes with --at");
    }
    if (isEmpty()) {
      Region whole = new Region(0, 0, photo.width(), photo.height());
      return List.of(new Named(Optional.empty(), whole));
    }
    List<Named> all = new ArrayList<>();
    for (String text : regions) {
      Region region = Region.parse(text, photo.width(), photo.height());
      all.add(new Named(Optional.empty(), region));
    }
    String half = radius == null ? "2%" : radius;
    places.forEach(text -> all.add(new Named(Optional.empty(), SquareAt.parse(text, half, photo))));
    if (file != null) {
      all.addAll(of(file, photo));
    }
    return all;
  }

  /** The regions of a file, in a photo. */
  static List<Named> of(GivenFile file, Photo photo) {
    List<Named> all = new ArrayList<>();
    byte[] content = file.read("--regions", ShelfFiles::content);
    for (NamedRegion given : NamedRegion.read(content, file.path().toString())) {
      try {
        Region region = Region.parse(given.region(), photo.width(), photo.height());
        all.add(new Named(Optional.of(given.name()), region));
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(
            file.path() + ": line " + given.line() + ": " + e.getMessage(), e);
      }
    }
    return all;
  }
}
