package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.CardErrors;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.json.CalibrationJson;
import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.json.ShelfJson;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a better shelf from test cards. */
@CommandLine.Command(
    name = "calibrate",
    description = "Learns from test cards what your paints do in mixes, and writes a better shelf.",
    footer = {"", "Example:", "  swatchwright calibrate cards.json --out better.shelf.json"})
final class CalibrateCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Parameters(
      index = "0",
      paramLabel = "CARDS",
      description = "The test cards, as JSON: what went into each, and its measured colour.")
  @Nullable Path cardsFile;

  @Option(
      names = "--out",
      paramLabel = "NEW",
      required = true,
      description = "The file to write the better shelf to.")
  @Nullable Path newFile;

  @Option(
      names = "--amount-error",
      paramLabel = "SHARE",
      defaultValue = "0.05",
      description = "How well parts were measured out, as a share of each; 0.05 unless stated.")
  double amountError;

  @Option(
      names = "--colour-error",
      paramLabel = "E",
      description = "How well colours were measured, in units of L*; by their form unless stated.")
  @Nullable Double colourError;

  CalibrateCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    Path in = Objects.requireNonNull(cardsFile);
    Path out = Objects.requireNonNull(newFile);
    CardErrors errors =
        new CardErrors(
            amountError,
            colourError == null ? OptionalDouble.empty() : OptionalDouble.of(colourError));
    Calibration calibration = Calibration.of(shared.shelf(), cards(in), errors);
    WholeFile.write(out, ShelfJson.toText(calibration.shelf()));
    shared.give(output, () -> CalibrationJson.toText(calibration), () -> print(calibration, out));
  }

  private static CardSet cards(Path file) {
    try {
      return CardsJson.read(file);
    } catch (NoSuchFileException e) {
      throw new IllegalArgumentException("CARDS: there is no file " + file, e);
    } catch (IOException e) {
      throw new IllegalArgumentException("CARDS: " + file + " can't be read: " + e.getMessage(), e);
    }
  }

  private void print(Calibration calibration, Path out) {
    output.line("How far the cards lie from what was expected of them (mean ΔE00):");
    for (Calibration.CalibratedPaint paint : calibration.paints()) {
      output.line(
          "  %5.2f before, %5.2f now  %s (%d %s)",
          paint.before(),
          paint.after(),
          paint.name(),
          paint.cards(),
          paint.cards() == 1 ? "card" : "cards");
    }
    output.line("  %5.2f before, %5.2f now  all cards", calibration.before(), calibration.after());
    for (Calibration.Contradiction contradiction : calibration.contradictions()) {
      output.line(
          "Card %d contradicts the others and was left out: it is %s, and would have to be %s"
              + " (ΔE00 %.1f).",
          contradiction.card(),
          contradiction.measured().toText(),
          contradiction.expected().toText(),
          contradiction.deltaE00());
    }
    output.line("Written to %s.", out);
  }
}
