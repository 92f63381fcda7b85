package io.github.swatchwright.search;

/**
 * Stores a box of three coordinates in one long, so that millions of boxes fit into memory and
 * whether two of them meet takes one subtraction.
 *
 * <p>A box has six fields of 9 bits, each under a spare bit. Lower edges are rounded down and upper
 * ones up, and what is out of range counts as at the edge of the range, so that a box never gets
 * smaller than it was.
 *
 * <p>The word, from its highest bit; each dot is a spare bit, and a field holds 9 bits:
 *
 * <pre>
 * bit 63  62   61    60  59      49      39      29      19       9       0
 *  |  0 | 0 | LAB | HULL |.  up 2 |.  up 1 |.  up 0 |.  low 2 |.  low 1 |.  low 0 |
 * </pre>
 *
 * <p>"low" is a lower edge in steps from the start of the range, "up" an upper edge in steps back
 * from its end; 0, 1 and 2 are X, Y and Z, or a*, L* and b*. {@link #region} turns a box round so
 * that each of its fields is the most that the same field of a box may be; one subtraction then
 * compares all six, since a field that is too large borrows the spare bit above it.
 *
 * <p>A box of f(X/Xn), f(Y/Yn), f(Z/Zn) has steps of 1/560, one of CIELAB 0.2 in L* and 0.5 in a*
 * and b*. A stored word also says which it is; 0 says that nothing is known.
 */
final class BoxWord {
  private static final int BITS = 10;
  private static final int MOST = 511;
  private static final int FIELD_COUNT = 6;
  private static final double BEYOND = 1e5;
  private static final long SPARE = 1L << 9 | 1L << 19 | 1L << 29 | 1L << 39 | 1L << 49 | 1L << 59;
  private static final long HULL = 1L << 60;
  private static final long LAB = 1L << 61;
  private static final long FIELDS = HULL - 1;

  private BoxWord() {}

  /** A box of f(X/Xn), f(Y/Yn), f(Z/Zn). */
  static long ofF(float[] low, float[] high) {
    return HULL | word(f(low[0]), f(high[0]), f(low[1]), f(high[1]), f(low[2]), f(high[2]));
  }

  /** The same of one lane. */
  static long ofF(float[][] low, float[][] high, int i) {
    return HULL
        | word(
            f(low[0][i]), f(high[0][i]), f(low[1][i]), f(high[1][i]), f(low[2][i]), f(high[2][i]));
  }

  /** A box of a*, L*, b*. */
  static long ofLab(float[] low, float[] high) {
    return LAB | word(ab(low[0]), ab(high[0]), l(low[1]), l(high[1]), ab(low[2]), ab(high[2]));
  }

  /** The same of one lane. */
  static long ofLab(float[][] low, float[][] high, int i) {
    return LAB
        | word(
            ab(low[0][i]),
            ab(high[0][i]),
            l(low[1][i]),
            l(high[1][i]),
            ab(low[2][i]),
            ab(high[2][i]));
  }

  private static float f(float f) {
    return (f - 0.13f) * 560;
  }

  private static float l(float l) {
    return l * 5;
  }

  private static float ab(float ab) {
    return (ab + 128) * 2;
  }

  private static int down(float steps) {
    return steps <= 0 ? 0 : Math.min(MOST, (int) steps);
  }

  private static int up(float steps) {
    int whole = down(steps);
    return whole < steps && whole < MOST ? whole + 1 : whole;
  }

  private static long word(
      float low0, float high0, float low1, float high1, float low2, float high2) {
    return field(down(low0), 0)
        | field(down(low1), 1)
        | field(down(low2), 2)
        | field(MOST - up(high0), 3)
        | field(MOST - up(high1), 4)
        | field(MOST - up(high2), 5);
  }

  private static long field(int value, int place) {
    return (long) value << (BITS * place);
  }

  /** The word to ask {@link #meets} with: lower edges in the place of upper ones. */
  static long region(long box) {
    long lower = box & ((1L << (3 * BITS)) - 1);
    long upper = (box & FIELDS) >>> (3 * BITS);
    long most = field(MOST, 0) | field(MOST, 1) | field(MOST, 2);
    return (most - upper) | ((most - lower) << (3 * BITS)) | SPARE;
  }

  /** The smallest box around two of the same kind. */
  static long around(long box, long other) {
    long around = box & ~FIELDS;
    for (int place = 0; place < FIELD_COUNT; place++) {
      long field = (long) MOST << (BITS * place);
      around |= Math.min(box & field, other & field);
    }
    return around;
  }

  static boolean isLab(long box) {
    return (box & LAB) != 0;
  }

  /** Whether a box meets a region of the same kind. */
  static boolean meets(long region, long box) {
    return ((region - (box & FIELDS)) & SPARE) == SPARE;
  }

  /** Lower edge of f(X/Xn), f(Y/Yn) or f(Z/Zn). */
  static double lowF(long box, int i) {
    return low(box, i) / 560 + 0.13;
  }

  /** Upper edge of f(X/Xn), f(Y/Yn) or f(Z/Zn). */
  static double highF(long box, int i) {
    return high(box, i) / 560 + 0.13;
  }

  /** Lower edge of a*, L* or b*. */
  static double lowLab(long box, int i) {
    return i == 1 ? low(box, i) / 5 : low(box, i) / 2 - 128;
  }

  /** Upper edge of a*, L* or b*. */
  static double highLab(long box, int i) {
    return i == 1 ? high(box, i) / 5 : high(box, i) / 2 - 128;
  }

  /** In steps; far below when it is at the end of the range. */
  private static double low(long box, int i) {
    int steps = (int) (box >>> (BITS * i)) & MOST;
    return steps == 0 ? -BEYOND : steps;
  }

  /** In steps; far above when it is at the end of the range. */
  private static double high(long box, int i) {
    int fromMost = (int) (box >>> (BITS * (i + 3))) & MOST;
    return fromMost == 0 ? BEYOND : MOST - fromMost;
  }
}
