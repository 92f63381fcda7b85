package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.FreshPot;

/**
 * What to add to a pot, in words.
 *
 * @param output where it goes
 */
record CorrectionText(Output output) {

  void print(Correction correction) {
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
        "%s %s (%s; expect ΔE00 %.1f)",
        instead,
        fresh.recipe().toMix().toText(),
        Words.count(fresh.recipe().total(), "drop"),
        fresh.expectedDeltaE00());
  }
}
