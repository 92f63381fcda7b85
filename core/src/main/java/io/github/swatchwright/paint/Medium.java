package io.github.swatchwright.paint;

import java.util.Locale;

/** What binds a paint: it decides what thins it, and what attacks it. A pot holds one medium. */
public enum Medium {
  /** Water-thinned acrylic dispersion. */
  ACRYLIC,
  /** Fast solvent-borne lacquer, solvent-borne acrylics included. */
  LACQUER,
  /** Enamel, thinned with white spirit. */
  ENAMEL,
  /** Artists' oil. */
  OIL,
  /** Water colour and gouache, which water lifts again. */
  WATER;

  /** The word for it in files and text, such as {@code acrylic}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
