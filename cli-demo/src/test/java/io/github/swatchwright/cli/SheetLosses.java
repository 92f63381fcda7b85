package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.cli.sheet.InventedSheet;
import io.github.swatchwright.paint.Drawdown;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.sheet.SheetReading;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the error of mixes comes from that are foretold by a sheet: what was read of it is replaced
 * by exact figures, one at a time. Arguments: the seeds of the sheets.
 */
final class SheetLosses {
  private static final double EXACT = 0.05;

  private SheetLosses() {}

  public static void main(String[] args) throws IOException {
    for (String seed : args) {
      paints(Long.parseLong(seed));
      tints(Long.parseLong(seed));
    }
  }

  private static void paints(long seed) throws IOException {
    InventedSheet sheet = InventedSheet.ofPaints(24, seed);
    Shelf read = SheetToMixesTest.read(sheet.photographed());
    Map<String, Shelf> shelves = new LinkedHashMap<>();
    shelves.put("exact colours and hiding", SheetToMixesTest.exact(sheet, true));
    shelves.put("colours at full hiding as read, exact hiding", colours(read, sheet));
    shelves.put("exact strokes, thickness stated", strokes(read, sheet, true));
    shelves.put("exact strokes", strokes(read, sheet, false));
    shelves.put("strokes as read, thickness stated", stated(read, sheet));
    shelves.put("strokes as read", read);
    shelves.forEach(
        (what, shelf) -> print(seed, "24 paints", what, SheetToMixesTest.miss(shelf, sheet)));
  }

  private static void tints(long seed) throws IOException {
    InventedSheet sheet = InventedSheet.ofPaintsAndTints(12, seed);
    List<SheetReading> readings = sheet.photographed();
    Shelf read = SheetToMixesTest.read(readings);
    CardSet cards = SheetShelf.cards(readings, Optional.empty()).orElseThrow();
    CardSet exactCards = SheetToMixesTest.exactCards(sheet);
    Shelf exact = strokes(read, sheet, false);
    tint(seed, "exact strokes, exact tints", exact, exactCards, sheet);
    tint(seed, "exact strokes, tints as read", exact, cards, sheet);
    tint(seed, "strokes as read, exact tints", read, exactCards, sheet);
    tint(seed, "strokes as read, tints as read", read, cards, sheet);
  }

  private static void tint(
      long seed, String what, Shelf shelf, CardSet cards, InventedSheet sheet) {
    Shelf taught = Calibration.of(shelf, cards).shelf();
    print(seed, "12 paints and tints", what, SheetToMixesTest.miss(taught, sheet));
  }

  private static void print(long seed, String paints, String what, SheetToMixesTest.Miss miss) {
    System.out.printf(Locale.ROOT, "seed %d, %s: %s %s%n", seed, paints, what, miss);
  }

  private static Shelf strokes(Shelf read, InventedSheet sheet, boolean withThickness) {
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < sheet.size(); i++) {
      Drawdown exact = sheet.painted(i);
      Drawdown stroke =
          withThickness
              ? exact
              : new Drawdown(OptionalDouble.empty(), exact.black(), exact.white());
      paints.add(read.paint(sheet.name(i)).withDrawdown(stroke).withSwatchError(EXACT));
    }
    return Shelf.of("exact strokes", paints);
  }

  private static Shelf stated(Shelf read, InventedSheet sheet) {
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < sheet.size(); i++) {
      Paint paint = read.paint(sheet.name(i));
      Drawdown seen = paint.drawdown().orElseThrow();
      paints.add(
          paint.withDrawdown(new Drawdown(sheet.painted(i).coats(), seen.black(), seen.white())));
    }
    return Shelf.of("thickness stated", paints);
  }

  private static Shelf colours(Shelf read, InventedSheet sheet) {
    Shelf masstones = ShelfFiles.withoutDrawdowns(read);
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < sheet.size(); i++) {
      Paint paint = masstones.paint(sheet.name(i));
      Swatch colour = paint.masstone().orElseThrow();
      double error = paint.swatchError().orElseThrow();
      paints.add(
          Paint.of(paint.name(), paint.medium(), colour)
              .withSwatchError(error)
              .withHiding(new Hiding.ContrastRatio(sheet.contrastRatioOfOneCoat(i))));
    }
    return Shelf.of("colours as read", paints);
  }
}
