package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.json.ChartJson;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.photo.Chart;
import io.github.swatchwright.photo.Illumination;
import io.github.swatchwright.photo.KnownPatch;
import io.github.swatchwright.photo.NeutralPatch;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PhotoCorrection;
import io.github.swatchwright.photo.Region;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What in a photo tells its light: options of every command that takes colours from photos. */
final class PhotoReference {
  /** What stands above these options in the help. */
  static final String HEADING =
      "%nFor colours from photos (AREA is x,y,w,h, in pixels or percent):%n";

  @Option(
      names = "--grey",
      paramLabel = "AREA@Y%",
      description =
          "Where a grey card or white paper is, and how much of the light it reflects, such as"
              + " 10,10,50,50@18%%; give it again for the steps of a grey scale.")
  List<String> greys = new ArrayList<>();

  @Option(
      names = "--chart",
      paramLabel = "FILE@AREA",
      description =
          "The known colours of a colour chart's patches, as JSON, and where the chart is in the"
              + " photo; instead of --grey.")
  @Nullable String chart;

  @Option(
      names = "--even-light",
      paramLabel = "AREA",
      description =
          "A plain area of the photo, of one colour whatever it is, that tells how the light falls;"
              + " give it again for more.")
  List<String> plainAreas = new ArrayList<>();

  @Option(
      names = "--beside",
      paramLabel = "AREA@COLOUR",
      description =
          "Where a patch of known colour is in the same photo, such as 60%%,40%%,5%%,5%%@'Red"
              + " oxide'; the more it is like the colour that is read, the surer that becomes.")
  @Nullable String beside;

  /** Whether none is given. */
  boolean isEmpty() {
    return greys.isEmpty() && chart == null && plainAreas.isEmpty() && beside == null;
  }

  /** Reads a photo by these references; a patch of known colour may be a paint of the shelf. */
  PhotoReader reader(Photo photo, Shelf shelf) {
    Illumination light = plainAreas.isEmpty() ? Illumination.even() : light(photo);
    PhotoCorrection correction = correction(photo, light);
    String text = beside;
    if (text != null) {
      correction = besideKnown(correction, knownPatch(text, photo, light, shelf));
    }
    return new PhotoReader(photo, light, correction, places(photo));
  }

  private static PhotoCorrection besideKnown(PhotoCorrection correction, KnownPatch patch) {
    return named("--beside", () -> PhotoCorrection.ofBeside(correction, patch));
  }

  private static KnownPatch knownPatch(String text, Photo photo, Illumination light, Shelf shelf) {
    int at = text.indexOf('@');
    if (at < 0) {
      throw new IllegalArgumentException(
          "--beside: '" + text + "' is not of the form x,y,w,h@COLOUR, a region and its colour");
    }
    Region region = region("--beside", text.substring(0, at), photo);
    GivenColour known =
        named("--beside", () -> ColourArgument.known(text.substring(at + 1).trim(), shelf));
    return named(
        "--beside",
        () -> new KnownPatch(light.sample(photo, region), known.swatch().lab(), known.error()));
  }

  private Illumination light(Photo photo) {
    List<Region> areas =
        plainAreas.stream().map(area -> region("--even-light", area, photo)).toList();
    return named("--even-light", () -> Illumination.fittedTo(photo, areas));
  }

  /** Where references are in the photo. */
  private List<Region> places(Photo photo) {
    List<Region> places = new ArrayList<>();
    greys.forEach(grey -> places.add(region("--grey", before(grey), photo)));
    if (chart != null) {
      places.add(region("--chart", after(chart), photo));
    }
    plainAreas.forEach(area -> places.add(region("--even-light", area, photo)));
    if (beside != null) {
      places.add(region("--beside", beside.substring(0, beside.indexOf('@')), photo));
    }
    return places;
  }

  private PhotoCorrection correction(Photo photo, Illumination light) {
    String file = chart;
    if (file != null) {
      if (!greys.isEmpty()) {
        throw new IllegalArgumentException(
            "--chart and --grey exclude each other: a chart has greys");
      }
      return chart(file, photo, light);
    }
    if (greys.isEmpty()) {
      return PhotoCorrection.ofNothing();
    }
    return PhotoCorrection.ofGreys(greys.stream().map(text -> patch(text, photo, light)).toList());
  }

  private static PhotoCorrection chart(String text, Photo photo, Illumination light) {
    if (text.lastIndexOf('@') < 1) {
      throw new IllegalArgumentException(
          "--chart: '" + text + "' is not of the form FILE@x,y,w,h, a file and where the chart is");
    }
    Region where = region("--chart", after(text), photo);
    Chart known = new GivenFile(Path.of(before(text))).read("--chart", ChartJson::read);
    return named("--chart", () -> PhotoCorrection.ofChart(known.seenIn(photo, light, where)));
  }

  private static NeutralPatch patch(String text, Photo photo, Illumination light) {
    if (text.indexOf('@') < 0 || !text.endsWith("%")) {
      throw new IllegalArgumentException(
          "--grey: '" + text + "' is not of the form x,y,w,h@18%, a region and what it reflects");
    }
    Region region = region("--grey", before(text), photo);
    String percent = after(text);
    double luminance;
    try {
      luminance = Double.parseDouble(percent.substring(0, percent.length() - 1));
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("--grey: '" + percent + "' is not a number of percent", e);
    }
    return named("--grey", () -> new NeutralPatch(light.sample(photo, region), luminance));
  }

  private static Region region(String option, String text, Photo photo) {
    return named(option, () -> Region.parse(text, photo.width(), photo.height()));
  }

  private static String before(String text) {
    return text.substring(0, Math.max(0, text.lastIndexOf('@')));
  }

  private static String after(String text) {
    return text.substring(text.lastIndexOf('@') + 1);
  }

  /** Puts the option before what is refused. */
  private static <T> T named(String option, Supplier<T> maker) {
    try {
      return maker.get();
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(option + ": " + e.getMessage(), e);
    }
  }
}
