package io.github.swatchwright.ladder;

import java.util.Locale;

/**
 * Something that a painter should know before mixing.
 *
 * @param kind what it is
 * @param rung the rung that it is about, 1 for the first
 * @param text in words
 */
public record LadderWarning(Kind kind, int rung, String text) {

  /** What a warning is about. */
  public enum Kind {
    /** An end is nearly pure black, which looks wrong at scale. */
    NEARLY_BLACK,
    /** An end is nearly pure white, which looks wrong at scale. */
    NEARLY_WHITE,
    /** Two rungs differ by less than one can see. */
    STEP_TOO_SMALL,
    /** A step differs from an even one by more than a quarter. */
    STEP_UNEVEN,
    /** One drop more or less moves a rung by more than half a step. */
    ONE_DROP_DECIDES,
    /** The ladder can't reach the wanted end. */
    END_OUT_OF_REACH,
    /** The shades can't be spread so that the average has the wanted colour. */
    LOOK_OUT_OF_REACH,
    /** A layer's solvent may attack what lies below. */
    SOLVENT;

    /** The word for it in files, such as {@code step-too-small}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
