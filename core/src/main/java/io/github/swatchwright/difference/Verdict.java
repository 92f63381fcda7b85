package io.github.swatchwright.difference;

import io.github.swatchwright.argument.Require;

/**
 * A CIEDE2000 difference in plain words. The steps at 1, 2 and 5 are common practice of the trade,
 * stated from memory, and no standard. The two thresholds are those of ISO/TR 28642:2016 for tooth
 * colours, from memory. Above about 5, CIEDE2000 ranks differences but doesn't measure them.
 */
public enum Verdict {
  /** Below 1: the same colour for all practical purposes. */
  MATCH("match", "Most people see no difference."),
  /** From 1 to below 2: seen side by side only. */
  CLOSE("close", "A small difference shows when both lie side by side."),
  /** From 2 to 5: seen at a glance. */
  VISIBLE("visible", "The difference shows at a glance."),
  /** Above 5. */
  DIFFERENT("different", "These are different colours.");

  /** The ΔE00 that half of all observers see. */
  public static final double PERCEPTIBLE = 0.8;

  /** The ΔE00 that half of all observers accept. */
  public static final double ACCEPTABLE = 1.8;

  private final String word;
  private final String sentence;

  Verdict(String word, String sentence) {
    this.word = word;
    this.sentence = sentence;
  }

  /**
   * The verdict on a CIEDE2000 difference.
   *
   * @param deltaE00 the difference, at least 0
   */
  public static Verdict of(double deltaE00) {
    Require.nonNegative("deltaE00", deltaE00);
    if (deltaE00 < 1) {
      return MATCH;
    }
    if (deltaE00 < 2) {
      return CLOSE;
    }
    return deltaE00 <= 5 ? VISIBLE : DIFFERENT;
  }

  /** One word, for tables and files. */
  public String word() {
    return word;
  }

  /** One plain sentence, for people. */
  public String sentence() {
    return sentence;
  }
}
