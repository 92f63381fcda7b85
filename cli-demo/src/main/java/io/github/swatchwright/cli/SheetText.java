package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.cli.terminal.TextTable;
import io.github.swatchwright.sheet.FieldReading;
import io.github.swatchwright.sheet.SheetReading;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was read of a sheet, as a table for a painter.
 *
 * @param output where it goes
 */
record SheetText(Output output) {
  /**
   * Prints it.
   *
   * @param readings its pages
   * @param to the shelf that is written, if any
   * @param cards the mixes that were read
   * @param cardsWritten whether they are written
   */
  void print(
      List<SheetReading> readings,
      @Nullable Path to,
      Optional<CardSet> cards,
      boolean cardsWritten) {
    SheetReading first = readings.get(0);
    output.line("Sheet %s; reference: %s", first.layout().page().sheet(), first.reference());
    output.line("");
    TextTable table =
        new TextTable(
            new TextTable.Column("Paint", false),
            new TextTable.Column("At full hiding", false),
            new TextTable.Column("± ΔE00", true),
            new TextTable.Column("Hiding", true),
            new TextTable.Column("Doubts", false));
    for (SheetReading page : readings) {
      page.fields().forEach(field -> row(table, field));
    }
    output.table(table);
    output.line("");
    first.doubts().forEach(doubt -> output.line("Note: %s.", doubt));
    if (to != null) {
      output.line("Shelf written to %s.", to);
    } else {
      output.line("Nothing written: --out FILE.json writes a shelf.");
    }
    if (cards.isPresent() && !cardsWritten) {
      output.line("Note: mixes were read, too; --cards FILE.json writes them as test cards.");
    }
  }

  private void row(TextTable table, FieldReading field) {
    String label =
        field.field().isMix() ? field.field().label().substring(1) : field.field().label();
    String doubts = field.doubts().isEmpty() ? "-" : String.join("; ", field.doubts());
    if (field.read().isEmpty()) {
      table.add(label, "-", "-", "-", doubts);
      return;
    }
    FieldReading.Read read = field.read().get();
    table.add(
        label,
        output.block(read.opaque().masstone()) + Output.notation(read.opaque().masstone()),
        String.format(Locale.ROOT, "%.1f", read.opaque().interval()),
        String.format(Locale.ROOT, "%.2f", read.opaque().contrastRatio()),
        doubts);
  }
}
