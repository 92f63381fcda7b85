package io.github.swatchwright.coat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Prediction;
import java.util.List;

/**
 * How things look after a coat.
 *
 * @param coat the coat
 * @param prediction the colour over the base, from a distance, and how well it is known
 * @param contrastRatio of all coats so far: Y over black ÷ Y over white (ISO 6504-3), 0 to 1
 * @param overDarkest the colour over the darkest part of a pre-highlight
 * @param overLightest the colour over its lightest part
 * @param coatsToHide coats of this paint alone, thinned as it is, at which it hides; not whole
 * @param patches what is seen close up, the largest share first; one when all coats cover all
 */
public record CoatStep(
    Coat coat,
    Prediction prediction,
    double contrastRatio,
    Lab overDarkest,
    Lab overLightest,
    double coatsToHide,
    List<SeenPatch> patches) {

  /** Copies the list. */
  public CoatStep {
    patches = List.copyOf(patches);
  }
}
