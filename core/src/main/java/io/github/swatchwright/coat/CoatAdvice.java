package io.github.swatchwright.coat;

import io.github.swatchwright.colour.Lab;
import java.util.List;

/**
 * The further coats that come closest to what is wanted.
 *
 * @param now the colour before
 * @param target the colour that is wanted
 * @param nowDeltaE00 how far they are apart
 * @param options one for each paint that brings it nearer by half a unit or more and isn't far
 *     worse than the best, the one to trust most first; empty when none does
 */
public record CoatAdvice(Lab now, Lab target, double nowDeltaE00, List<CoatOption> options) {
  /** Copies the list. */
  public CoatAdvice {
    options = List.copyOf(options);
  }
}
