package io.github.swatchwright.difference;

/**
 * Where a* and b* of a colour can lie whose ΔE00 from another is within a limit; the derivation is
 * {@link Ciede2000Bound}'s.
 *
 * @param reachA no such colour differs by more in a*
 * @param reachB no such colour differs by more in b*
 * @param perChroma ΔE00² ≥ perChroma·ΔC′² + perHue·ΔH′² for such a colour
 * @param perHue the same
 * @param leastStretch the smallest 1 + G for such a colour
 * @param mostStretch the largest
 */
record ChromaRegion(
    double reachA,
    double reachB,
    double perChroma,
    double perHue,
    double leastStretch,
    double mostStretch) {
  /**
   * T = 1 − 0.17cos(h̄′ − 30°) + …: the sum of the coefficients, and of those of its derivative.
   */
  private static final double LARGEST_T = 1.93;

  private static final double STEEPEST_T = 0.17 + 2 * 0.24 + 3 * 0.32 + 4 * 0.20;
  private static final double LARGEST_SINE = Math.sin(Math.toRadians(60));
  private static final int ROUNDS = 4;

  private static final ChromaRegion EVERYWHERE =
      new ChromaRegion(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0, 0, 1, 1.5);

  static ChromaRegion of(double a, double b, double limit) {
    double chroma = Math.hypot(a, b);
    double leastStretch = 1;
    double mostStretch = 1.5;
    double bend = 2 * LARGEST_SINE;
    double mostT = LARGEST_T;
    ChromaRegion region = EVERYWHERE;
    for (int round = 0; round < ROUNDS; round++) {
      double least = Math.hypot(leastStretch * a, b);
      double most = Math.hypot(mostStretch * a, b);
      double edge = limit / Math.sqrt(1 - bend * bend / 4);
      double left = 1 - 0.0225 * edge;
      if (left <= 0) {
        return region;
      }
      double chromaStep = edge * (1 + 0.045 * most) / left;
      double otherLeast = Math.max(0, least - chromaStep);
      double meanMost = most + chromaStep / 2;
      double chromaScale = 1 + 0.045 * meanMost;
      double hueScale = 1 + 0.015 * meanMost * mostT;
      double hueStep = edge * hueScale;

      double halfTurn = hueStep / (2 * Math.sqrt(least * otherLeast));
      double turn = halfTurn < 1 ? 2 * Math.asin(halfTurn) : Math.PI;
      double firstHue = Math.atan2(b, leastStretch * a);
      double lastHue = Math.atan2(b, mostStretch * a);
      double middle = (firstHue + lastHue) / 2;
      double half = Math.abs(lastHue - firstHue) / 2;

      double kappa = 1 - bend / 2;
      double scale = Math.max(chromaScale, hueScale);
      double ring = limit * scale / Math.sqrt(kappa);
      double alongA = ring;
      double alongB = ring;
      if (halfTurn < 1) {
        double arc = 2 * most * halfTurn;
        alongA =
            chromaStep * mostCosine(middle, half + turn) + arc * mostSine(middle, half + turn / 2);
        alongB =
            chromaStep * mostSine(middle, half + turn) + arc * mostCosine(middle, half + turn / 2);
      }
      region =
          new ChromaRegion(
              Math.min(ring, alongA) / leastStretch,
              Math.min(ring, alongB),
              kappa / (chromaScale * chromaScale),
              kappa / (hueScale * hueScale),
              leastStretch,
              mostStretch);

      double meanLeast = (chroma + otherLeast / mostStretch) / 2;
      mostStretch = 1.5 - 0.5 * ChromaSaturation.of(meanLeast);
      leastStretch = 1.5 - 0.5 * ChromaSaturation.of((chroma + most + chromaStep) / 2);
      bend = 2 * ChromaSaturation.of(meanMost) * mostRotation(middle, half + turn / 2);
      mostT = mostT(middle, half + turn / 2);
    }
    return region;
  }

  private static double mostCosine(double middle, double half) {
    double toAxis = Math.abs(Math.IEEEremainder(middle, Math.PI));
    return Math.cos(Math.max(0, toAxis - half));
  }

  private static double mostSine(double middle, double half) {
    return mostCosine(middle - Math.PI / 2, half);
  }

  /** sin 2Δθ is largest where the mean hue comes nearest to 275°. */
  private static double mostRotation(double middle, double half) {
    double apart = Math.abs(Math.IEEEremainder(middle - Math.toRadians(275), 2 * Math.PI));
    double x = Math.toDegrees(Math.max(0, apart - half)) / 25;
    return Math.sin(Math.toRadians(60 * Math.exp(-x * x)));
  }

  private static double mostT(double middle, double half) {
    double t =
        1
            - 0.17 * Math.cos(middle - Math.toRadians(30))
            + 0.24 * Math.cos(2 * middle)
            + 0.32 * Math.cos(3 * middle + Math.toRadians(6))
            - 0.20 * Math.cos(4 * middle - Math.toRadians(63));
    return Math.min(LARGEST_T, t + STEEPEST_T * half);
  }
}
