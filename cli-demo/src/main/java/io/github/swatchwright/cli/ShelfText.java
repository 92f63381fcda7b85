package io.github.swatchwright.cli;

import io.github.swatchwright.cli.terminal.TextTable;
import io.github.swatchwright.coat.HidingCoats;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.match.ShelfReach;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Prints a shelf.
 *
 * @param output where to print
 */
record ShelfText(Output output) {
  /** More gaps than these are for {@code --json}. */
  private static final int MOST_GAPS = 6;

  /** Prints the paints, and what is doubtful about them, under a light. */
  void print(ShelfReport report, Illuminant light) {
    output.line(
        "%s: %s, light %s",
        report.name(), Words.count(report.paints().size(), "paint"), light.name());
    output.line("");
    TextTable table =
        new TextTable(
            new TextTable.Column("Paint", false),
            new TextTable.Column("Medium", false),
            new TextTable.Column("Hiding", false),
            new TextTable.Column("Coats", true),
            new TextTable.Column("Masstone", false),
            TextTable.Column.spared("in CIELAB"));
    for (ShelfReport.Entry entry : report.paints()) {
      Paint paint = entry.paint();
      table.add(
          paint.name(),
          paint.medium().word(),
          paint.hiding().map(ShelfText::inWords).orElse("-"),
          coats(entry.coatsToHide()),
          entry.masstone().map(lab -> output.block(lab) + Output.hex(lab)).orElse("-"),
          entry.masstone().map(Output::numbers).orElse("-"));
    }
    output.table(table);
    output.line("");
    output.line("Masstone: the paint's colour unmixed, where it hides.");
    output.line(
        "Coats: how many whole ones hide black and white, computed (contrast ratio 0.98: over black"
            + " it reflects 98 % of what it does over white).");
    report.problems().forEach(problem -> output.line("Note: %s.", problem.text()));
  }

  private static String coats(OptionalDouble coats) {
    if (coats.isEmpty()) {
      return "-";
    }
    OptionalInt whole = HidingCoats.whole(coats.getAsDouble());
    return whole.isEmpty() ? "never" : Integer.toString(whole.getAsInt());
  }

  private static String inWords(Hiding hiding) {
    if (hiding instanceof Hiding.Coats coats) {
      return Numbers.plain(coats.coats()) + (coats.coats() == 1 ? " coat" : " coats");
    }
    if (hiding instanceof Hiding.ContrastRatio contrast) {
      return "contrast " + Numbers.plain(contrast.ratio());
    }
    if (hiding instanceof Hiding.Scattering scattering) {
      return "S " + Numbers.plain(scattering.scattering());
    }
    return ((Hiding.Word) hiding).word();
  }

  /** Prints what the shelf can be mixed to, and what it can't. */
  void print(ShelfReach reach) {
    output.line("");
    output.line(
        "%.0f %% of the colours that a display shows can be mixed to within ΔE00 %.0f, of up to"
            + " three paints (estimated).",
        100 * reach.share(), ShelfReach.LIMIT);
    reach.gaps().stream().limit(MOST_GAPS).forEach(this::print);
  }

  private void print(ShelfReach.Gap gap) {
    output.line(
        "Gap: %s, %.0f %% of it out of reach; furthest is %s%s, ΔE00 %.0f away.",
        gap.name(),
        100 * gap.share(),
        output.block(gap.furthest().lab()),
        Output.notation(gap.furthest().lab()),
        gap.furthest().nearestDeltaE00());
  }
}
