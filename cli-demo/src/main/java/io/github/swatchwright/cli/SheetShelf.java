package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.PartsBy;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.sheet.FieldReading;
import io.github.swatchwright.sheet.SheetReading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** What was read of a sheet, as paints of a shelf and as test cards. */
final class SheetShelf {
  private SheetShelf() {}

  /**
   * The paints that were read, on a shelf with those that were there before.
   *
   * @param before the shelf that they are added to, if any
   * @param replace whether a paint that is there already may be replaced
   * @throws IllegalArgumentException when none was read, or one is there already
   */
  static Shelf shelf(
      List<SheetReading> pages, Optional<Shelf> before, Finish finish, boolean replace) {
    Map<String, Paint> paints = new LinkedHashMap<>();
    before.ifPresent(shelf -> shelf.paints().forEach(paint -> paints.put(paint.name(), paint)));
    int there = paints.size();
    int read = 0;
    List<String> clashes = new ArrayList<>();
    for (SheetReading page : pages) {
      for (FieldReading field : page.fields()) {
        if (field.read().isPresent() && !field.field().isMix()) {
          String name = field.field().label();
          Paint old = paints.get(name);
          if (old != null && !replace) {
            clashes.add("'" + name + "'");
          }
          Medium medium = page.layout().page().medium();
          paints.put(name, paint(name, field.read().get(), medium, finish, old));
          read++;
        }
      }
    }
    if (read == 0 && there == 0) {
      throw new IllegalArgumentException("no field of the sheet could be read as a paint");
    }
    if (!clashes.isEmpty()) {
      throw new IllegalArgumentException(
          "on the shelf already: "
              + String.join(", ", clashes)
              + "; --replace takes what was read instead of what is there");
    }
    String name = before.map(Shelf::name).orElse("Sheet " + pages.get(0).layout().page().sheet());
    return before
        .map(shelf -> new Shelf(name, List.copyOf(paints.values()), shelf.surface()))
        .orElseGet(() -> Shelf.of(name, List.copyOf(paints.values())));
  }

  /** A paint; what a sheet can't tell is taken over from the paint of that name, if any. */
  private static Paint paint(
      String name, FieldReading.Read read, Medium medium, Finish finish, @Nullable Paint old) {
    Paint fresh =
        Paint.of(name, old == null ? medium : old.medium())
            .withFinish(old == null ? finish : old.finish());
    if (old != null) {
      fresh =
          fresh
              .withMake(old.make())
              .withDropMillilitres(old.dropMillilitres())
              .withBottle(old.bottle())
              .withUse(old.use())
              .withThinned(old.thinned())
              .withNotes(old.notes());
    }
    return fresh.withDrawdown(read.drawdown()).withSwatchError(StatedError.of(read.error()));
  }

  /**
   * The mixes that were read, as test cards; empty when there are none.
   *
   * @param painted the day on which they were painted, if anybody says
   */
  static Optional<CardSet> cards(List<SheetReading> pages, Optional<LocalDate> painted) {
    List<TestCard> cards = new ArrayList<>();
    for (SheetReading page : pages) {
      for (FieldReading field : page.fields()) {
        if (field.read().isPresent() && field.field().isMix()) {
          TestCard card = card(field.field().label().substring(1), field.read().get());
          cards.add(painted.map(card::withPainted).orElse(card));
        }
      }
    }
    return cards.isEmpty() ? Optional.empty() : Optional.of(new CardSet(cards));
  }

  private static TestCard card(String mix, FieldReading.Read read) {
    List<TestCard.Part> parts = new ArrayList<>();
    for (String part : mix.split(",", -1)) {
      int colon = part.lastIndexOf(':');
      try {
        parts.add(
            new TestCard.Part(
                part.substring(0, Math.max(0, colon)).strip(),
                Double.parseDouble(part.substring(colon + 1).strip())));
      } catch (NumberFormatException e) {
        throw new IllegalArgumentException(
            "the mix '" + mix + "' of a field isn't of the form Name:3, Other name:1", e);
      }
    }
    return new TestCard(
        parts,
        PartsBy.VOLUME,
        new Swatch.OfLab(read.opaque().masstone()),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(StatedError.of(read.opaque().error())),
        Optional.empty());
  }
}
