package io.github.swatchwright.estimate;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A lower bound of a shelf's covariances: what they would be if each paint could vary along {@value
 * #DIRECTIONS} directions only. Colours depend on few directions, so that little is missing, and a
 * recipe's share of it takes a tenth of the time.
 *
 * <p>For any directions V, C is at least C·V(VᵀC·V)⁻¹Vᵀ·C = F·Fᵀ, since the rest is the covariance
 * that C leaves when the values V are known. Directions are those along which X, Y and Z change
 * with masstone and with scattering. What test cards say makes (C⁻¹ + AᵀA)⁻¹ of C, which grows with
 * C, so that the bound stays one: with B = A·F, amounts of directions have the covariance (I +
 * BᵀB)⁻¹.
 */
public final class LeastSpread {
  /** Directions in which a paint varies. */
  public static final int DIRECTIONS = 6;

  /**
   * With more directions than these touched by test cards, the bound takes longer than it saves.
   */
  private static final int MOST_TOUCHED = 600;

  private static final int UNTOUCHED = -1;

  private final Map<String, Integer> numbers = new HashMap<>();
  private final double[][][] directions;

  /** Where a paint's directions are in {@link #together}, or {@link #UNTOUCHED}. */
  private final int[] starts;

  private final double @Nullable [][] together;

  private LeastSpread(List<String> paints, EvidenceRows rows) {
    directions = new double[paints.size()][][];
    starts = new int[paints.size()];
    int touched = 0;
    for (int paint = 0; paint < starts.length; paint++) {
      String name = paints.get(paint);
      numbers.put(name, paint);
      directions[paint] = directions(rows.belief(name));
      boolean isTouched = !rows.of(name).isEmpty();
      starts[paint] = isTouched ? touched : UNTOUCHED;
      touched += isTouched ? DIRECTIONS : 0;
    }
    together = touched == 0 ? null : together(touched, paints, rows);
  }

  /** The bound for some paints; empty when test cards tie too many of them together. */
  static Optional<LeastSpread> of(List<PaintOptics> paints, EvidenceRows rows) {
    List<String> names = paints.stream().map(optics -> optics.paint().name()).toList();
    long touched = names.stream().filter(name -> !rows.of(name).isEmpty()).count();
    return touched * DIRECTIONS > MOST_TOUCHED
        ? Optional.empty()
        : Optional.of(new LeastSpread(names, rows));
  }

  /** Fᵀ: a row for each direction, a column for each unknown. */
  private static double[][] directions(GaussianBelief belief) {
    double[][] spreads = new double[DIRECTIONS][];
    double[][] among = new double[DIRECTIONS][];
    for (int i = 0; i < DIRECTIONS; i++) {
      spreads[i] = belief.spreadAlong(direction(i));
      among[i] = new double[i + 1];
      for (int j = 0; j <= i; j++) {
        among[i][j] = LowerTriangle.dot(spreads[i], direction(j));
      }
      if (among[i][i] <= 0) {
        return new double[DIRECTIONS][belief.size()];
      }
    }
    return LowerTriangle.factor(among).forwardRows(spreads);
  }

  /** Along X, Y or Z under D65, of the masstone for the first three, then of scattering. */
  private static double[] direction(int which) {
    TristimulusWeights weights = TristimulusWeights.D65;
    double[] direction = new double[OpticsState.SIZE];
    int start = which / 3 * Bands.COUNT;
    for (int band = 0; band < Bands.COUNT; band++) {
      direction[start + band] =
          switch (which % 3) {
            case 0 -> weights.x(band);
            case 1 -> weights.y(band);
            default -> weights.z(band);
          };
    }
    return direction;
  }

  /** (I + BᵀB)⁻¹ of the paints that test cards say something about. */
  private double[][] together(int size, List<String> paints, EvidenceRows rows) {
    double[][] b = new double[rows.size()][size];
    for (int paint = 0; paint < starts.length; paint++) {
      for (Map.Entry<Integer, double[]> row : rows.of(paints.get(paint)).entrySet()) {
        for (int i = 0; i < DIRECTIONS; i++) {
          b[row.getKey()][starts[paint] + i] =
              LowerTriangle.dot(row.getValue(), directions[paint][i]);
        }
      }
    }
    double[][] precision = new double[size][];
    for (int i = 0; i < size; i++) {
      precision[i] = new double[i + 1];
      precision[i][i] = 1;
      for (double[] row : b) {
        for (int j = 0; row[i] != 0 && j <= i; j++) {
          precision[i][j] += row[i] * row[j];
        }
      }
    }
    return LowerTriangle.factor(precision).inverseBlock(0, size);
  }

  /**
   * The number of a paint.
   *
   * @throws IllegalArgumentException when it can't be computed with
   */
  public int number(String paint) {
    Integer number = numbers.get(paint);
    if (number == null) {
      throw new IllegalArgumentException(
          "the paint " + Printable.quoted(paint) + " can't be computed with");
    }
    return number;
  }

  /**
   * How a paint's unknowns vary with each direction.
   *
   * @return {@value #DIRECTIONS} rows; columns are z in all bands, then u, as in {@link
   *     ShelfOptics#covarianceOf}
   */
  public double[][] directions(int paint) {
    return Arrays.stream(directions[paint]).map(double[]::clone).toArray(double[][]::new);
  }

  /**
   * The covariance of some values, at least.
   *
   * @param paints their numbers
   * @param slopes for each of these paints, how the values depend on its directions: a row for each
   *     value
   * @return as many rows and columns as there are values
   */
  public double[][] covarianceOf(int[] paints, double[][][] slopes) {
    int values = slopes[0].length;
    double[][] covariance = new double[values][values];
    for (int p = 0; p < paints.length; p++) {
      addProduct(covariance, slopes[p], amounts(paints[p], paints[p], slopes[p]));
      for (int q = 0; q < paints.length; q++) {
        if (q != p && starts[paints[p]] != UNTOUCHED && starts[paints[q]] != UNTOUCHED) {
          addProduct(covariance, slopes[p], amounts(paints[p], paints[q], slopes[q]));
        }
      }
    }
    return covariance;
  }

  /** What the amounts of a paint's directions have to do with values that depend on another's. */
  private double[][] amounts(int paint, int other, double[][] slopes) {
    if (together == null || starts[paint] == UNTOUCHED) {
      return slopes;
    }
    double[][] amounts = new double[slopes.length][DIRECTIONS];
    for (int row = 0; row < slopes.length; row++) {
      for (int i = 0; i < DIRECTIONS; i++) {
        for (int j = 0; j < DIRECTIONS; j++) {
          amounts[row][i] += together[starts[paint] + i][starts[other] + j] * slopes[row][j];
        }
      }
    }
    return amounts;
  }

  private static void addProduct(double[][] sum, double[][] first, double[][] second) {
    for (int i = 0; i < sum.length; i++) {
      for (int j = 0; j < sum.length; j++) {
        for (int m = 0; m < DIRECTIONS; m++) {
          sum[i][j] += first[i][m] * second[j][m];
        }
      }
    }
  }
}
