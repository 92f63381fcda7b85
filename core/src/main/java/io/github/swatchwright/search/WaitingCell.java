package io.github.swatchwright.search;

import java.util.ArrayList;
import java.util.List;

/**
 * A {@link RatioCell} with the sets of paints that wait to be tried against it, and a count of how
 * often looking at its children first has saved work.
 */
final class WaitingCell {
  /** How many pairs of set and child are looked at before that is judged. */
  private static final int PROBES = 16 * LaneKernel.LANES;

  /** The number of rounds after which that is judged again, since the limit falls meanwhile. */
  private static final int PATIENCE = 32;

  final RatioCell cell;
  final List<WaitingCell> children = new ArrayList<>();

  /** The parts at or below it; itself when it is below a part. */
  final List<RatioCell> parts = new ArrayList<>();

  /** The first {@link #count} of these. */
  final long[] waiting = new long[2 * LaneKernel.LANES];

  int count;

  /** Children of sets that were looked at. */
  int sifted;

  /** Those of them that stayed. */
  int kept;

  private int rounds;

  private WaitingCell(RatioCell cell) {
    this.cell = cell;
  }

  /**
   * A cell with all below it.
   *
   * @param waitingParts receives the parts at or below it, from left to right
   */
  static WaitingCell tree(RatioCell cell, List<WaitingCell> waitingParts) {
    WaitingCell root = new WaitingCell(cell);
    if (cell.isPart) {
      waitingParts.add(root);
    }
    for (RatioCell child : cell.children) {
      WaitingCell below = tree(child, waitingParts);
      root.children.add(below);
      root.parts.addAll(below.parts);
    }
    if (cell.isPart || cell.children.isEmpty() || cell.parts == 0) {
      root.parts.clear();
      root.parts.add(cell);
    }
    return root;
  }

  /** A cell all of whose ratios are to be computed. */
  static WaitingCell whole(RatioCell cell) {
    WaitingCell whole = new WaitingCell(cell);
    whole.parts.add(cell);
    return whole;
  }

  void add(long set) {
    waiting[count++] = set;
  }

  /**
   * Whether to compute all ratios for the next sets rather than look at the children's corners
   * first: at a leaf, and where too few children drop out for looking to pay.
   */
  boolean isBestTried() {
    if (children.isEmpty()) {
      return true;
    }
    int corners = children.size() * cell.corners.length;
    int ratios = cell.ratios.length;
    if (sifted < PROBES || (double) kept / sifted * ratios + corners < ratios) {
      return false;
    }
    rounds++;
    if (rounds == PATIENCE) {
      forget();
    }
    return true;
  }

  private void forget() {
    sifted = 0;
    kept = 0;
    rounds = 0;
  }

  /** Forgets what waits, here and below, and how well looking paid. */
  void clear() {
    count = 0;
    forget();
    children.forEach(WaitingCell::clear);
  }
}
