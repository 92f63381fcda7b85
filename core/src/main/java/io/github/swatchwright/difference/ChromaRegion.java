package io.github.swatchwright.difference;

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
    double chroma = Math.hypot(a, b);
    double leastStretch = 1;
    double mostStretch = 1.5;
    double bend = HueInterval.MOST_ROTATION;
    double mostT = HueInterval.LARGEST_T;
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
      region = new ChromaRegion(Math.min(ring, alongA) / leastStretch, Math.min(ring, alongB));

      double meanLeast = (chroma + otherLeast / mostStretch) / 2;
      mostStretch = 1.5 - 0.5 * ChromaSaturation.of(meanLeast);
      leastStretch = 1.5 - 0.5 * ChromaSaturation.of((chroma + most + chromaStep) / 2);
      HueInterval hues = new HueInterval(middle, half + turn / 2);
      bend = ChromaSaturation.of(meanMost) * hues.mostRotation();
      mostT = hues.mostT();
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
}
