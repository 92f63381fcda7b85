package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.cli.sheet.SeenPicture;
import io.github.swatchwright.cli.sheet.SheetCodeReader;
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
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Photos of a sheet, and where on them it is: options of {@code sheet}. */
final class SheetPhotos {
  @Option(
      names = "--read",
      paramLabel = "PHOTO",
      arity = "1..*",
      description = "Read these photos of a painted sheet, one for each page.")
  List<GivenFile> photos = new ArrayList<>();

  @Mixin SheetReferenceOptions references = new SheetReferenceOptions();

  @Option(
      names = "--corners",
      paramLabel = "X,Y;X,Y;X,Y;X,Y",
      description =
          "With --read, when the corner marks aren't found: where they are in the photo, in pixels,"
              + " clockwise from the one at the top left of the sheet.")
  @Nullable String corners;

  @Option(
      names = "--layout",
      paramLabel = "FILE",
      description = "With --read, when the sheet's code can't be read: its layout, as JSON.")
  @Nullable GivenFile layoutFile;

  @Option(
      names = "--partial",
      description =
          "With --read: accept some of the sheet's pages; without this option, all of them must be"
              + " there.")
  boolean partial;

  /** Whether an option is given that only photos need. */
  boolean haveOptions() {
    return corners != null || layoutFile != null || partial || !references.isEmpty();
  }

  /** Reads all photos, in the order of their pages. */
  List<SeenPicture.Page> read() {
    if ((corners != null || layoutFile != null) && photos.size() > 1) {
      throw new IllegalArgumentException("--corners and --layout go with one photo");
    }
    SheetReference reference = references.reference();
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
    new SheetPages(pages).checkTogether(partial);
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
                            + " layout.json writes it)"
                            + sheet.photo().sizeAdvice())));
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
}
