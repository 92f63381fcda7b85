package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Require;

/**
 * How much paint, and how much thinner in it, a piece of work takes.
 *
 * <p>A coat is always as wet; with t volumes of thinner to one of paint it holds 1/(1 + t) of the
 * paint, and its solids are VS/(1 + t) (coatings handbooks).
 *
 * @param paintMillilitres paint as it comes from the bottle, ml: at least 0
 * @param thinnerMillilitres thinner, ml: at least 0
 */
public record PaintAmount(double paintMillilitres, double thinnerMillilitres) {

  /** Nothing. */
  public static final PaintAmount NONE = new PaintAmount(0, 0);

  private static final double SQUARE_CENTIMETRES = 1e4;

  /** Refuses negative numbers and those that are not finite. */
  public PaintAmount {
    Require.nonNegative("paintMillilitres", paintMillilitres);
    Require.nonNegative("thinnerMillilitres", thinnerMillilitres);
  }

  /**
   * The amount that some coats take: area ÷ (area per litre × transfer), coats ÷ (1 + t) times.
   *
   * @param squareCentimetres area that is covered, at least 0; of a speckled or sponged coat, the
   *     share of the whole that it covers
   * @param coats how many coats of the usual wet thickness, at least 0
   * @param thinner volumes of thinner to one of paint, at least 0
   * @param application film, solids and transfer
   */
  public static PaintAmount of(
      double squareCentimetres, double coats, double thinner, Application application) {
    Require.nonNegative("squareCentimetres", squareCentimetres);
    Require.nonNegative("coats", coats);
    Require.nonNegative("thinner", thinner);
    double litres =
        squareCentimetres
            / SQUARE_CENTIMETRES
            / (application.squareMetresPerLitre() * application.transfer());
    double paint = 1000 * litres * coats / (1 + thinner);
    return new PaintAmount(paint, paint * thinner);
  }

  /** Both together, ml: what the cup has to hold. */
  public double totalMillilitres() {
    return paintMillilitres + thinnerMillilitres;
  }

  /** This and another amount together. */
  public PaintAmount plus(PaintAmount other) {
    return new PaintAmount(
        paintMillilitres + other.paintMillilitres, thinnerMillilitres + other.thinnerMillilitres);
  }

  /**
   * Drops of paint, not whole, when it is a mix whose parts have droppers of their own: paint ÷ the
   * mean volume of the mix's drops.
   */
  public double drops(Mix mix) {
    double drops = mix.parts().stream().mapToDouble(Mix.Part::drops).sum();
    double millilitres = mix.parts().stream().mapToDouble(Mix.Part::millilitres).sum();
    return paintMillilitres * drops / millilitres;
  }
}
