package io.github.swatchwright.paint;

import java.util.Locale;

/** A look that the model doesn't hold for: such a paint is kept out of every computed mix. */
public enum Effect {
  /** Metal flakes, whose colour depends on the direction of view. */
  METALLIC,
  /** Interference flakes. */
  PEARL,
  /** Light that is absorbed at one wavelength comes back at another. */
  FLUORESCENT;

  /** The word for it in files and text, such as {@code metallic}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
