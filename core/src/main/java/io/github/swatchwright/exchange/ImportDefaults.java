package io.github.swatchwright.exchange;

import io.github.swatchwright.paint.Medium;
import java.util.Optional;

/**
 * What to take where a file says nothing.
 *
 * @param shelfName the name of the new shelf
 * @param medium the medium of paints without one; when empty, such paints are refused
 */
public record ImportDefaults(String shelfName, Optional<Medium> medium) {

  /** The medium of a paint that the file tells none for. */
  Medium mediumOfPaint() {
    return medium.orElseThrow(
        () ->
            new IllegalArgumentException(
                "the file doesn't tell the medium, so it has to be given"));
  }
}
