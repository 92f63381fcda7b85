package io.github.swatchwright.ladder;

import java.util.Locale;

/**
 * What a ladder is for. It chooses the order and, for all of them, that each pass covers less than
 * the one before. All of it is common practice of the trade, without a source: the colours are the
 * painter's to choose.
 */
public enum Subject {
  /** From fresh and light to old and dark. */
  RUST(LadderOrder.LIGHT_TO_DARK),
  /** From the paint as it was to lighter and greyer, towards the middle of panels. */
  FADING(LadderOrder.DARK_TO_LIGHT),
  /** From the bare wood to its dark grain. */
  WOOD(LadderOrder.LIGHT_TO_DARK),
  /** From new rubber to what is worn and dusty. */
  RUBBER(LadderOrder.DARK_TO_LIGHT),
  /** From dull metal to where it is worn bright. */
  METAL(LadderOrder.DARK_TO_LIGHT);

  private final LadderOrder order;

  Subject(LadderOrder order) {
    this.order = order;
  }

  /** Which end such a ladder starts at. */
  LadderOrder order() {
    return order;
  }

  /** The word for it in text, such as {@code rust}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
