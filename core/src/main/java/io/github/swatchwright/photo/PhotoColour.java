package io.github.swatchwright.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Swatch;
import java.util.List;
import java.util.Optional;

/**
 * A colour read from a photo.
 *
 * @param spread the colour relative to D65, and how well it is known
 * @param lightnessKnown false when nothing in the photo tells how bright its light was
 * @param pixelSpread the ΔE00 about the colour that 80 % of the region's pixels lie within: texture
 *     and noise, no error of the mean
 * @param shares which pixels are in the mean
 * @param several the two colours that the region holds, when it holds more than one
 */
public record PhotoColour(
    ColourSpread spread,
    boolean lightnessKnown,
    double pixelSpread,
    PixelShares shares,
    Optional<TwoColours> several) {

  /** The most probable colour, relative to D65. */
  public Lab lab() {
    return spread.centre();
  }

  /** The ΔE00 about {@link #lab} that holds the true colour with 80 % probability. */
  public double intervalDeltaE00() {
    return spread.radius(Prediction.INTERVAL_PROBABILITY);
  }

  /** Its error as one figure, as a swatch has it: sd of L*, a* and b*. */
  public double error() {
    double[] sd = spread.standardDeviations();
    return Math.sqrt((sd[0] * sd[0] + sd[1] * sd[1] + sd[2] * sd[2]) / 3);
  }

  /**
   * The colour as a swatch; lightness a little beyond 0 to 100, as noise makes it, is cut off.
   *
   * @throws IllegalArgumentException when it is so far off that the reference must be wrong
   */
  public Swatch swatch() {
    Lab lab = lab();
    if (lab.l() > 105) {
      throw new IllegalArgumentException(
          "the corrected lightness is " + lab.l() + ", must be below 100; is the reference right?");
    }
    return new Swatch.OfLab(Lab.ofD65(Math.max(0, Math.min(100, lab.l())), lab.a(), lab.b()));
  }

  static double pixelSpread(Lab centre, List<Lab> pixels) {
    double[] distances =
        pixels.stream().mapToDouble(p -> Ciede2000.deltaE(centre, p)).sorted().toArray();
    int last = (int) (Prediction.INTERVAL_PROBABILITY * distances.length);
    return distances[Math.min(last, distances.length - 1)];
  }
}
