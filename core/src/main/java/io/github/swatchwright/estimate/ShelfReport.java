package io.github.swatchwright.estimate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.estimate.ShelfProblem.Kind;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Use;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A shelf looked through: every paint with its colour and its hiding, and what stands in the way of
 * using it.
 *
 * @param name the shelf's name
 * @param paints its paints, in its order
 * @param problems paints that can't be computed with, paints that look like another of their
 *     medium, and data that are hard to believe
 */
public record ShelfReport(String name, List<Entry> paints, List<ShelfProblem> problems) {

  /**
   * A paint on the shelf.
   *
   * @param paint the paint
   * @param masstone its colour under the report's light; empty when it isn't known
   * @param coatsToHide coats until the contrast ratio is 0.98, not whole; empty when the model
   *     doesn't hold
   */
  public record Entry(Paint paint, Optional<Lab> masstone, OptionalDouble coatsToHide) {}

  /** Copies the lists. */
  public ShelfReport {
    paints = List.copyOf(paints);
    problems = List.copyOf(problems);
  }

  /** Looks through an estimated shelf under a light. */
  public static ShelfReport of(ShelfOptics optics, TristimulusWeights light) {
    HidingPower hidingPower = new HidingPower(new Viewing(light, optics.surface()));
    List<Entry> entries = new ArrayList<>();
    List<ShelfProblem> problems = new ArrayList<>();
    for (Paint paint : optics.shelf().paints()) {
      Entry entry = entry(paint, optics, light, hidingPower);
      if (paint.use() != Use.VARNISH && paint.use() != Use.THINNER) {
        notComputable(paint).ifPresent(problems::add);
      }
      lookAlike(entry, entries).ifPresent(problems::add);
      if (paint.whyNotComputable().isEmpty()) {
        problems.addAll(
            Doubts.of(optics.of(paint.name()), optics.surface(), optics.shelf().surface()));
      }
      entries.add(entry);
    }
    problems.addAll(runningShort(optics.shelf()));
    return new ShelfReport(optics.shelf().name(), entries, problems);
  }

  /** Looks at what is stated alone: colours, and paints that can't be computed with. */
  public static ShelfReport ofLabels(Shelf shelf, TristimulusWeights light) {
    List<Entry> entries = new ArrayList<>();
    List<ShelfProblem> problems = new ArrayList<>();
    for (Paint paint : shelf.paints()) {
      Optional<Lab> masstone = paint.masstone().map(swatch -> swatch.labUnder(light));
      entries.add(new Entry(paint, masstone, OptionalDouble.empty()));
      notComputable(paint).ifPresent(problems::add);
    }
    problems.addAll(runningShort(shelf));
    return new ShelfReport(shelf.name(), entries, problems);
  }

  private static Optional<ShelfProblem> notComputable(Paint paint) {
    return paint
        .whyNotComputable()
        .map(why -> ShelfProblem.of(Kind.NOT_COMPUTABLE, paint.name(), why));
  }

  private static List<ShelfProblem> runningShort(Shelf shelf) {
    return shelf.paints().stream()
        .filter(paint -> paint.bottle().runsShort())
        .map(
            paint ->
                ShelfProblem.of(
                    Kind.RUNS_SHORT,
                    paint.name(),
                    String.format(
                        Locale.ROOT,
                        "runs short: %.1f ml left",
                        paint.bottle().leftMillilitres().orElse(0))))
        .toList();
  }

  private static Entry entry(
      Paint paint, ShelfOptics optics, TristimulusWeights light, HidingPower hidingPower) {
    if (paint.whyNotComputable().isPresent()) {
      Optional<Lab> masstone = paint.masstone().map(swatch -> swatch.labUnder(light));
      return new Entry(paint, masstone, OptionalDouble.empty());
    }
    Optional<Lab> masstone =
        paint.masstone().isPresent() || paint.drawdown().isPresent()
            ? Optional.of(optics.colour(paint.name()).labUnder(light))
            : Optional.empty();
    double coats = hidingPower.coatsToHide(optics.of(paint.name()).constants());
    return new Entry(paint, masstone, OptionalDouble.of(coats));
  }

  private static Optional<ShelfProblem> lookAlike(Entry entry, List<Entry> earlier) {
    for (Entry other : earlier) {
      if (other.paint.medium() == entry.paint.medium()
          && other.masstone.isPresent()
          && entry.masstone.isPresent()) {
        double deltaE00 = Ciede2000.deltaE(other.masstone.get(), entry.masstone.get());
        if (Verdict.of(deltaE00) == Verdict.MATCH) {
          return Optional.of(
              ShelfProblem.of(
                  Kind.LOOKS_ALIKE,
                  entry.paint.name(),
                  String.format(
                      Locale.ROOT, "looks like '%s': ΔE00 %.2f", other.paint.name(), deltaE00)));
        }
      }
    }
    return Optional.empty();
  }
}
