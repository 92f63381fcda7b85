package io.github.swatchwright.cli;

import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.coat.Wait;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.LetDown;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.Illuminant;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/**
 * A ladder in words, in the order in which a painter does things: what to keep of the pot, what to
 * add, how much of the area to cover.
 *
 * @param output where it goes
 * @param light the light that it was planned for
 */
record LadderText(Output output, Illuminant light) {
  /** Fewer drops than that dry up before anything is mixed of them. */
  private static final double WORTH_KEEPING = 3;

  void print(Ladder ladder) {
    output.line("From   %s%s", output.block(ladder.from()), Output.notation(ladder.from()));
    output.line("To     %s%s", output.block(ladder.to()), Output.notation(ladder.to()));
    output.line(
        "Steps  ΔE00 %.1f each, even within %.0f %%", ladder.evenStep(), 100 * ladder.unevenness());
    output.line(
        "Paint  %s in all, of which the model takes %.0f",
        Words.count(ladder.drops(), "drop"), ladder.dropsNeeded());
    output.line("Light  %s", light);
    for (int i = 0; i < ladder.rungs().size(); i++) {
      output.line("");
      print(i, ladder);
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
    printLeftOver(ladder);
    if (!ladder.warnings().isEmpty()) {
      output.line("");
      ladder.warnings().forEach(warning -> output.line("Mind: %s", warning.text()));
    }
    output.line("");
    output.line("%s", Caution.DATA_SHEET.text());
  }

  private void print(int index, Ladder ladder) {
    Rung rung = ladder.rungs().get(index);
    output.line(
        "%2d.  %s%s%s",
        index + 1,
        output.block(rung.prediction().lab()),
        Output.notation(rung.prediction().lab()),
        rung.step().isPresent()
            ? String.format(Locale.ROOT, "  step ΔE00 %.1f", rung.step().getAsDouble())
            : "");
    if (index > 0) {
      printWait(index, ladder);
    }
    if (rung.wash().isPresent()) {
      print(rung.wash().get());
    } else {
      printPot(index, ladder);
    }
    output.line(
        "     %-11s %s of the area with %s; shows on %s",
        "cover", percent(rung.coverage()), amount(rung), percent(rung.visibleShare()));
    printThinner(index, ladder);
    ladder
        .cautionsOfRungs()
        .get(index)
        .forEach(caution -> output.line("     %-11s %s", "caution", caution.text()));
  }

  /** How long the shade before has to dry, and what becomes of the pot meanwhile. */
  private void printWait(int index, Ladder ladder) {
    output.line(
        "     %-11s %s%s",
        "first wait",
        Wait.after(medium(ladder, index - 1)).words(),
        ladder.rungs().get(index).keep() > 0 ? "; keep the pot closed meanwhile" : "");
  }

  /** What thins it, where that isn't what thinned the shade before. */
  private void printThinner(int index, Ladder ladder) {
    Rung rung = ladder.rungs().get(index);
    String thinner = Thinner.of(rung.pot());
    if (index == 0 || !thinner.equals(Thinner.of(ladder.rungs().get(index - 1).pot()))) {
      output.line("     %-11s %s; the drops above are unthinned paint", "thin with", thinner);
    }
  }

  private static Medium medium(Ladder ladder, int index) {
    return ladder.rungs().get(index).coat().medium();
  }

  private void printPot(int index, Ladder ladder) {
    Rung rung = ladder.rungs().get(index);
    if (rung.keep() > 0) {
      drops("keep", rung.keep(), "of shade " + index);
    }
    String verb = verb(index, rung, ladder.pot().separate());
    for (Recipe.Drops drops : rung.add()) {
      drops(verb, drops.count(), drops.paint().name());
      verb = "";
    }
    if (rung.letDown() > 0) {
      LetDown small = ladder.letDown().orElseThrow();
      drops(verb, rung.letDown(), small.strong().name() + " let down with " + small.mild().name());
      if (ladder.rungs().stream()
          .filter(other -> other.letDown() > 0)
          .findFirst()
          .orElseThrow()
          .equals(rung)) {
        output.line(
            "     %-11s in a cup of its own: %d %s of %s in %d of %s",
            "let down",
            small.strongDrops(),
            small.strongDrops() == 1 ? "drop" : "drops",
            small.strong().name(),
            small.mildDrops(),
            small.mild().name());
      }
    }
    output.line(
        "     %-11s %3.0f drops, %.2f ml: %s",
        "makes", rung.potDrops(), rung.potMillilitres(), ladder.useOfPot(index));
  }

  private static String verb(int index, Rung rung, boolean separate) {
    if (separate) {
      return "mix";
    }
    return index == 0 ? "start with" : rung.keep() > 0 ? "add" : "start again";
  }

  private void drops(String verb, int count, String what) {
    output.line("     %-11s %3d %s  %s", verb, count, count == 1 ? "drop " : "drops", what);
  }

  private void print(Coat wash) {
    output.line(
        "     %-11s %s, 1 of it to %s of thinner",
        "wash", wash.mix().parts().get(0).paint().name(), plain(wash.thinner()));
    output.line("     %-11s %s", "coats", plain(wash.coats()));
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

  /** What is left in the cups, and of the last one what went into it. */
  private void printLeftOver(Ladder ladder) {
    List<Rung> pots = ladder.rungs().stream().filter(rung -> rung.wash().isEmpty()).toList();
    output.line(
        "Left over        about %.0f drops in all", pots.stream().mapToDouble(Rung::spare).sum());
    Rung last = pots.get(pots.size() - 1);
    if (last.spare() >= WORTH_KEEPING) {
      output.line("                 the last pot for 'match --use-pot': %s", last.spareText());
    }
  }
}
