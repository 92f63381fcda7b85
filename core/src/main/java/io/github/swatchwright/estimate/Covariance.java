package io.github.swatchwright.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A covariance matrix as it comes about: blocks down the diagonal that many paints share, plus and
 * minus the outer products of a few rows. Three numbers of evidence then cost three rows, and no
 * matrix of all unknowns is written out. Immutable.
 */
final class Covariance {
  /** With more rows than this share of the unknowns, one full block is shorter. */
  private static final double MOST_ROWS = 0.6;

  private final int size;
  private final List<Block> blocks;
  private final List<double[]> added;
  private final List<double[]> removed;

  /** A square matrix, times a factor, from some unknown on. */
  private static final class Block {
    private final int start;
    private final double[][] matrix;
    private final double scale;

    /** The matrix is kept, and never written to. */
    private Block(int start, double[][] matrix, double scale) {
      this.start = start;
      this.matrix = matrix;
      this.scale = scale;
    }

    void addProduct(double[] gradient, double[] sum) {
      int size = matrix.length;
      boolean isZero = true;
      for (int j = 0; j < size && isZero; j++) {
        isZero = gradient[start + j] == 0;
      }
      if (isZero) {
        return;
      }
      for (int i = 0; i < size; i++) {
        double[] row = matrix[i];
        double dot = 0;
        for (int j = 0; j < size; j++) {
          dot += row[j] * gradient[start + j];
        }
        sum[start + i] += scale * dot;
      }
    }
  }

  private Covariance(int size, List<Block> blocks, List<double[]> added, List<double[]> removed) {
    this.size = size;
    this.blocks = blocks;
    this.added = added;
    this.removed = removed;
  }

  /** A whole matrix, which is kept and must not change any more, times a factor. */
  static Covariance of(double[][] matrix, double scale) {
    return new Covariance(
        matrix.length, List.of(new Block(0, matrix, scale)), List.of(), List.of());
  }

  /** Covariances of different unknowns, side by side, without any tie between them. */
  static Covariance independent(Covariance first, Covariance second) {
    int size = first.size + second.size;
    List<Block> blocks = new ArrayList<>(first.blocks);
    for (Block block : second.blocks) {
      blocks.add(new Block(first.size + block.start, block.matrix, block.scale));
    }
    return new Covariance(
        size,
        blocks,
        joined(widened(first.added, 0, size), widened(second.added, first.size, size)),
        joined(widened(first.removed, 0, size), widened(second.removed, first.size, size)));
  }

  /** The covariance of the first unknowns alone. */
  Covariance first(int count) {
    List<Block> kept = new ArrayList<>();
    for (Block block : blocks) {
      int left = Math.min(block.matrix.length, count - block.start);
      if (left > 0) {
        double[][] matrix = new double[left][];
        for (int i = 0; i < left; i++) {
          matrix[i] = Arrays.copyOf(block.matrix[i], left);
        }
        kept.add(left == block.matrix.length ? block : new Block(block.start, matrix, block.scale));
      }
    }
    return new Covariance(count, kept, cut(added, count), cut(removed, count));
  }

  private static List<double[]> cut(List<double[]> rows, int count) {
    return rows.stream().map(row -> Arrays.copyOf(row, count)).toList();
  }

  /** The same where all unknowns vary {@code times} as widely. */
  Covariance asWide(double times) {
    return new Covariance(
        size,
        blocks.stream()
            .map(block -> new Block(block.start, block.matrix, block.scale * times * times))
            .toList(),
        scaled(added, times),
        scaled(removed, times));
  }

  private static List<double[]> scaled(List<double[]> rows, double times) {
    return rows.stream()
        .map(row -> Arrays.stream(row).map(value -> value * times).toArray())
        .toList();
  }

  private static List<double[]> widened(List<double[]> rows, int start, int size) {
    return rows.stream()
        .map(
            row -> {
              double[] wide = new double[size];
              System.arraycopy(row, 0, wide, start, row.length);
              return wide;
            })
        .toList();
  }

  private static List<double[]> joined(List<double[]> first, List<double[]> second) {
    List<double[]> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  int size() {
    return size;
  }

  /** This covariance with r·rᵀ added for each row r. */
  Covariance plus(double[]... rows) {
    return new Covariance(size, blocks, joined(added, Arrays.asList(rows)), removed).compact();
  }

  /** This covariance with r·rᵀ taken off for each row r. */
  Covariance minus(double[]... rows) {
    return new Covariance(size, blocks, added, joined(removed, Arrays.asList(rows))).compact();
  }

  private Covariance compact() {
    if (added.size() + removed.size() <= MOST_ROWS * size) {
      return this;
    }
    double[][] matrix = new double[size][size];
    for (Block block : blocks) {
      for (int i = 0; i < block.matrix.length; i++) {
        for (int j = 0; j < block.matrix.length; j++) {
          matrix[block.start + i][block.start + j] += block.scale * block.matrix[i][j];
        }
      }
    }
    added.forEach(row -> addOuter(matrix, 1, row));
    removed.forEach(row -> addOuter(matrix, -1, row));
    return of(matrix, 1);
  }

  private static void addOuter(double[][] matrix, double sign, double[] row) {
    for (int i = 0; i < row.length; i++) {
      double factor = sign * row[i];
      if (factor != 0) {
        for (int j = 0; j < row.length; j++) {
          matrix[i][j] += factor * row[j];
        }
      }
    }
  }

  /** C·g. */
  double[] times(double[] gradient) {
    double[] product = new double[size];
    blocks.forEach(block -> block.addProduct(gradient, product));
    added.forEach(row -> addScaled(product, LowerTriangle.dot(row, gradient), row));
    removed.forEach(row -> addScaled(product, -LowerTriangle.dot(row, gradient), row));
    return product;
  }

  private static void addScaled(double[] sum, double factor, double[] row) {
    if (factor != 0) {
      for (int i = 0; i < row.length; i++) {
        sum[i] += factor * row[i];
      }
    }
  }
}
