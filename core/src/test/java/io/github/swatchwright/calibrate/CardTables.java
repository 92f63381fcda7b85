package io.github.swatchwright.calibrate;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.CoatStep;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.SyntheticPigments;
import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * What test cards teach on invented families, a row a trial. Settings were chosen on the seeds from
 * 100 on; {@code CardTables 200 4} prints what is reported.
 */
final class CardTables {
  private static final LocalDate LADDERS = LocalDate.of(2026, 3, 1);
  private static final LocalDate RECIPES = LocalDate.of(2026, 11, 20);

  private final Map<String, Row> rows = new TreeMap<>();

  /** One row of the table. */
  static final class Row {
    final DescriptiveStatistics errors = new DescriptiveStatistics();
    final DescriptiveStatistics radii = new DescriptiveStatistics();
    int held;
    int accused;
    int good;
    int unusable;
    double seconds;

    void print(String name) {
      System.out.printf(
          Locale.ROOT,
          "%-44s median %5.2f  90 %% %5.2f  interval holds %3.0f %% (median radius %.2f)  accused %d of"
              + " %d, unusable %d, %.2f s%n",
          name,
          errors.getPercentile(50),
          errors.getPercentile(90),
          100.0 * held / Math.max(1, errors.getN()),
          radii.getPercentile(50),
          accused,
          good,
          unusable,
          seconds);
    }
  }

  /** Prints the tables of some shelves, from a seed on. */
  public static void main(String... args) {
    CardTables tables = new CardTables();
    long first = Long.parseLong(args[0]);
    for (long seed = first; seed < first + Integer.parseInt(args[1]); seed++) {
      tables.strongOrganics(seed, 27);
      tables.pigments(seed);
      tables.days(seed, 21);
      tables.films(seed);
    }
    tables.print();
  }

  void print() {
    rows.forEach((name, row) -> row.print(name));
  }

  void strongOrganics(long seed, int paints) {
    tints(
        "strong organics, ratio",
        PaintedFamily.withStrongOrganics(seed, paints),
        Pigment::withContrastRatio);
    tints(
        "strong organics, colour",
        PaintedFamily.withStrongOrganics(seed, paints),
        paint -> paint.swatch(Make.SINGLE_PIGMENT));
  }

  void pigments(long seed) {
    tints("pigments, ratio", PaintedFamily.pigments(seed, 14), Pigment::withContrastRatio);
    tints(
        "ready-mixed, make unstated",
        PaintedFamily.readyMixed(seed, 14),
        paint -> paint.swatch(Make.UNSTATED));
  }

  void days(long seed, int paints) {
    double sd = seed % 2 == 0 ? 0.15 : 0.25;
    ladders("colourants without masstone", PaintedFamily.pigments(seed, paints), true, sd);
    ladders("ready-mixed", PaintedFamily.readyMixed(seed, paints), false, sd);
  }

  void films(long seed) {
    films("one thin coat, known from 2 and 8", PaintedFamily.pigments(seed, 14));
  }

  Row row(String name) {
    return rows.computeIfAbsent(name, any -> new Row());
  }

  private void tints(String name, PaintedFamily family, Function<Pigment, Paint> known) {
    Shelf shelf = InventedCards.shelf(family.paints.stream().map(known).toList());
    List<TestCard> cards = new ArrayList<>();
    Row before = row(name + ", no card");
    pairs(family, ShelfOptics.estimate(shelf), before);
    for (int white : new int[] {5, 1}) {
      for (Pigment paint : family.paints.subList(1, family.paints.size())) {
        cards.add(family.colourCard(InventedCards.parts("white", white, paint.name(), 1)));
      }
      Row row = row(name + (white == 5 ? ", one 1:5" : ", one 1:5, one 1:1"));
      pairs(family, fitted(shelf, cards, row), row);
    }
  }

  private static ShelfOptics fitted(Shelf shelf, List<TestCard> cards, Row row) {
    long start = System.nanoTime();
    Calibration calibration = Calibration.of(shelf, new CardSet(cards));
    row.seconds += 1e-9 * (System.nanoTime() - start);
    row.good += cards.size();
    row.accused += calibration.contradictions().size();
    return ShelfOptics.estimate(calibration.shelf());
  }

  private static void pairs(PaintedFamily family, ShelfOptics optics, Row row) {
    for (int i = 0; i < family.paints.size(); i++) {
      for (int j = i + 1; j < family.paints.size(); j++) {
        List<TestCard.Part> parts =
            InventedCards.parts(family.paints.get(i).name(), 1, family.paints.get(j).name(), 1);
        compare(optics, parts, family.colour(parts), row);
      }
    }
  }

