package io.github.swatchwright.ciede2000;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Random;

/**
 * A random colour, limit and box of CIELAB, and the smallest ΔE00 between colour and box that
 * sampling finds: at the box's corners, the nearest point of CIELAB, and random points.
 *
 * @param colour L* 0 to 100, a* and b* up to ±120, greys more often
 * @param limit 0.05 to 20
 */
record BoxDraw(
    Lab colour,
    double limit,
    double lowL,
    double highL,
    double lowA,
    double highA,
    double lowB,
    double highB) {

  static BoxDraw of(Random random) {
    double vivid = 240 * Math.pow(random.nextDouble(), 1.5);
    Lab colour =
        Lab.ofD65(
            100 * random.nextDouble(),
            vivid * (random.nextDouble() - 0.5),
            vivid * (random.nextDouble() - 0.5));
    double limit = 0.05 * Math.pow(400, random.nextDouble());
    double away = 3 * limit * random.nextDouble();
    double l = colour.l() + away * random.nextGaussian();
    double ab = away * (1 + 0.045 * colour.chroma());
    double a = colour.a() + ab * random.nextGaussian();
    double b = colour.b() + ab * random.nextGaussian();
    double size = random.nextInt(4) == 0 ? 0 : 2 * limit * random.nextDouble();
    return new BoxDraw(
        colour,
        limit,
        l - size * random.nextDouble(),
        l + size * random.nextDouble(),
        a - size * random.nextDouble(),
        a + size * random.nextDouble(),
        b - size * random.nextDouble(),
        b + size * random.nextDouble());
  }

  double bound() {
    return Ciede2000Bound.of(colour).ofBox(lowL, highL, lowA, highA, lowB, highB);
  }

  /** The box's corner of the least L*, a* and b*, as a colour by itself. */
  Lab corner() {
    return new Lab(lowL, lowA, lowB, colour.white());
  }

  /** ΔE00 of that from the colour. */
  double cornerDeltaE() {
    return to(lowL, lowA, lowB);
  }

  /** By the 8 corners, the point nearest in CIELAB, and some random points. */
  double sampledMinimum(Random random, int points) {
    double least = to(near(colour.l(), lowL, highL), nearA(), near(colour.b(), lowB, highB));
    for (int corner = 0; corner < 8; corner++) {
      least =
          Math.min(
              least,
              to(
                  (corner & 1) == 0 ? lowL : highL,
                  (corner & 2) == 0 ? lowA : highA,
                  (corner & 4) == 0 ? lowB : highB));
    }
    for (int i = 0; i < points; i++) {
      least =
          Math.min(
              least,
              to(
                  lowL + (highL - lowL) * random.nextDouble(),
                  lowA + (highA - lowA) * random.nextDouble(),
                  lowB + (highB - lowB) * random.nextDouble()));
    }
    return least;
  }

  private double nearA() {
    return near(colour.a(), lowA, highA);
  }

  private static double near(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }

  private double to(double l, double a, double b) {
    return Ciede2000.deltaE(colour.l(), colour.a(), colour.b(), l, a, b);
  }
}
