package io.github.swatchwright.exchange;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.RecoveredReflectance;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import io.github.swatchwright.spectrum.SurfaceMap;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The light that the colours of a measurement file are for: what its keywords name, or else D50 and
 * the 2° observer, as ISO 13655 has it.
 *
 * <p>What a D50 colour looks like under D65 isn't in the file. The smoothest reflectance that has
 * the colour under D50 is looked at under D65; where no reflectance has it, the colour is adapted
 * by the linear Bradford transform. Measured reflectances need neither, and are to be preferred.
 */
final class CgatsLight {
  private static final Pattern LIGHT =
      Pattern.compile(
          "\\b(D[0-9]{2}|F[0-9]{1,2}|ILLUMINANT[ ,=]+[A-E])\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern TEN_DEGREES =
      Pattern.compile(
          "\\b10 ?(?:°|deg|degrees?)\\b|OBSERVER(?:ANGLE)?[ ,=]+10\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern WHERE =
      Pattern.compile(".*(ILLUM|WEIGHTING|MEASUREMENT|INSTRUMENT|OBSERVER|FILTER|COMPUTATION).*");

  private final TristimulusWeights weights;
  private final ReflectanceRecovery recovery;

  private CgatsLight(TristimulusWeights weights) {
    this.weights = weights;
    this.recovery = new ReflectanceRecovery(weights, SurfaceMap.NONE);
  }

  /** Reads the light from keywords. */
  static CgatsLight of(Map<String, String> keywords, String source) {
    TreeSet<String> named = new TreeSet<>();
    keywords.forEach(
        (keyword, value) -> {
          if (WHERE.matcher(keyword).matches()) {
            String text = keyword + " " + value;
            Matcher matcher = LIGHT.matcher(text);
            while (matcher.find()) {
              named.add(matcher.group(1).toUpperCase(Locale.ROOT));
            }
            if (TEN_DEGREES.matcher(text).find()) {
              throw new IllegalArgumentException(
                  source
                      + ": its colours are for the 10° observer; only those for 2° can be taken");
            }
          }
        });
    if (named.size() > 1 || !(named.isEmpty() || named.first().matches("D50|D65"))) {
      throw new IllegalArgumentException(
          source
              + ": its colours are for "
              + String.join(" or ", named)
              + "; only those for D50 or D65 can be taken");
    }
    Illuminant light = named.contains("D65") ? Illuminant.D65 : Illuminant.D50;
    return new CgatsLight(TristimulusWeights.of(light, Observer.CIE_1931));
  }

  /** The white that the file's colours are relative to. */
  WhitePoint white() {
    return weights.whitePoint();
  }

  /** The colour under D65. */
  Swatch toD65(Lab lab) {
    if (white().equals(WhitePoint.D65)) {
      return Swatches.lab(lab);
    }
    RecoveredReflectance recovered = recovery.recover(lab);
    return Swatches.lab(
        recovered.attainable()
            ? TristimulusWeights.D65.xyz(recovered.seen()).toLab()
            : lab.adaptTo(WhitePoint.D65));
  }
}
