package io.github.swatchwright.paint;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.spectrum.Bands;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What test cards have taught about one paint: its most probable state, and the rows of evidence
 * that its covariance, and that with the other paints, follows from.
 *
 * <p>With C₀ the covariances that the paints' own swatches and hiding figures leave, times the
 * square of {@link #widthScale}, and A all rows of the shelf, in units of their own error, the
 * covariance is C₀ − C₀Aᵀ(A·C₀·Aᵀ + I)⁻¹A·C₀. Paints that share a card share its rows, by number.
 */
public final class FittedOptics {
  /** The largest number of a row. */
  public static final int LARGEST_ROW = 20_000;

  /** The most painting days of a paint. */
  public static final int MOST_DAYS = 1000;

  /** Unknowns of a paint: z and u in every band. */
  private static final int UNKNOWNS = 2 * Bands.COUNT;

  private final double[] z;
  private final double[] u;
  private final int cards;
  private final double residualDeltaE00;
  private final double widthScale;
  private final List<Day> days;
  private final List<Row> rows;

  /**
   * A day on which the paint was used for test cards.
   *
   * @param painted the day; empty for one that nobody wrote down
   * @param logStrength ln of how strong the paint was then, as a share of the next day's strength;
   *     0 on the last day
   * @param sd how much ln strength may change until the next day, as sd before any card, 0 to 10;
   *     on the last day: until today
   */
  public record Day(Optional<LocalDate> painted, double logStrength, double sd) {
    /** Refuses numbers out of range. */
    public Day {
      Require.within("logStrength", logStrength, -20, 20);
      Require.within("sd of logStrength", sd, 0, 10);
    }
  }

  /** One row of evidence, as far as it depends on one paint. */
  public static final class Row {
    private final int number;
    private final float[] slopes;

    /**
     * A row.
     *
     * @param number which row of the shelf it is, 0 to {@value #LARGEST_ROW}
     * @param slopes its derivatives by z in all bands, by u in all bands, then by the ln strength
     *     of each painting day, in units of its error
     */
    public Row(int number, float... slopes) {
      this.number = Require.within("row", number, 0, LARGEST_ROW);
      Require.within("number of slopes", slopes.length, UNKNOWNS, UNKNOWNS + MOST_DAYS);
      this.slopes = slopes.clone();
      for (float slope : slopes) {
        Require.finite("slope", slope);
      }
    }

    /** Which row of the shelf it is. */
    public int number() {
      return number;
    }

    /** A copy of the derivatives by z in all bands, then by u in all bands. */
    public double[] byState() {
      double[] wide = new double[UNKNOWNS];
      for (int i = 0; i < wide.length; i++) {
        wide[i] = slopes[i];
      }
      return wide;
    }

    /** The derivative by ln strength of a painting day, by its place among the days. */
    public double byDay(int day) {
      return slopes[UNKNOWNS + day];
    }

    /** The derivative by ln strength: a strength adds to u in all bands. */
    public double byStrength() {
      double sum = 0;
      for (int i = Bands.COUNT; i < UNKNOWNS; i++) {
        sum += slopes[i];
      }
      return sum;
    }

    /** A copy of all derivatives. */
    public float[] slopes() {
      return slopes.clone();
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Row that
          && number == that.number
          && Arrays.equals(slopes, that.slopes);
    }

    @Override
    public int hashCode() {
      return 31 * number + Arrays.hashCode(slopes);
    }

    @Override
    public String toString() {
      return "Row[number=" + number + ", slopes=" + Arrays.toString(slopes) + "]";
    }
  }

  /**
   * A fit.
   *
   * @param z logit of internal masstone reflectance, all bands
   * @param u ln S, all bands
   * @param cards how many test cards have touched the paint
   * @param residualDeltaE00 mean ΔE00 between those cards and the fit
   * @param widthScale how wide errors are, as a share of what is usual, above 0 to 100: learned
   *     from how well the cards agree
   * @param days the paint's painting days, earliest first; empty when no card says its day
   * @param rows the evidence, in ascending order of its numbers
   */
  public FittedOptics(
      double[] z,
      double[] u,
      int cards,
      double residualDeltaE00,
      double widthScale,
      List<Day> days,
      List<Row> rows) {
    this.z = bands("z", z);
    this.u = bands("u", u);
    this.cards = Require.within("cards", cards, 0, 1_000_000);
    this.residualDeltaE00 = Require.nonNegative("residual", residualDeltaE00);
    this.widthScale =
        Require.within("widthScale", Require.positive("widthScale", widthScale), 0, 100);
    this.days = List.copyOf(days);
    this.rows = List.copyOf(rows);
    Require.within("number of days", days.size(), 0, MOST_DAYS);
    for (Row row : rows) {
      Require.within(
          "slopes of row " + row.number(),
          row.slopes.length,
          UNKNOWNS + days.size(),
          UNKNOWNS + days.size());
    }
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).number() <= rows.get(i - 1).number()) {
        throw new IllegalArgumentException(
            "row "
                + rows.get(i).number()
                + " follows row "
                + rows.get(i - 1).number()
                + ", must be in ascending order");
      }
    }
  }

  /** A fit whose errors are as wide as usual, from cards that don't say their day. */
  public FittedOptics(double[] z, double[] u, int cards, double residualDeltaE00, List<Row> rows) {
    this(z, u, cards, residualDeltaE00, 1, List.of(), rows);
  }

  private static double[] bands(String name, double[] values) {
    Require.within("number of " + name, values.length, Bands.COUNT, Bands.COUNT);
    for (int i = 0; i < values.length; i++) {
      Require.within(name, i, values[i], -1000, 1000);
    }
    return values.clone();
  }

  /** A copy of z, all bands. */
  public double[] z() {
    return z.clone();
  }

  /** A copy of u, all bands. */
  public double[] u() {
    return u.clone();
  }

  /** How many test cards have touched the paint. */
  public int cards() {
    return cards;
  }

  /** Mean ΔE00 between those cards and the fit. */
  public double residualDeltaE00() {
    return residualDeltaE00;
  }

  /** How wide errors are, as a share of what is usual: the cards have taught it. */
  public double widthScale() {
    return widthScale;
  }

  /**
   * The days on which cards were painted with it, earliest first; empty when no card says its day.
   */
  public List<Day> days() {
    return days;
  }

  /** The evidence, in ascending order of its numbers. */
  public List<Row> rows() {
    return rows;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FittedOptics that
        && Arrays.equals(z, that.z)
        && Arrays.equals(u, that.u)
        && cards == that.cards
        && Double.compare(residualDeltaE00, that.residualDeltaE00) == 0
        && Double.compare(widthScale, that.widthScale) == 0
        && days.equals(that.days)
        && rows.equals(that.rows);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(z) + Arrays.hashCode(u);
  }

  @Override
  public String toString() {
    return "FittedOptics[cards=" + cards + ", residualDeltaE00=" + residualDeltaE00 + "]";
  }
}
