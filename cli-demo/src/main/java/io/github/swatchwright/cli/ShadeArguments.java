package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.coat.Base;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.json.SampleJson;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Ends of a ladder on the command line: colours and mixes. A paint's name alone is that paint.
 *
 * @param shelf the paints
 * @param reference what tells the light of photos
 * @param output where to tell what must be said about a colour from a photo
 */
record ShadeArguments(Shelf shelf, PhotoReference reference, Output output) {

  /**
   * Shades, and the share of the area that each has in a photo.
   *
   * @param shades at least two
   * @param shares as many, or none
   */
  record Shades(List<Shade> shades, List<Double> shares) {}

  /** The two ends, or the colours of a file. */
  Shades shades(List<String> ends, @Nullable GivenFile file) {
    if (file == null) {
      if (ends.size() != 2) {
        throw new IllegalArgumentException(
            Words.count(ends.size(), "end") + " given, must be two, or a file with --colours");
      }
      return new Shades(ends.stream().map(this::shade).toList(), List.of());
    }
    if (!ends.isEmpty()) {
      throw new IllegalArgumentException("give two ends or --colours, not both");
    }
    List<SampleJson.Colour> colours = file.read("--colours", SampleJson::read);
    return new Shades(
        colours.stream().<Shade>map(colour -> new Shade.OfColour(swatch(colour))).toList(),
        colours.stream().map(SampleJson.Colour::share).toList());
  }

  private static Swatch swatch(SampleJson.Colour colour) {
    double lightness = Math.max(0, Math.min(100, colour.lab().l()));
    return new Swatch.OfLab(Lab.ofD65(lightness, colour.lab().a(), colour.lab().b()));
  }

  /** A colour. */
  Swatch colour(String text) {
    return ColourArgument.parse(text, shelf, reference, output).swatch();
  }

  /** What lies below. */
  Base base(String text) {
    return shade(text) instanceof Shade.OfMix mix
        ? new Base.OfMix(mix.mix())
        : new Base.OfSwatch(colour(text));
  }

  private Shade shade(String text) {
    String trimmed = text.trim();
    if (!ArgumentKind.of(trimmed, shelf).isName()) {
      return new Shade.OfColour(colour(trimmed));
    }
    try {
      return new Shade.OfMix(Mix.parse(trimmed, shelf));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          e.getMessage() + " (an end is a colour such as #RRGGBB or lab(L, a, b), or a mix)", e);
    }
  }
}
