package io.github.swatchwright.coat;

import io.github.swatchwright.paint.Medium;

/**
 * What the media of a coat and of something below it do to each other.
 *
 * @param coat which coat, counted from 1 at the bottom
 * @param upperPaint the paint of that coat
 * @param lowerPaint the paint below
 * @param rule what is usual
 */
public record OrderNote(int coat, String upperPaint, String lowerPaint, SolventRule rule) {

  /** How it goes. */
  public SolventVerdict verdict() {
    return rule.verdict();
  }

  /** The medium on top. */
  public Medium upper() {
    return rule.upper();
  }
}
