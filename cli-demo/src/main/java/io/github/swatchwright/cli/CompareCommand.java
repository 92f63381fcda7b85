package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.difference.ColourDifference;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Compares two colours. */
@CommandLine.Command(
    name = "compare",
    description = "Tells how different colour B is from colour A (CIEDE2000), and in which way.",
    footer = {
      "",
      "ΔE00 is how different two colours look: below 1 nobody sees it, above 2 it shows at"
          + " a glance. L* is lightness, C* the strength of the colour, h its hue.",
      "",
      "Example:",
      "  swatchwright compare '#8A4B2A' 'Red oxide'"
    })
final class CompareCommand implements Command {
  /** What two decimals show as zero. */
  private static final double NO_STEP = 0.005;

  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Mixin CardOption card = new CardOption();

  @Parameters(index = "0", paramLabel = "A", description = "The colour to compare with.")
  String first = "";

  @Parameters(index = "1", paramLabel = "B", description = "The colour to compare.")
  String second = "";

  CompareCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    TristimulusWeights light = shared.weights();
    Shelf shelf = shared.shelf();
    Lab a = given(first, shelf).labUnder(light);
    Lab b = given(second, shelf).labUnder(light);
    ColourDifference difference = Ciede2000.STANDARD.compare(a, b);
    card.write(output, shared, () -> Card.of(a, b, difference, shared.light()));
    shared.give(
        output,
        () -> JsonResult.of(a, b, difference, shared.light()),
        () -> print(a, b, difference));
  }

  private Swatch given(String colour, Shelf shelf) {
    return ColourArgument.parse(colour, shelf, reference, output).swatch();
  }

  private void print(Lab a, Lab b, ColourDifference difference) {
    output.line("A     %s%s", output.block(a), Output.notation(a));
    output.line("B     %s%s", output.block(b), Output.notation(b));
    output.line("Light %s", shared.light().name());
    output.line("");
    Verdict verdict = difference.verdict();
    output.line("ΔE00  %6.2f  %s: %s", difference.deltaE(), verdict.word(), verdict.sentence());
    component("ΔL′", difference.deltaL(), "B is lighter", "B is darker");
    component("ΔC′", difference.deltaC(), "B is more chromatic", "B is greyer");
    component(
        "ΔH′",
        difference.deltaH(),
        "B is further on in the hue circle red, yellow, green, blue",
        "B is further back in the hue circle red, yellow, green, blue");
    if (verdict == Verdict.DIFFERENT) {
      output.line("Above 5, ΔE00 tells that colours differ, but not reliably by how much.");
    }
  }

  private void component(String symbol, double value, String positive, String negative) {
    String meaning = value > 0 ? positive : negative;
    output.line("%s   %+6.2f  %s", symbol, value, Math.abs(value) < NO_STEP ? "the same" : meaning);
  }
}
