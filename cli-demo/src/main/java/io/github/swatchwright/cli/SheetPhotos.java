package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.cli.sheet.SeenPicture;
import io.github.swatchwright.cli.sheet.SheetCodeReader;
import io.github.swatchwright.json.ChartJson;
import io.github.swatchwright.json.SheetLayoutJson;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.sheet.Flattening;
import io.github.swatchwright.sheet.FoundSheet;
import io.github.swatchwright.sheet.SheetCode;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPage;
import io.github.swatchwright.sheet.SheetPhoto;
import io.github.swatchwright.sheet.SheetReader;
import io.github.swatchwright.sheet.SheetReference;
import io.github.swatchwright.sheet.Spot;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Photos of a sheet, and what on it has known colours: options of {@code sheet}. */
final class SheetPhotos {
  @Option(
      names = "--read",
      paramLabel = "PHOTO",
      arity = "1..*",
      description = "Read these photos of a painted sheet, one for each page.")
  List<GivenFile> photos = new ArrayList<>();

  @Option(
      names = "--grey",
      paramLabel = "Y%",
      description =
          "A grey card lies in its place on the sheet; it reflects this share of light, such as"
              + " 18%%.")
  @Nullable String grey;

  @Option(
      names = "--chart",
      paramLabel = "FILE",
      description = "A colour chart of these known colours, as JSON, fills the place for it.")
  @Nullable GivenFile chart;

  @Option(
      names = "--paper-white",
      paramLabel = "COLOUR",
      description =
          "The paper's colour, such as 'lab(95, 1, -4)', when neither a grey card nor a chart lies"
              + " on the sheet; usual white paper when left out.")
  @Nullable String paperWhite;

  @Option(
      names = "--corners",
      paramLabel = "X,Y;X,Y;X,Y;X,Y",
      description =
          "Where the corner marks are in the photo, pixels, clockwise from the left upper one of"
              + " the sheet; when they aren't found.")
  @Nullable String corners;

  @Option(
      names = "--layout",
      paramLabel = "FILE",
      description = "The sheet's layout, as JSON; when its code can't be read.")
  @Nullable GivenFile layoutFile;

  @Option(
      names = "--partial",
      description =
          "Accept some of the sheet's pages; without this option, all of them must be there.")
  boolean partial;

  /** Reads all photos, in the order of their pages. */
  List<SeenPicture.Page> read() {
    if ((corners != null || layoutFile != null) && photos.size() > 1) {
      throw new IllegalArgumentException("--corners and --layout go with one photo");
    }
    SheetReference reference = reference();
    List<SeenPicture.Page> pages = new ArrayList<>();
    for (GivenFile given : photos) {
      Path file = given.path();
      // What is wrong with a photo of several is said with its name; opening names it already.
      Photo opened = PhotoFile.open(file);
      try {
        pages.add(page(SheetPhoto.of(opened), reference));
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(file + ": " + e.getMessage(), e);
      }
    }
    pages.sort(Comparator.comparingInt(page -> page.reading().layout().page().page()));
    belongTogether(pages);
    return pages;
  }

  private SeenPicture.Page page(SheetPhoto photo, SheetReference reference) {
    Optional<SheetLayout> stated = Optional.ofNullable(layoutFile).map(SheetPhotos::layout);
    FoundSheet sheet = found(photo, stated);
    SheetLayout layout = stated.orElseGet(() -> SheetLayout.of(code(sheet)));
    Flattening flat = sheet.on(layout);
    return new SeenPicture.Page(photo, flat, SheetReader.read(photo, flat, layout, reference));
  }

  private FoundSheet found(SheetPhoto photo, Optional<SheetLayout> stated) {
    String places = corners;
    if (places != null) {
      SheetLayout layout =
          stated.orElseThrow(
              () ->
                  new IllegalArgumentException(
                      "--corners needs --layout, the sheet's layout as JSON"));
      return FoundSheet.near(photo, layout.marks(), spots(places));
    }
    return stated
        .map(layout -> FoundSheet.in(photo, layout.marks()))
        .orElseGet(() -> FoundSheet.in(photo));
  }

  private static SheetPage code(FoundSheet sheet) {
    return SheetCode.parse(
        SheetCodeReader.textOn(sheet)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "the sheet is found, but its code can't be read; photograph it nearer and"
                            + " sharper, or give its layout with --layout (sheet … --out"
                            + " layout.json writes it)")));
  }

  private static SheetLayout layout(GivenFile file) {
    return file.read("--layout", SheetLayoutJson::read);
  }

  private static List<Spot> spots(String text) {
    String[] pairs = text.trim().split("[;\\s]+", -1);
    List<Spot> spots = new ArrayList<>();
    try {
      for (String pair : pairs) {
        String[] numbers = pair.split(",", -1);
        if (numbers.length != 2) {
          break;
        }
        spots.add(new Spot(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])));
      }
    } catch (NumberFormatException e) {
      spots.clear();
    }
    if (spots.size() != 4 || pairs.length != 4) {
      throw new IllegalArgumentException(
          "--corners: '" + text + "' isn't of the form x,y;x,y;x,y;x,y, four points in pixels");
    }
    return spots;
  }

  private SheetReference reference() {
    if ((grey != null ? 1 : 0) + (chart != null ? 1 : 0) + (paperWhite != null ? 1 : 0) > 1) {
      throw new IllegalArgumentException(
          "--grey, --chart and --paper-white exclude each other; give what is most exact");
    }
    String card = grey;
    GivenFile known = chart;
    String white = paperWhite;
    if (card != null) {
      if (!card.matches("\\d{1,3}(\\.\\d{1,3})?%")) {
        throw new IllegalArgumentException(
            "--grey: '" + card + "' isn't of the form 18%, what the card reflects");
      }
      return new SheetReference.GreyCard(Double.parseDouble(card.substring(0, card.length() - 1)));
    }
    if (known != null) {
      return new SheetReference.ColourChart(known.read("--chart", ChartJson::read));
    }
    if (white != null) {
      return new SheetReference.PaperWhite(SheetShelf.labOf(white));
    }
    return new SheetReference.PaperWhite(SheetReference.USUAL_PAPER);
  }

  private void belongTogether(List<SeenPicture.Page> pages) {
    SheetPage first = pages.get(0).reading().layout().page();
    int expected = 1;
    for (SeenPicture.Page seen : pages) {
      SheetPage page = seen.reading().layout().page();
      if (!page.sheet().equals(first.sheet())) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "the photos are of two sheets, %s and %s; read each by itself",
                first.sheet(),
                page.sheet()));
      }
      if (page.page() < expected) {
        throw new IllegalArgumentException(
            "page " + page.page() + " of the sheet is in two photos; give one of them");
      }
      if (page.page() > expected && !partial) {
        throw missing(expected, first);
      }
      expected = page.page() + 1;
    }
    if (expected <= first.pages() && !partial) {
      throw missing(expected, first);
    }
  }

  private static IllegalArgumentException missing(int page, SheetPage sheet) {
    return new IllegalArgumentException(
        "page "
            + page
            + " of "
            + sheet.pages()
            + " is missing; give its photo too, or --partial to do without");
  }
}
