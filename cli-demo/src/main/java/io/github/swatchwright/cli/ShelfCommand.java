package io.github.swatchwright.cli;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.json.ShelfReportJson;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.ShelfOptics;
import io.github.swatchwright.paint.ShelfReport;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;

/** Checks and lists a shelf. */
@CommandLine.Command(
    name = "shelf",
    description = "Checks a shelf, and lists its paints with colour, medium and hiding.",
    footer = {"", "Example:", "  swatchwright shelf --light A"})
final class ShelfCommand implements Command {
  /** More coats than this only say that the paint doesn't hide. */
  private static final double MANY_COATS = 99;

  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  ShelfCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    TristimulusWeights light = shared.weights();
    ShelfReport report = ShelfReport.of(ShelfOptics.estimate(shared.shelf()), light);
    shared.give(output, () -> ShelfReportJson.toText(report, shared.light()), () -> print(report));
  }

  private void print(ShelfReport report) {
    output.line(
        "%s: %d paints, light %s", report.name(), report.paints().size(), shared.light().name());
    output.line("");
    int width = report.paints().stream().mapToInt(e -> e.paint().name().length()).max().orElse(0);
    String row = "%-" + Math.max(width, 5) + "s  %-7s  %-16s  %5s  %s";
    output.line(row, "Paint", "Medium", "Hiding", "Coats", "Masstone");
    for (ShelfReport.Entry entry : report.paints()) {
      Paint paint = entry.paint();
      output.line(
          row,
          paint.name(),
          paint.medium().word(),
          paint.hiding().map(ShelfCommand::inWords).orElse("-"),
          coats(entry.coatsToHide()),
          colour(entry.masstone()));
    }
    output.line("");
    output.line("Coats: how many hide black and white, computed (contrast ratio 0.98).");
    report.problems().forEach(problem -> output.line("Note: %s.", problem));
  }

  private String colour(Optional<Lab> masstone) {
    return masstone.map(lab -> output.block(lab) + Output.notation(lab)).orElse("-");
  }

  private static String coats(OptionalDouble coats) {
    if (coats.isEmpty()) {
      return "-";
    }
    return coats.getAsDouble() > MANY_COATS
        ? "many"
        : String.format(Locale.ROOT, "%.1f", coats.getAsDouble());
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
}
