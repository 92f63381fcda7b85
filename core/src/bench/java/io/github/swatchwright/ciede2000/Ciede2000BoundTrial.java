package io.github.swatchwright.ciede2000;

import java.util.Random;

/**
 * Ten million random boxes and colours, or as many as the first argument says: counts the bounds
 * that lie above the smallest ΔE00 that sampling finds. Not a timing; run its main method.
 */
public final class Ciede2000BoundTrial {
  private static final int POINTS = 8;

  private Ciede2000BoundTrial() {}

  /** Prints how many failed, and how sharp the others are. */
  public static void main(String[] args) {
    long draws = args.length > 0 ? Long.parseLong(args[0]) : 10_000_000;
    Random random = new Random(20);
    long failed = 0;
    long positive = 0;
    double share = 0;
    for (long i = 0; i < draws; i++) {
      BoxDraw draw = BoxDraw.of(random);
      double bound = draw.bound();
      double least = draw.sampledMinimum(random, POINTS);
      if (bound > least) {
        failed++;
        System.out.println(draw + ": " + bound + " > " + least);
      }
      if (least > 0 && least < draw.limit()) {
        positive++;
        share += bound / least;
      }
    }
    System.out.printf(
        "%d boxes, %d bounds above the sampled minimum; mean bound / minimum within the limit"
            + " %.3f%n",
        draws, failed, share / positive);
  }
}
