package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.FoundMix;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.MixedAgain;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.WholeDrops;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Mixes again what a notebook's entry holds.
 *
 * @param output where it goes
 * @param shared the shelf and the light
 * @param card to write, if one was asked for
 */
record NotebookMixing(Output output, SharedOptions shared, CardOption card) {
  /**
   * The mixes that are meant.
   *
   * @param mixes of the entry
   * @param number the one that was asked for, if one was; else all rungs or steps, or the first
   */
  static List<FoundMix> chosen(List<FoundMix> mixes, @Nullable Integer number) {
    if (mixes.isEmpty()) {
      throw new IllegalArgumentException("that entry holds no mix");
    }
    if (number == null) {
      return mixes.get(0).kind().allBelongTogether() ? mixes : mixes.subList(0, 1);
    }
    List<FoundMix> named = mixes.stream().filter(mix -> mix.number() == number).toList();
    if (named.isEmpty()) {
      String numbers =
          mixes.stream().map(mix -> String.valueOf(mix.number())).collect(Collectors.joining(", "));
      throw new IllegalArgumentException("--mix is " + number + ", must be one of " + numbers);
    }
    return named.subList(0, 1);
  }

  /** Mixes them for a volume of each, prints it and, when wanted, takes it out of the bottles. */
  void again(
      int entry,
      List<FoundMix> all,
      List<FoundMix> mixes,
      double volume,
      boolean changed,
      boolean take) {
    Shelf shelf = shared.shelf();
    MixPredictor predictor = MixPredictor.of(ShelfOptics.estimate(shelf), shared.weights());
    List<MixedAgain> again = new ArrayList<>();
    for (FoundMix mix : mixes) {
      WholeDrops drops = new WholeDrops(mix.mix(), predictor);
      Mix whole = drops.enoughFor(volume).orElseThrow(() -> refusal(mixes, predictor, volume));
      again.add(new MixedAgain(mix, whole, predictor.predict(whole)));
    }
    List<Paint> soonEmpty = take ? take(shelf, again) : List.of();
    card.write(output, shared, () -> NotebookPages.again(entry, again, shared.light()));
    shared.give(
        output,
        () -> JsonResult.ofAgain(again, changed, shared.light()),
        () -> {
          print(entry, all, again, changed);
          if (take) {
            output.line("Taken out of the bottles of %s.", String.valueOf(shared.shelfFile));
          }
          soonEmpty.forEach(
              paint ->
                  output.line(
                      "%s runs short: %.1f ml left.",
                      paint.name(), paint.bottle().leftMillilitres().orElse(0)));
        });
  }

  private static IllegalArgumentException refusal(
      List<FoundMix> mixes, MixPredictor predictor, double volume) {
    double least = volume;
    String what = "";
    double off = 0;
    for (FoundMix mix : mixes) {
      WholeDrops drops = new WholeDrops(mix.mix(), predictor);
      OptionalDouble enough = drops.leastMillilitres(volume);
      if (enough.isEmpty()) {
        return new IllegalArgumentException(
            mix.kind().word() + " " + mix.number() + " can't be mixed true in whole drops");
      }
      if (enough.getAsDouble() > least) {
        least = enough.getAsDouble();
        what = mix.kind().word() + " " + mix.number();
        off = drops.offBy(mix.mix().enoughFor(volume));
      }
    }
    return new IllegalArgumentException(
        String.format(
            Locale.ROOT,
            "whole drops can't do that: in %s ml, %s comes out ΔE00 %.1f from what it was;"
                + " give --millilitres %.1f at least",
            Numbers.plain(volume),
            what,
            off,
            Math.ceil(10 * least - 1e-9) / 10));
  }

  private void print(int entry, List<FoundMix> all, List<MixedAgain> mixes, boolean changed) {
    if (changed) {
      output.line("The shelf is not as it was then: the result may differ.");
    }
    boolean first = true;
    for (MixedAgain again : mixes) {
      String which =
          all.size() == 1
              ? again.then().kind().word()
              : again.then().kind().word() + " " + again.then().number() + " of " + all.size();
      if (!first || changed) {
        output.line("");
      }
      first = false;
      output.line("Entry %d again, %s: %.2f ml", entry, which, again.mix().millilitres());
      for (Mix.Part part : again.mix().parts()) {
        output.line(
            "  %4.0f %s  %5.2f ml  %s",
            part.drops(),
            part.drops() == 1 ? "drop " : "drops",
            part.millilitres(),
            part.paint().name());
      }
      if (again.thinnerMillilitres() > 0) {
        output.line("  and %.2f ml of %s", again.thinnerMillilitres(), Thinner.of(again.mix()));
      }
      printColours(again);
    }
    if (mixes.size() == 1 && all.size() > 1) {
      output.line("--mix N takes another of the %d.", all.size());
    }
  }

  private void printColours(MixedAgain again) {
    Lab now = again.prediction().lab();
    if (again.isComparable()) {
      Lab then = again.then().lab().orElseThrow();
      output.line("  then  %s%s", output.block(then), Output.notation(then));
      output.line(
          "  now   %s%s, ΔE00 %.1f from then",
          output.block(now), Output.notation(now), Ciede2000.deltaE(then, now));
    } else {
      output.line("  %s%s, where it hides", output.block(now), Output.notation(now));
    }
    if (again.then().kind() == FoundMix.Kind.CORRECTED_POT) {
      output.line(
          "  The pot of then had its own error, which was measured; a fresh one may not have it.");
    }
    output.line("  %s", PredictionText.interval(again.prediction()));
  }

  /** Writes the shelf with less in its bottles; the paints that run short then. */
  private List<Paint> take(Shelf shelf, List<MixedAgain> mixes) {
    GivenFile file = shared.shelfFile;
    if (file == null) {
      throw new IllegalArgumentException("--take needs --shelf, the shelf whose bottles it is");
    }
    NewFile target = new NewFile(file.path());
    output.files().lock("--shelf", target);
    Shelf less = shelf;
    List<String> used = new ArrayList<>();
    for (MixedAgain again : mixes) {
      for (Mix.Part part : again.mix().parts()) {
        less = less.taking(part.paint().name(), part.millilitres());
        used.add(part.paint().name());
      }
    }
    output.files().write("--shelf", target, ShelfJson.toText(less));
    return less.paints().stream()
        .filter(paint -> used.contains(paint.name()))
        .filter(paint -> paint.bottle().runsShort())
        .toList();
  }

  /**
   * The one mix that is meant.
   *
   * @throws IllegalArgumentException when there are several, and no number tells which
   */
  static FoundMix one(List<FoundMix> all, @Nullable Integer number) {
    List<FoundMix> chosen = chosen(all, number);
    if (chosen.size() > 1) {
      throw new IllegalArgumentException(
          "that entry holds "
              + chosen.size()
              + " mixes: tell with --mix which "
              + chosen.get(0).kind().word()
              + " it is");
    }
    return chosen.get(0);
  }
}
