package io.github.swatchwright.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * All evidence linearised at one state: earlier rows, then each patch's own, in units of their
 * errors, with G = A·C₀·Aᵀ + I factored and α = G⁻¹·(y − h + A(v − m)).
 */
final class FitRows {
  private final List<PatchModel> models;
  private final double[] weights;
  private final List<Whitener> whiteners;
  private final int[] firstRows;
  private final EvidenceRows rows;
  private final LowerTriangle factor;
  private final double[] alpha;
  private List<LeftOut> leftOut = List.of();

  private FitRows(
      List<PatchModel> models,
      double[] weights,
      Map<String, GaussianBelief> beliefs,
      Map<String, double[]> states,
      EvidenceRows earlier,
      boolean telling) {
    this.models = models;
    this.weights = weights;
    List<PatchModel.Linear> linear = models.stream().map(model -> model.linearise(states)).toList();
    whiteners =
        IntStream.range(0, weights.length)
            .mapToObj(
                i ->
                    telling
                        ? Whitener.telling(linear.get(i), models.get(i).unknowns(), beliefs)
                        : Whitener.of(linear.get(i)))
            .toList();
    firstRows = new int[models.size() + 1];
    firstRows[0] = earlier.size();
    List<List<double[][]>> slopes = new ArrayList<>();
    for (int i = 0; i < weights.length; i++) {
      Whitener whitener = whiteners.get(i);
      double root = Math.sqrt(weights[i]);
      slopes.add(
          linear.get(i).jacobians().stream().map(slope -> whitener.apply(slope, root)).toList());
      firstRows[i + 1] = firstRows[i] + whitener.size();
    }
    rows = new EvidenceRows(firstRows[weights.length], beliefs);
    earlier.copyTo(rows);
    double[] innovation = new double[rows.size()];
    Map<String, double[]> shifts = shifts(beliefs, states);
    for (int i = 0; i < weights.length; i++) {
      addPatch(i, slopes.get(i), states, shifts, innovation);
    }
    factor = rows.factor();
    alpha = factor.solve(innovation);
  }

  /** v − m of everything that is believed: how far the state is from the belief's mean. */
  private static Map<String, double[]> shifts(
      Map<String, GaussianBelief> beliefs, Map<String, double[]> states) {
    Map<String, double[]> shifts = new LinkedHashMap<>();
    beliefs.forEach(
        (name, belief) ->
            shifts.put(
                name, ShelfFit.minus(Objects.requireNonNull(states.get(name)), belief.mean())));
    return shifts;
  }

  /**
   * Linearises patches.
   *
   * @param weights how much each patch counts, above 0 to 1
   * @param beliefs what is believed of paints and strengths without any rows
   * @param states where to linearise
   * @param earlier rows of earlier cards
   * @param telling whether to keep only those values of each patch that tell something
   */
  static FitRows of(
      List<PatchModel> models,
      double[] weights,
      Map<String, GaussianBelief> beliefs,
      Map<String, double[]> states,
      EvidenceRows earlier,
      boolean telling) {
    return new FitRows(models, weights, beliefs, states, earlier, telling);
  }

  private void addPatch(
      int patch,
      List<double[][]> slopes,
      Map<String, double[]> states,
      Map<String, double[]> shifts,
      double[] innovation) {
    List<String> unknowns = models.get(patch).unknowns();
    int first = firstRows[patch];
    double[] residual = misfit(patch, states);
    for (int row = 0; row < residual.length; row++) {
      innovation[first + row] = residual[row];
      for (int p = 0; p < slopes.size(); p++) {
        double[] slope = slopes.get(p)[row];
        rows.add(unknowns.get(p), first + row, slope);
        innovation[first + row] +=
            LowerTriangle.dot(slope, Objects.requireNonNull(shifts.get(unknowns.get(p))));
      }
    }
  }

