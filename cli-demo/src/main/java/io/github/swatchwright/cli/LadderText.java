package io.github.swatchwright.cli;

import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.Illuminant;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A ladder, for someone with a pot in hand.
 *
 * @param output where it goes
 * @param light the light that it was planned for
 */
record LadderText(Output output, Illuminant light) {

  void print(Ladder ladder) {
    output.line("From   %s%s", output.block(ladder.from()), Output.notation(ladder.from()));
    output.line("To     %s%s", output.block(ladder.to()), Output.notation(ladder.to()));
    output.line(
        "Steps  ΔE00 %.1f, even within %.0f %%", ladder.evenStep(), 100 * ladder.unevenness());
    output.line("Light  %s", light);
    for (int i = 0; i < ladder.rungs().size(); i++) {
      output.line("");
      print(i, ladder.rungs().get(i), ladder.pot().isSeparate());
    }
    output.line("");
    ladder
        .base()
        .ifPresent(
            base ->
                output.line(
                    "The base shows on %s: %s%s",
                    percent(ladder.baseShare()), output.block(base), Output.notation(base)));
    output.line(
        "From a distance  %s%s", output.block(ladder.look()), Output.notation(ladder.look()));
    if (!ladder.warnings().isEmpty()) {
      output.line("");
      ladder.warnings().forEach(warning -> output.line("Mind: %s", warning.text()));
    }
    printCautions(ladder);
  }

  private void print(int index, Rung rung, boolean separate) {
    output.line(
        "%2d.  %s%s%s",
        index + 1,
        output.block(rung.prediction().lab()),
        Output.notation(rung.prediction().lab()),
        rung.step().isPresent()
            ? String.format(Locale.ROOT, "  step ΔE00 %.1f", rung.step().getAsDouble())
            : "");
    if (rung.wash().isPresent()) {
      print(rung.wash().get());
    } else {
      String verb = separate ? "mix" : index == 0 ? "start with" : "add";
      for (Recipe.Drops drops : rung.add()) {
        String unit = drops.count() == 1 ? "drop " : "drops";
        output.line("     %-10s %3d %s  %s", verb, drops.count(), unit, drops.paint().name());
        verb = "";
      }
      output.line("     %-10s %5.1f drops, %.2f ml", "pot", rung.potDrops(), rung.potMillilitres());
    }
    output.line(
        "     %-10s %s of the area with %s; shows on %s",
        "cover", percent(rung.coverage()), amount(rung), percent(rung.visibleShare()));
  }

  private void print(Coat wash) {
    output.line(
        "     %-10s %s, 1 of it to %s of thinner",
        "wash", wash.mix().parts().get(0).paint().name(), plain(wash.thinner()));
    output.line("     %-10s %s", "coats", plain(wash.coats()));
  }

  private static String amount(Rung rung) {
    String paint = String.format(Locale.ROOT, "%.2f ml", rung.amount().paintMillilitres());
    return rung.amount().thinnerMillilitres() == 0
        ? paint
        : paint
            + String.format(
                Locale.ROOT, " and %.2f ml of thinner", rung.amount().thinnerMillilitres());
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** Cautions where solvents are about. */
  private void printCautions(Ladder ladder) {
    Set<Medium> media =
        ladder.rungs().stream()
            .map(rung -> rung.pot().parts().get(0).paint().medium())
            .collect(Collectors.toSet());
    List<Caution> cautions = Caution.forMedia(media);
    if (cautions.contains(Caution.FLAMES)) {
      output.line("");
      cautions.forEach(caution -> output.line("Caution: %s", caution.text()));
    }
  }
}