  static void compare(ShelfOptics optics, List<TestCard.Part> parts, Lab truth, Row row) {
    Prediction prediction;
    try {
      List<Mix.Part> mix =
          parts.stream()
              .map(part -> new Mix.Part(optics.shelf().paint(part.paint()), part.amount()))
              .toList();
      prediction =
          MixPredictor.of(optics, SyntheticPigments.VIEWING.weights())
              .withDropScatter(0)
              .predict(new Mix(mix));
    } catch (IllegalArgumentException e) {
      row.unusable++;
      return;
    }
    double error = Ciede2000.deltaE(truth, prediction.lab());
    row.errors.addValue(error);
    row.radii.addValue(prediction.intervalDeltaE00());
    row.held += error <= prediction.intervalDeltaE00() ? 1 : 0;
  }

  /** Ladders of one day, recipes of another: one bottle has settled to 0.38 by then. */
  private void ladders(String name, PaintedFamily family, boolean unseen, double sd) {
    List<Paint> paints = new ArrayList<>();
    for (Pigment pigment : family.paints) {
      Paint paint = pigment.swatch(unseen ? Make.SINGLE_PIGMENT : Make.READY_MIXED);
      paints.add(unseen ? PaintedFamily.unseen(paint) : paint);
    }
    Shelf shelf = InventedCards.shelf(paints);
    List<TestCard> cards = new ArrayList<>();
    for (Pigment paint : family.paints) {
      cards.add(family.rung(InventedCards.parts(paint.name(), 1)).withPainted(LADDERS));
      if (!paint.name().equals("white")) {
        for (int white : new int[] {3, 12}) {
          cards.add(
              family
                  .rung(InventedCards.parts("white", white, paint.name(), 1))
                  .withPainted(LADDERS));
        }
      }
    }
    family.nextDay(sd);
    family.weaken(family.paints.get(1).name(), 0.38);
    List<List<TestCard.Part>> recipes = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      recipes.add(family.recipe());
    }
    List<TestCard> painted =
        recipes.stream().map(recipe -> family.rung(recipe).withPainted(RECIPES)).toList();
    Row alone = row(name + ", ladders");
    ShelfOptics fromLadders = fitted(shelf, cards, alone);
    for (int i = 12; i < 24; i++) {
      compare(fromLadders, recipes.get(i), painted.get(i).measured().lab(), alone);
    }
    cards.addAll(painted.subList(0, 12));
    Row more = row(name + ", ladders and recipes");
    ShelfOptics fromBoth = fitted(shelf, cards, more);
    for (int i = 12; i < 24; i++) {
      compare(fromBoth, recipes.get(i), painted.get(i).measured().lab(), more);
    }
  }

  private void films(String name, PaintedFamily family) {
    Shelf shelf =
        InventedCards.shelf(
            family.paints.stream().map(p -> p.swatch(Make.SINGLE_PIGMENT)).toList());
    List<TestCard> cards = new ArrayList<>();
    for (Pigment paint : family.paints) {
      for (double coats : new double[] {2, 8}) {
        cards.add(family.film(paint.name(), 0.05, coats));
        cards.add(family.film(paint.name(), 0.8, coats));
      }
    }
    Row row = row(name);
    ShelfOptics optics = fitted(shelf, cards, row);
    double[] over = new double[36];
    Arrays.fill(over, 0.8);
    for (Pigment paint : family.paints) {
      thin(optics, paint, over, row);
    }
  }

  private static void thin(ShelfOptics optics, Pigment paint, double[] over, Row row) {
    Swatch base = new Swatch.OfReflectance(380, 10, over);
    List<CoatStep> steps =
        CoatPredictor.of(optics, SyntheticPigments.VIEWING.weights())
            .predict(new Base.OfSwatch(base), Coats.parse(paint.name() + ":1", optics.shelf()));
    double[] below = new double[36];
    Arrays.fill(below, SyntheticPigments.VIEWING.surface().internal(0.8));
    Lab truth = SyntheticPigments.VIEWING.lab(paint.truth().filmOver(3.0, below));
    Prediction prediction = steps.get(steps.size() - 1).prediction();
    double error = Ciede2000.deltaE(truth, prediction.lab());
    row.errors.addValue(error);
    row.radii.addValue(prediction.intervalDeltaE00());
    row.held += error <= prediction.intervalDeltaE00() ? 1 : 0;
  }
}
