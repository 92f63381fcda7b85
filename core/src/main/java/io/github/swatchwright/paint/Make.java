package io.github.swatchwright.paint;

import java.util.Locale;

/**
 * How a paint is made. It can't be seen from the colour, and it decides what a swatch says about
 * tinting strength.
 */
public enum Make {
  /**
   * One pigment in a clear medium: dark ones scatter little and tint strongly or weakly by kind.
   */
  SINGLE_PIGMENT,
  /** A colour mixed on a white or opaque base by its maker: scatters much like a white. */
  READY_MIXED,
  /** Not stated: taken for ready-mixed, with a wide error. */
  UNSTATED;

  /** The word for it in files and text, such as {@code single-pigment}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
