package io.github.swatchwright.ciede2000;

/**
 * Where a* and b* of a colour can lie whose ΔE00 from another is within a limit; the derivation is
 * {@link Ciede2000Reach}'s.
 *
 * @param reachA no such colour differs by more in a*
 * @param reachB no such colour differs by more in b*
 */
record ChromaRegion(double reachA, double reachB) {
  private static final int ROUNDS = 4;

  private static final ChromaRegion EVERYWHERE =
      new ChromaRegion(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

  static ChromaRegion of(double a, double b, double limit) {
    Narrowing narrowing = new Narrowing(a, b, limit);
    for (int round = 0; round < ROUNDS && narrowing.narrow(); round++) {
      // Each round starts from what the last one allows.
    }
    return narrowing.region;
  }

  /**
   * Rounds of the derivation: each bounds chroma, hue and, by them, a* and b*, with 1 + G, R and T
   * at their largest at first, then at the largest that the last round's chromas and hues allow.
   */
  private static final class Narrowing {
    private final double a;
    private final double b;
    private final double limit;
    private final double chroma;

    /** The range of 1 + G. */
    private double leastStretch = 1;

    private double mostStretch = 1.5;

    /** The largest R. */
    private double bend = HueInterval.MOST_ROTATION;

    private double mostT = HueInterval.LARGEST_T;
    private ChromaRegion region = EVERYWHERE;

    private Narrowing(double a, double b, double limit) {
      this.a = a;
      this.b = b;
      this.limit = limit;
      chroma = Math.hypot(a, b);
    }

    /** One round; false when the limit is too large for any bound. */
    private boolean narrow() {
      double least = Math.hypot(leastStretch * a, b);
      double most = Math.hypot(mostStretch * a, b);
      double edge = limit / Math.sqrt(1 - bend * bend / 4);
      double left = 1 - 0.0225 * edge;
      if (left <= 0) {
        return false;
      }
      double chromaStep = edge * (1 + 0.045 * most) / left;
      double otherLeast = Math.max(0, least - chromaStep);
      double meanMost = most + chromaStep / 2;
      double chromaScale = 1 + 0.045 * meanMost;
      double hueScale = 1 + 0.015 * meanMost * mostT;

      double halfTurn = edge * hueScale / (2 * Math.sqrt(least * otherLeast));
      double turn = halfTurn < 1 ? 2 * Math.asin(halfTurn) : Math.PI;
      double firstHue = Math.atan2(b, leastStretch * a);
      double lastHue = Math.atan2(b, mostStretch * a);
      double middle = (firstHue + lastHue) / 2;
      double half = Math.abs(lastHue - firstHue) / 2;

      double ring = limit * Math.max(chromaScale, hueScale) / Math.sqrt(1 - bend / 2);
      region = within(ring, chromaStep, 2 * most * halfTurn, halfTurn, turn, middle, half);

      double meanLeast = (chroma + otherLeast / mostStretch) / 2;
      mostStretch = 1.5 - 0.5 * ChromaSaturation.of(meanLeast);
      leastStretch = 1.5 - 0.5 * ChromaSaturation.of((chroma + most + chromaStep) / 2);
      HueInterval hues = new HueInterval(middle, half + turn / 2);
      bend = ChromaSaturation.of(meanMost) * hues.mostRotation();
      mostT = hues.mostT();
      return true;
    }

    /** Step 4: a ring about the colour, cut by the range of hues when that is less than all. */
    private ChromaRegion within(
        double ring,
        double chromaStep,
        double arc,
        double halfTurn,
        double turn,
        double middle,
        double half) {
      double alongA = ring;
      double alongB = ring;
      if (halfTurn < 1) {
        alongA =
            chromaStep * mostCosine(middle, half + turn) + arc * mostSine(middle, half + turn / 2);
        alongB =
            chromaStep * mostSine(middle, half + turn) + arc * mostCosine(middle, half + turn / 2);
      }
      return new ChromaRegion(Math.min(ring, alongA) / leastStretch, Math.min(ring, alongB));
    }
  }

  private static double mostCosine(double middle, double half) {
    double toAxis = Math.abs(Math.IEEEremainder(middle, Math.PI));
    return Math.cos(Math.max(0, toAxis - half));
  }

  private static double mostSine(double middle, double half) {
    return mostCosine(middle - Math.PI / 2, half);
  }
}
