package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.photo.PatchDifference;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.Region;
import java.nio.file.Path;

/**
 * A region of a photo, as it is named on the command line.
 *
 * @param file the photo
 * @param region {@code x,y,w,h}, not checked yet
 */
record PhotoPatch(Path file, String region) {

  /**
   * Reads {@code photo.jpg@x,y,w,h}.
   *
   * @throws IllegalArgumentException when it has another form
   */
  static PhotoPatch parse(String text) {
    String trimmed = text.trim();
    if (!ArgumentKind.isPhoto(trimmed)) {
      throw new IllegalArgumentException(
          Printable.quoted(text) + " is not of the form photo.jpg@x,y,w,h, a file and a region");
    }
    int at = trimmed.lastIndexOf('@');
    return new PhotoPatch(Path.of(trimmed.substring(0, at)), trimmed.substring(at + 1));
  }

  /** Its colour. */
  PhotoColour colour(PhotoReference reference, Shelf shelf) {
    Photo photo = PhotoFile.open(file);
    Region read = in(photo);
    return reference.reader(photo, shelf).colour(read);
  }

  /** How it differs from another region of the same photo. */
  PatchDifference from(PhotoPatch other, PhotoReference reference, Shelf shelf) {
    Photo photo = PhotoFile.open(file);
    PhotoReader reader = reference.reader(photo, shelf);
    return PatchDifference.of(
        reader.correction(),
        reader.light().sample(photo, in(photo)),
        reader.light().sample(photo, other.in(photo)));
  }

  private Region in(Photo photo) {
    return Region.parse(region, photo.width(), photo.height());
  }
}