  /** Measured minus expected in a state, in units of the patch's error as linearised here. */
  double[] misfit(int patch, Map<String, double[]> states) {
    double[] misfit = whiteners.get(patch).apply(models.get(patch).residual(states));
    double root = Math.sqrt(weights[patch]);
    for (int i = 0; i < misfit.length; i++) {
      misfit[i] *= root;
    }
    return misfit;
  }

  EvidenceRows rows() {
    return rows;
  }

  LowerTriangle factor() {
    return factor;
  }

  /** The full step of Gauss and Newton: C times it is the step from the mean. */
  double[] wantedDual(String unknown) {
    return rows.pull(unknown, alpha);
  }

  /** Each patch against all the other evidence; worked out once, when first asked for. */
  synchronized List<LeftOut> leftOut() {
    if (leftOut.isEmpty()) {
      List<double[][]> blocks = factor.inverseBlocks(firstRows);
      leftOut =
          IntStream.range(0, weights.length)
              .parallel()
              .mapToObj(patch -> leftOut(patch, blocks.get(patch), alpha(patch)))
              .toList();
    }
    return leftOut;
  }

  private double[] alpha(int patch) {
    return Arrays.copyOfRange(alpha, firstRows[patch], firstRows[patch + 1]);
  }

  /**
   * A patch against all the other evidence, had nobody expected anything of its paints' strengths:
   * ln strength of each varies by another {@code sd}.
   *
   * <p>That adds s²·g·gᵀ to G for each paint, with g how the rows depend on its strength, and by
   * Woodbury's formula takes G⁻¹g(1/s² + gᵀG⁻¹g)⁻¹gᵀG⁻¹ off its inverse, one paint after the other.
   *
   * @param sd of each paint of the patch
   */
  LeftOut leftOutUnexpectant(int patch, Map<String, Double> sd) {
    int from = firstRows[patch];
    int to = firstRows[patch + 1];
    double[][] block = factor.inverseBlock(from, to);
    double[] pull = alpha.clone();
    List<double[]> taken = new ArrayList<>();
    double[] strength = new double[OpticsState.SIZE];
    Arrays.fill(strength, OpticsState.SIZE / 2, OpticsState.SIZE, 1);
    sd.forEach(
        (paint, deviation) -> {
          double[] gradient = rows.along(Map.of(paint, strength));
          double[] solved = factor.solve(gradient);
          taken.forEach(before -> subtract(solved, LowerTriangle.dot(before, gradient), before));
          double scale = 1 / (deviation * deviation) + LowerTriangle.dot(gradient, solved);
          subtract(pull, LowerTriangle.dot(gradient, pull) / scale, solved);
          double[] unit = new double[solved.length];
          subtract(unit, -1 / Math.sqrt(scale), solved);
          taken.add(unit);
          for (int i = 0; i < block.length; i++) {
            for (int j = 0; j < block.length; j++) {
              block[i][j] -= unit[from + i] * unit[from + j];
            }
          }
        });
    return leftOut(patch, block, Arrays.copyOfRange(pull, from, to));
  }

  private static void subtract(double[] from, double times, double[] vector) {
    for (int i = 0; i < from.length; i++) {
      from[i] -= times * vector[i];
    }
  }

  /** With B the patch's block of G⁻¹ the others leave B⁻¹ open, and foretell it off by B⁻¹·α. */
  private LeftOut leftOut(int patch, double[][] block, double[] pull) {
    double[][] open = inverse(block);
    double weight = weights[patch];
    double[] difference = new double[pull.length];
    for (int i = 0; i < pull.length; i++) {
      difference[i] = LowerTriangle.dot(open[i], pull) / Math.sqrt(weight);
      for (int j = 0; j < pull.length; j++) {
        open[i][j] = (open[i][j] - (i == j ? 1 : 0)) / weight + (i == j ? 1 : 0);
      }
    }
    return new LeftOut(difference, open);
  }

  private static double[][] inverse(double[][] matrix) {
    double[][] lower = new double[matrix.length][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = Arrays.copyOf(matrix[i], i + 1);
    }
    return LowerTriangle.factor(lower).inverseBlock(0, matrix.length);
  }
}
