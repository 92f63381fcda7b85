package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.Corrector;
import io.github.swatchwright.calibrate.FreshPot;
import io.github.swatchwright.card.CorrectionCard;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.CorrectionJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what to add to a pot that came out wrong. */
@CommandLine.Command(
    name = "correct",
    description = "Tells which drops to add to a pot that came out wrong.",
    footer = {
      "",
      "Example:",
      "  swatchwright correct 'Titanium white:6, Red oxide:2' --measured '#C3907F'"
          + " --target '#B47A68'"
    })
final class CorrectCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Mixin PhotoReference reference = new PhotoReference();

  @Mixin CardOption card = new CardOption();

  @Mixin PaintChoiceOptions choice = new PaintChoiceOptions();

  @Parameters(
      index = "0",
      paramLabel = "MIX",
      description = "What is in the pot, such as \"Name:3, Other name:1\"; the numbers are drops.")
  String mix = "";

  @Option(
      names = "--measured",
      paramLabel = "COLOUR",
      required = true,
      description = "The colour that the pot has, painted and dry.")
  String measured = "";

  @Option(
      names = "--target",
      paramLabel = "COLOUR",
      required = true,
      description = "The colour that it should have.")
  String target = "";

  CorrectCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    Shelf shelf = shared.shelf();
    Mix pot = Mix.parse(mix, shelf);
    GivenColour seen = ColourArgument.parse(measured, shelf, reference, output);
    GivenColour wanted = ColourArgument.parse(target, shelf, reference, output);
    Correction correction =
        Corrector.of(ShelfOptics.estimate(shelf), shared.weights())
            .withChoice(choice.of(shelf))
            .correct(pot, seen.swatch(), seen.error(), wanted.swatch());
    card.write(
        output,
        () -> CorrectionCard.of(pot, seen.swatch(), wanted.swatch(), correction, shared.light()));
    shared.give(
        output,
        () -> CorrectionJson.toText(pot, correction, shared.light()),
        () -> print(correction));
  }

  private void print(Correction correction) {
    output.line("The pot is ΔE00 %.1f from the target.", correction.now());
    if (correction.additions().isEmpty() && correction.fresh().isEmpty()) {
      output.line("That is near enough: add nothing.");
      return;
    }
    for (Correction.Addition addition : correction.additions()) {
      output.line(
          "  add %2d %s %s%s, then ΔE00 %.1f",
          addition.drops().count(),
          addition.drops().count() == 1 ? "drop  of" : "drops of",
          output.block(addition.predicted()),
          addition.drops().paint().name(),
          addition.deltaE00());
    }
    if (correction.additions().isEmpty()) {
      output.line("Nothing that can be added brings it nearer.");
    } else {
      output.line(
          "Then expect %s, ΔE00 %.1f from the target on average.",
          Output.notation(correction.predicted()), correction.expectedDeltaE00());
    }
    correction.fresh().ifPresent(fresh -> print(correction, fresh));
  }

  private void print(Correction correction, FreshPot fresh) {
    String instead =
        correction.startAfresh() ? "Start afresh instead:" : "Not better, starting afresh:";
    output.line(
        "%s %s (%d drops; expect ΔE00 %.1f)",
        instead, fresh.recipe().toMix().toText(), fresh.recipe().total(), fresh.expectedDeltaE00());
  }
}
