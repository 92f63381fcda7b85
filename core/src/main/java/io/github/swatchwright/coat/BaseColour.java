package io.github.swatchwright.coat;

import io.github.swatchwright.colour.Lab;
import java.util.Locale;
import java.util.Optional;

/**
 * The colour that a base has to have, so that it ends in a wanted colour under some coats.
 *
 * @param end the colour that is wanted in the end, under the finder's light
 * @param base the base's colour under D65; where no base does it, the one that comes nearest
 * @param reached what the coats make of that base
 * @param deltaE00 how far that is from the wanted end
 * @param contrastRatio of the coats: Y over black ÷ Y over white (ISO 6504-3), 0 to 1
 * @param shown the least part of a small difference in the base's L*, a* and b* that is left in the
 *     end, at least 0
 * @param obstacle why no base does it; empty when this one does
 */
public record BaseColour(
    Lab end,
    Lab base,
    Lab reached,
    double deltaE00,
    double contrastRatio,
    double shown,
    Optional<Obstacle> obstacle) {

  /** When less than this is {@link #shown}, bases that look unlike each other end alike. */
  public static final double HARDLY_SHOWN = 0.01;

  /** Why no base ends in the wanted colour. */
  public enum Obstacle {
    /** The coats hide what is below, so that every base looks the same. */
    HIDDEN("these coats hide what is below them, so the base makes no difference"),
    /** Even over the lightest base it ends darker. */
    TOO_LIGHT("even over white, these coats end darker than that"),
    /** Even over the darkest base it ends lighter. */
    TOO_DARK("even over black, these coats end lighter than that"),
    /** The lightness can be had, hue and chroma can't. */
    TOO_TINTED("no base has the hue and chroma that these coats would have to be balanced by");

    private final String reason;

    Obstacle(String reason) {
      this.reason = reason;
    }

    /** The reason as a clause. */
    public String reason() {
      return reason;
    }

    /** The word for it in JSON, such as {@code too-light}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Whether this base ends in the wanted colour. */
  public boolean isFound() {
    return obstacle.isEmpty();
  }
}
