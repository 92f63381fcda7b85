package io.github.swatchwright.cli.photo;

import org.jspecify.annotations.Nullable;

/**
 * What is wrong with a photo, in this program's own words. What image readers throw is often for
 * their programmers alone, and is reported as a broken file.
 */
final class PhotoRefusal extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  PhotoRefusal(String message) {
    super(message);
  }

  PhotoRefusal(String message, @Nullable Throwable cause) {
    super(message, cause);
  }
}
