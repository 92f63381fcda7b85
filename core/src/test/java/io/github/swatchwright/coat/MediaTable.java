package io.github.swatchwright.coat;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Every medium over every medium as a paint, a wash and a varnish, as rows of text. */
final class MediaTable {
  private static final List<Use> USES = List.of(Use.PAINT, Use.WASH, Use.VARNISH);

  private MediaTable() {}

  /** Lower, upper, use, thinner, wait, verdict, varnish between and cautions of each case. */
  static List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (Medium lower : Medium.values()) {
      for (Medium upper : Medium.values()) {
        for (Use use : USES) {
          boolean wash = use == Use.WASH;
          rows.add(
              List.of(
                  lower.word(),
                  upper.word(),
                  use.word(),
                  Thinner.of(upper),
                  Wait.after(lower).words(),
                  SolventRules.of(lower, upper, wash).verdict().word(),
                  between(lower, upper, wash).map(Medium::word).orElse("-"),
                  cautions(upper, use)));
        }
      }
    }
    return rows;
  }

  /** The varnish to put between two media that clash; empty when they don't, or when none helps. */
  static Optional<Medium> between(Medium lower, Medium upper, boolean wash) {
    Base base = new Base.OfMix(Mix.of(Paint.of("below", lower)));
    Paint top = Paint.of("on top", upper).withUse(wash ? Use.WASH : Use.PAINT);
    return SolventRules.of(lower, upper, wash).verdict() == SolventVerdict.CLASH
        ? CoatOrder.seals(base, List.of(), List.of(Coat.of(Mix.of(top)))).stream().findFirst()
        : Optional.empty();
  }

  private static String cautions(Medium upper, Use use) {
    Paint paint = Paint.of("some", upper).withUse(use);
    return Caution.forCoats(List.of(Coat.of(Mix.of(paint)))).get(0).stream()
        .map(Caution::word)
        .collect(Collectors.joining(" "));
  }

  /** The page of the documentation. */
  static String page() {
    StringBuilder page =
        new StringBuilder(
            """
            # What may go over what

            Each medium over each, as an ordinary coat, as a wash or filter, and as a varnish. All of it is
            common practice of the trade, without a source: the label, the data sheet and a try on scrap win.
            *Wait* is how long the layer below dries first. *Varnish between* is what to seal with, misted on and
            cured, where the two clash; "-" where they don't, or where nothing helps and the order must change.
            `MediaTableTest` writes this page from what the program says, and checks that it is up to date.

            | below | on top | as | thinned with | wait | verdict | varnish between | cautions |
            |---|---|---|---|---|---|---|---|
            """);
    rows().forEach(row -> page.append("| ").append(String.join(" | ", row)).append(" |\n"));
    page.append("\nThe cautions in full; the data sheet and local rules come first:\n\n");
    for (Caution caution : Caution.values()) {
      page.append("- `").append(caution.word()).append("`: ").append(caution.text()).append("\n");
    }
    return page.toString();
  }
}
