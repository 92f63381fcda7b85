package io.github.swatchwright.paint;

import java.util.Locale;

/**
 * What a bottle is for. Body colours are mixed of paints and inks; the others have their own step.
 */
public enum Use {
  /** Body colour: hides in one coat or a few. */
  PAINT,
  /** Thin dark paint that runs into recesses. */
  WASH,
  /** Very thin paint that tints a whole surface. */
  FILTER,
  /** Strong transparent colour, for tinting and shading. */
  INK,
  /** First coat, which holds on to bare plastic and metal. */
  PRIMER,
  /** Clear coat: protects what is below and decides how it shines. */
  VARNISH,
  /** Clear liquid that thins paint; it has no colour. */
  THINNER;

  /** Whether it goes into a pot of body colour without being asked for. */
  public boolean isMixed() {
    return this == PAINT || this == INK;
  }

  /** The word for it in files and text, such as {@code wash}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
