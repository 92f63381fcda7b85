package io.github.swatchwright.cli;

import java.math.BigDecimal;

/** Numbers in text. */
final class Numbers {
  private Numbers() {}

  /** The number with all its digits, and no zeros after them: 3, 0.25. */
  static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
