package io.github.swatchwright.card;

import java.util.Random;

/**
 * How opaque paint lands on a model in marks. Sizes are common practice of the bench, without a
 * source: they make a picture that a painter recognises, and no share depends on them.
 */
public enum Landing {
  /** Drops of a flicked brush: round, a few of them large and most of them fine. */
  FLICKED(0.26, 0.55, 0.04, 1.35),

  /** Blots of a torn sponge: ragged and in clusters. */
  SPONGED(0.36, 0.5, 0.14, 1.5),

  /** Paint that has come off at edges and where boots go: angular, longer than wide. */
  CHIPPED(0.3, 0.65, 0.15, 3);

  /** The largest mark, in medians. */
  private static final double LARGEST = 4;

  private final double medianRadius;
  private final double logDeviation;
  private final double raggedness;
  private final double longest;

  Landing(double medianRadius, double logDeviation, double raggedness, double longest) {
    this.medianRadius = medianRadius;
    this.logDeviation = logDeviation;
    this.raggedness = raggedness;
    this.longest = longest;
  }

  /** A radius in millimetres of the model, log-normal and cut off at the far end. */
  double radius(Random random) {
    double radius = medianRadius * Math.exp(logDeviation * random.nextGaussian());
    return Math.min(radius, LARGEST * medianRadius);
  }

  /** How far an outline leaves a circle, as a share of the radius. */
  double raggedness() {
    return raggedness;
  }

  /** How much longer than wide a mark is: 1 or more. */
  double elongation(Random random) {
    double share = random.nextDouble();
    return 1 + (longest - 1) * share * share;
  }

  /** Marks that land together. */
  int together(Random random) {
    return this == SPONGED ? 3 + random.nextInt(6) : 1;
  }
}
