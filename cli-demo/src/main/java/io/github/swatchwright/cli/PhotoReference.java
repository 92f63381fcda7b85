package io.github.swatchwright.cli;

import io.github.swatchwright.photo.Correction;
import io.github.swatchwright.photo.GreyCorrection;
import io.github.swatchwright.photo.NeutralPatch;
import io.github.swatchwright.photo.NoReference;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** What in a photo tells its light: options of every command that takes colours from photos. */
final class PhotoReference {
  @Option(
      names = "--grey",
      paramLabel = "X,Y,W,H@Y%",
      description =
          "Where a grey card or white paper is in the photo, and how much of the light it reflects;"
              + " give it again for the steps of a grey scale.")
  List<String> greys = new ArrayList<>();

  /** What corrects the colours of a photo. */
  Correction correction(Photo photo) {
    if (greys.isEmpty()) {
      return new NoReference();
    }
    return GreyCorrection.of(greys.stream().map(text -> patch(text, photo)).toList());
  }

  private static NeutralPatch patch(String text, Photo photo) {
    int at = text.indexOf('@');
    if (at < 0 || !text.endsWith("%")) {
      throw new IllegalArgumentException(
          "--grey: '" + text + "' is not of the form x,y,w,h@18%, a region and what it reflects");
    }
    Region region = Region.parse(text.substring(0, at), photo.width(), photo.height());
    try {
      double luminance = Double.parseDouble(text.substring(at + 1, text.length() - 1));
      return new NeutralPatch(RegionSampler.sample(photo, region), luminance);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "--grey: '" + text.substring(at + 1) + "' is not a number of percent", e);
    }
  }
}
