package io.github.swatchwright.ladder;

/**
 * What is wrong with a ladder, in drops: how many drops of paint a painter would give to be rid of
 * it. The planner looks for the least sum. The weights are judgement, not measurement.
 *
 * <p>Some things no ladder may do, whatever it saves: lightness must go on in the wanted direction,
 * neighbouring rungs must be visibly different (a step of ΔE00 {@value #TOLD_APART} and of {@value
 * #LEAST_STEP} even steps at least), and each pot must be enough for its pass. All else has a
 * price, the dearest first:
 *
 * <table>
 * <caption>The prices</caption>
 * <tr><th>what</th><th>drops</th><th>why</th></tr>
 * <tr><td>worst step, beyond 20 % off the mean step</td><td>10 for each 10 %</td><td>inside 20 % nobody
 * sees it, and a drop's own scatter is of that size</td></tr>
 * <tr><td>an end, beyond ΔE00 1 off the wanted colour</td><td>8 for each ΔE00</td><td>below 1 it is a
 * match</td></tr>
 * <tr><td>a rung between the ends, beyond half a step off its aim</td><td>2 for each tenth of a
 * step</td><td>the shades should stay of one family; where exactly they lie is free</td></tr>
 * <tr><td>a rung that one drop moves by more than half a step</td><td>6 for each tenth of a
 * step</td><td>a slip of the hand must not undo the order</td></tr>
 * <tr><td>a rung that gets no lighter or darker than the one before by three sd of what scattering
 * drops make of it</td><td>10 for each sd</td><td>of a thousand painters, one sees the order turned
 * round</td></tr>
 * <tr><td>paint</td><td>1 for each drop, let-down included; from the second rung on 1 more for each
 * drop above 5 in one addition</td><td>what isn't painted is thrown away; large additions are
 * miscounted</td></tr>
 * <tr><td>paint that a pot holds above its pass, what is kept of it and the least pot</td><td>1 more for
 * each drop</td><td>nobody mixes a pot to throw it away</td></tr>
 * <tr><td>starting a rung with nothing of the pot before</td><td>4</td><td>the cup has to be
 * cleaned</td></tr>
 * <tr><td>a let-down</td><td>4, beside its paint</td><td>a second cup</td></tr>
 * <tr><td>a paint that leads back, added to kept drops: black to a pot that gets
 * lighter</td><td>3</td><td>it undoes what the other drops do</td></tr>
 * <tr><td>a bottle</td><td>4 once, and 1 for each rung that takes of it</td><td>opened, shaken, its
 * dropper wiped; the same darkener as far as it goes</td></tr>
 * </table>
 */
final class LadderCost {
  /** Neighbouring rungs must differ by that ΔE00 so that the eye sees a step. */
  static final double TOLD_APART = 0.8;

  /** Neighbouring rungs must differ by that share of an even step. */
  static final double LEAST_STEP = 0.35;

  /** Steps may differ from their mean by that share of it for nothing. */
  static final double EVEN_ENOUGH = 0.2;

  /** One drop may move a rung by that share of an even step for nothing. */
  static final double STURDY_ENOUGH = 0.5;

  private static final double UNEVEN = 100;
  private static final double END_MATCHES = 1;
  private static final double END = 8;
  private static final double ASTRAY_ENOUGH = 0.5;
  private static final double ASTRAY = 20;
  private static final double FRAIL = 60;
  private static final double SURE_ENOUGH = 3;
  private static final double UNSURE = 10;
  private static final int HANDFUL = 5;
  private static final double FRESH_START = 4;
  private static final double SECOND_CUP = 4;
  private static final double BACK = 3;

  /** A paint leads back when its L* lies so far on the wrong side of the pot that it goes into. */
  private static final double BACK_FROM = 1;

  private static final double BOTTLE = 4;
  private static final double OPENING = 1;

  private LadderCost() {}

  /** Of the worst step's difference from the mean step, as a share of it. */
  static double uneven(double worst) {
    return UNEVEN * Math.max(0, worst - EVEN_ENOUGH);
  }

  /** Of an end that is a ΔE00 away from the wanted colour. */
  static double end(double missed) {
    return END * Math.max(0, missed - END_MATCHES);
  }

  /** Of a rung between the ends that is off its aim, in steps. */
  static double astray(double steps) {
    return ASTRAY * Math.max(0, steps - ASTRAY_ENOUGH);
  }

  /** Of a rung that one drop moves, in steps. */
  static double frail(double steps) {
    return FRAIL * Math.max(0, steps - STURDY_ENOUGH);
  }

  /** The cost of a step whose L* moves by a number of sd of what scattering drops make of it. */
  static double unsure(double deviations) {
    return UNSURE * Math.max(0, SURE_ENOUGH - deviations);
  }

  /** Of the drops poured into the first pot, or of an addition to a later one. */
  static double paint(int drops, boolean first) {
    return first ? drops : drops + Math.max(0, drops - HANDFUL);
  }

  /** Of drops that nobody needs. */
  static double surplus(double drops) {
    return Math.max(0, drops);
  }

  /** Of emptying the cup and starting again. */
  static double freshStart() {
    return FRESH_START;
  }

  /** Of mixing a let-down beside the pot. */
  static double letDown(LetDown small) {
    return SECOND_CUP + small.count();
  }

  /**
   * Of a paint that is added to kept drops.
   *
   * @param ahead how far its L* lies ahead of theirs in the ladder's direction
   */
  static double leadingBack(double ahead) {
    return ahead < -BACK_FROM ? BACK : 0;
  }

  /** Of bottles that weren't used before. */
  static double bottles(int count) {
    return BOTTLE * count;
  }

  /** Of the ingredients that one rung takes. */
  static double openings(int count) {
    return OPENING * count;
  }
}
