package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/** Figures of many seeded ladders. Its main method prints the table of {@code docs/ladders.md}. */
final class LadderStatistics {
  private static final double SCATTER = 0.08;

  private final List<Ladder> ladders = new ArrayList<>();
  private final List<String> refusals = new ArrayList<>();
  private int steps;
  private int even;
  private int painters;
  private int inOrder;
  private double seconds;

  /**
   * Plans ladders, and lets painters mix them whose drops scatter by 8 %.
   *
   * @param random the ladders
   * @param count how many
   * @param hands how many painters mix each
   */
  static LadderStatistics of(RandomLadders random, int count, int hands) {
    LadderStatistics statistics = new LadderStatistics();
    for (int i = 0; i < count; i++) {
      RandomLadders.Case next = random.next();
      long start = System.nanoTime();
      try {
        Ladder ladder = next.plan();
        statistics.ladders.add(ladder);
        statistics.seconds += (System.nanoTime() - start) / 1e9;
        statistics.paint(ladder, next, hands);
      } catch (IllegalArgumentException refusal) {
        statistics.refusals.add(refusal.getMessage());
      }
    }
    return statistics;
  }

  private void paint(Ladder ladder, RandomLadders.Case asked, int hands) {
    MixPredictor predictor = MixPredictor.of(asked.optics(), TristimulusWeights.D65);
    double direction = Math.signum(ladder.to().l() - ladder.from().l());
    for (int hand = 0; hand < hands; hand++) {
      List<Lab> colours = new ScatteringPainter(hand, SCATTER).mixed(ladder, predictor);
      boolean ordered = true;
      for (int i = 1; i < colours.size(); i++) {
        double step = Ciede2000.deltaE(colours.get(i - 1), colours.get(i));
        even += Math.abs(step / ladder.evenStep() - 1) <= 0.4 ? 1 : 0;
        steps++;
        ordered &= (colours.get(i).l() - colours.get(i - 1).l()) * direction > 0;
      }
      inOrder += ordered ? 1 : 0;
      painters++;
    }
  }

  List<Ladder> ladders() {
    return ladders;
  }

  List<String> refusals() {
    return refusals;
  }

  /** Share of painters all of whose rungs lie in the right order. */
  double inOrder() {
    return (double) inOrder / painters;
  }

  /** Share of all painters' steps that differ from the planned mean by no more than 40 %. */
  double evenWhenMixed() {
    return (double) even / steps;
  }

  /** A figure of all ladders. */
  DescriptiveStatistics of(ToDoubleFunction<Ladder> figure) {
    DescriptiveStatistics all = new DescriptiveStatistics();
    ladders.forEach(ladder -> all.addValue(figure.applyAsDouble(ladder)));
    return all;
  }

  /** Drops poured for each drop that the passes take. */
  static double dropsForNeed(Ladder ladder) {
    return ladder.drops() / ladder.dropsNeeded();
  }

  /** The drops of the largest addition after the first pot. */
  static double largestAddition(Ladder ladder) {
    return ladder.rungs().stream().skip(1).mapToInt(LadderStatistics::poured).max().orElse(0);
  }

  private static int poured(Rung rung) {
    return rung.letDown() + rung.add().stream().mapToInt(some -> some.count()).sum();
  }

  /** How far one drop moves the frailest rung, in steps. */
  static double oneDrop(Ladder ladder) {
    return ladder.rungs().stream().mapToDouble(Rung::oneDrop).max().orElse(0) / ladder.evenStep();
  }

  /** How far the first rung is from the wanted colour, ΔE00. */
  static double missedStart(Ladder ladder) {
    return Ciede2000.deltaE(ladder.from(), ladder.rungs().get(0).prediction().lab());
  }

  /** How far the last rung is from the wanted colour, ΔE00. */
  static double missedEnd(Ladder ladder) {
    int last = ladder.rungs().size() - 1;
    return Ciede2000.deltaE(ladder.to(), ladder.rungs().get(last).prediction().lab());
  }

  private void row(String name, ToDoubleFunction<Ladder> figure) {
    DescriptiveStatistics all = of(figure);
    System.out.printf(
        Locale.ROOT,
        "| %s | %.2f | %.2f | %.2f |%n",
        name,
        all.getPercentile(50),
        all.getPercentile(90),
        all.getPercentile(95));
  }

  /**
   * Prints the table.
   *
   * @param args how many ladders (default 300)
   */
  public static void main(String... args) {
    int count = args.length > 0 ? Integer.parseInt(args[0]) : 300;
    LadderStatistics all = of(new RandomLadders(2024), count, 200);
    System.out.printf(
        Locale.ROOT,
        "%d ladders, %d refused, %.2f s each%n| figure | median | 90 %% | 95 %% |%n|---|---|---|---|%n",
        all.ladders.size(),
        all.refusals.size(),
        all.seconds / all.ladders.size());
    all.row("drops in all ÷ drops needed", LadderStatistics::dropsForNeed);
    all.row("drops in all", Ladder::drops);
    all.row("largest addition, drops", LadderStatistics::largestAddition);
    all.row("unevenness", Ladder::unevenness);
    all.row("one drop ÷ step", LadderStatistics::oneDrop);
    all.row("first end missed by, ΔE00", LadderStatistics::missedStart);
    all.row("last end missed by, ΔE00", LadderStatistics::missedEnd);
    LadderStatistics four = new LadderStatistics();
    all.ladders.stream().filter(l -> l.rungs().size() == 4).forEach(four.ladders::add);
    four.row("drops in all, four rungs", Ladder::drops);
    System.out.printf(
        Locale.ROOT,
        "painters in order %.3f, steps within 40 %% %.3f%n",
        all.inOrder(),
        all.evenWhenMixed());
    all.refusals.forEach(System.out::println);
  }
}
