package io.github.swatchwright.cli;

import io.github.swatchwright.photo.Illumination;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.PhotoCorrection;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionShade;
import io.github.swatchwright.photo.ShadeSearch;
import java.util.List;
import java.util.Locale;

/**
 * A photo and what tells its light.
 *
 * @param photo the photo
 * @param light how its light falls
 * @param correction what corrects its colours
 * @param references where the references are
 */
record PhotoReader(
    Photo photo, Illumination light, PhotoCorrection correction, List<Region> references) {

  /** A region as one colour. */
  PhotoColour colour(Region region) {
    return correction.colour(light.sample(photo, region));
  }

  /** The shades that a region consists of. */
  List<RegionShade> shades(Region region, ShadeSearch search) {
    return search.in(photo, region, light, correction);
  }

  /** What colours are corrected by, in words. */
  String reference() {
    if (light.isEven()) {
      return correction.reference();
    }
    return String.format(
        Locale.ROOT,
        "%s, uneven light evened (plain areas scatter by %.1f %%)",
        correction.reference(),
        100 * light.scatter());
  }
}
