package io.github.swatchwright.estimate;

import io.github.swatchwright.argument.Printable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Linear evidence about several paints: rows A in units of their own error, of which each touches
 * few paints, and what they leave of the paints' covariances C₀.
 *
 * <p>Everything is worked out in as many dimensions as there are rows (G = A·C₀·Aᵀ + I), however
 * many unknowns the paints have between them, and is exact.
 */
final class EvidenceRows {
  /** Fewer rows than this aren't worth a second thread. */
  private static final int WORTH_SHARING = 200;

  private final int size;
  private final Map<String, GaussianBelief> beliefs;
  private final Map<String, Slopes> byPaint = new LinkedHashMap<>();

  /** The rows that touch one paint. */
  private static final class Slopes {
    private final List<Integer> numbers = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();

    private void addMixed(String paint, int[] touched, LowerTriangle mixing, EvidenceRows mixed) {
      double[][] columns = new double[rows.get(0).length][touched.length];
      SortedMap<Integer, double[]> byNumber = new TreeMap<>();
      boolean isTouched = false;
      for (int i = 0; i < rows.size(); i++) {
        int place = Arrays.binarySearch(touched, numbers.get(i));
        if (place < 0) {
          byNumber.put(numbers.get(i), rows.get(i));
        } else {
          isTouched = true;
          for (int m = 0; m < columns.length; m++) {
            columns[m][place] = rows.get(i)[m];
          }
        }
      }
      if (isTouched) {
        for (int m = 0; m < columns.length; m++) {
          columns[m] = mixing.forward(columns[m]);
        }
        for (int place = 0; place < touched.length; place++) {
          double[] row = new double[columns.length];
          for (int m = 0; m < row.length; m++) {
            row[m] = columns[m][place];
          }
          byNumber.put(touched[place], row);
        }
      }
      byNumber.forEach((number, row) -> mixed.add(paint, number, row));
    }
  }

  /**
   * Rows about paints.
   *
   * @param size how many rows there are
   * @param beliefs what is believed of each paint without them
   */
  EvidenceRows(int size, Map<String, GaussianBelief> beliefs) {
    this.size = size;
    this.beliefs = beliefs;
  }

  int size() {
    return size;
  }

  /** Adds what one row says about one paint. */
  void add(String paint, int number, double[] slopes) {
    Slopes of = byPaint.computeIfAbsent(paint, name -> new Slopes());
    of.numbers.add(number);
    of.rows.add(slopes);
  }

  /** Adds all rows to a larger set. */
  void copyTo(EvidenceRows other) {
    byPaint.forEach(
        (paint, of) -> {
          for (int i = 0; i < of.rows.size(); i++) {
            other.add(paint, of.numbers.get(i), of.rows.get(i));
          }
        });
  }

  /** The rows that touch an unknown, by their numbers, in ascending order. */
  Map<Integer, double[]> of(String unknown) {
    Map<Integer, double[]> rows = new TreeMap<>();
    Slopes of = byPaint.getOrDefault(unknown, new Slopes());
    for (int i = 0; i < of.rows.size(); i++) {
      rows.put(of.numbers.get(i), of.rows.get(i));
    }
    return rows;
  }

  /** L with L·Lᵀ = A·C₀·Aᵀ + I. */
  LowerTriangle factor() {
    double[][] g = new double[size][];
    for (int i = 0; i < size; i++) {
      g[i] = new double[i + 1];
      g[i][i] = 1;
    }
    byPaint.forEach((paint, of) -> addSpread(g, belief(paint), of));
    return LowerTriangle.factor(g);
  }

  private static void addSpread(double[][] g, GaussianBelief belief, Slopes of) {
    int count = of.rows.size();
    int unknowns = of.rows.get(0).length;
    double[][] bySlope = new double[unknowns][count];
    for (int j = 0; j < count; j++) {
      for (int m = 0; m < unknowns; m++) {
        bySlope[m][j] = of.rows.get(j)[m];
      }
    }
    IntStream rows = IntStream.range(0, count);
    (count < WORTH_SHARING ? rows : rows.parallel())
        .forEach(i -> addRow(g, belief, of, bySlope, i));
  }

  /** Row i with itself and all before it; no two rows write to the same places. */
  private static void addRow(
      double[][] g, GaussianBelief belief, Slopes of, double[][] bySlope, int i) {
    double[] less = new double[i + 1];
    LowerTriangle.subtract(less, belief.spreadAlong(of.rows.get(i)), 0, bySlope, 0, i + 1);
    for (int j = 0; j <= i; j++) {
      int a = of.numbers.get(i);
      int b = of.numbers.get(j);
      g[Math.max(a, b)][Math.min(a, b)] -= less[j];
    }
  }

  private static void addScaled(double[] sums, double factor, double[] values, int count) {
    for (int j = 0; j < count; j++) {
      sums[j] += factor * values[j];
    }
  }

  /** What is believed of a paint without the rows. */
  GaussianBelief belief(String paint) {
    GaussianBelief belief = beliefs.get(paint);
    if (belief == null) {
      throw new IllegalArgumentException("no belief about " + Printable.quoted(paint));
    }
    return belief;
  }

  /** Aᵀ·α of one paint. */
  double[] pull(String paint, double[] alpha) {
    double[] pull = new double[belief(paint).size()];
    Slopes of = byPaint.get(paint);
    if (of != null) {
      for (int i = 0; i < of.rows.size(); i++) {
        addScaled(pull, alpha[of.numbers.get(i)], of.rows.get(i), pull.length);
      }
    }
    return pull;
  }

  /** A·shift of all paints. */
  double[] along(Map<String, double[]> shifts) {
    double[] values = new double[size];
    byPaint.forEach(
        (paint, of) -> {
          double[] shift = shifts.get(paint);
          if (shift != null) {
            for (int i = 0; i < of.rows.size(); i++) {
              values[of.numbers.get(i)] += LowerTriangle.dot(of.rows.get(i), shift);
            }
          }
        });
    return values;
  }

  /** J·C·Jᵀ after the rows, for values that depend on several paints by their Jacobians. */
  double[][] covarianceOf(Map<String, double[][]> jacobians, LowerTriangle factor) {
    return Dependence.of(jacobians, this, factor).covariance();
  }

  /**
   * The same evidence without some of what it depends on, whose error becomes the rows' own, and
   * which are mixed until their errors are independent again: A ← L⁻¹·A with L·Lᵀ = B·C_b·Bᵀ + I.
   *
   * @param unknowns what to do without
   */
  EvidenceRows integrated(Set<String> unknowns) {
    int[] touched =
        unknowns.stream()
            .flatMap(name -> byPaint.getOrDefault(name, new Slopes()).numbers.stream())
            .mapToInt(number -> number)
            .distinct()
            .sorted()
            .toArray();
    LowerTriangle mixing = among(touched, unknowns).factor();
    EvidenceRows mixed = new EvidenceRows(size, beliefs);
    byPaint.forEach(
        (paint, of) -> {
          if (!unknowns.contains(paint)) {
            of.addMixed(paint, touched, mixing, mixed);
          }
        });
    return mixed;
  }

  /** Those rows alone, numbered from 0, and only their dependence on those unknowns. */
  private EvidenceRows among(int[] numbers, Set<String> unknowns) {
    EvidenceRows few = new EvidenceRows(numbers.length, beliefs);
    for (String name : unknowns) {
      Slopes of = byPaint.getOrDefault(name, new Slopes());
      for (int i = 0; i < of.rows.size(); i++) {
        few.add(name, Arrays.binarySearch(numbers, of.numbers.get(i)), of.rows.get(i));
      }
    }
    return few;
  }
}
