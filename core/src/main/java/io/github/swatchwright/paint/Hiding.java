package io.github.swatchwright.paint;

import io.github.swatchwright.argument.Require;
import java.util.Locale;

/**
 * What is known of how well a paint hides. Every form is evidence of how much the paint scatters;
 * the package {@code estimate} weighs it.
 */
public sealed interface Hiding {

  /**
   * The number of coats after which a black-and-white base no longer shows (contrast ratio 0.98).
   *
   * @param coats above 0 to 100; a painter's whole number stands for "more than n − 1, at most n"
   */
  record Coats(double coats) implements Hiding {
    /** Refuses what is not above 0, and more than 100. */
    public Coats {
      Require.positive("coats", coats);
      Require.within("coats", coats, 0, 100);
    }
  }

  /**
   * The contrast ratio of one coat (ISO 6504-3), over black of Y = 5 % and white of Y = 80 %.
   *
   * @param ratio Y over black divided by Y over white, above 0 to 1
   */
  record ContrastRatio(double ratio) implements Hiding {
    /** Refuses a ratio outside 0 to 1. */
    public ContrastRatio {
      Require.positive("contrastRatio", ratio);
      Require.within("contrastRatio", ratio, 0, 1);
    }
  }

  /**
   * Scattering itself, the same in all bands.
   *
   * @param scattering S in units of a typical white's, 0.0001 to 100
   */
  record Scattering(double scattering) implements Hiding {
    /** Refuses a value outside 0.0001 to 100. */
    public Scattering {
      Require.within("scattering", scattering, 1e-4, 100);
    }
  }

  /** The word on a label, for one coat. The limits are common practice, without a source. */
  enum Word implements Hiding {
    /** What lies below shows nearly unchanged: contrast ratio below 0.55. */
    TRANSPARENT(0, 0.55),
    /** What lies below shows clearly: 0.55 to 0.8. */
    SEMI_TRANSPARENT(0.55, 0.8),
    /** What lies below shows faintly: 0.8 to 0.93. */
    SEMI_OPAQUE(0.8, 0.93),
    /** What lies below hardly shows: above 0.93. */
    OPAQUE(0.93, 1);

    private final double lowestRatio;
    private final double highestRatio;

    Word(double lowestRatio, double highestRatio) {
      this.lowestRatio = lowestRatio;
      this.highestRatio = highestRatio;
    }

    /** The word in files and text, such as {@code semi-opaque}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The contrast ratio of one coat at which the word begins to fit, 0 to 1. */
    public double lowestRatio() {
      return lowestRatio;
    }

    /** The contrast ratio of one coat above which the next word fits better, 0 to 1. */
    public double highestRatio() {
      return highestRatio;
    }

    /** The word that fits a contrast ratio of one coat. */
    public static Word of(double contrastRatio) {
      for (Word word : values()) {
        if (contrastRatio < word.highestRatio) {
          return word;
        }
      }
      return OPAQUE;
    }
  }
}
