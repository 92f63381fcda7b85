package io.github.swatchwright.cli;

import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.photo.TwoColours;
import java.util.List;

/**
 * Colours of a photo in words.
 *
 * @param output where they go
 * @param areShades whether they are the shades of regions, each with a share
 */
record SampleText(Output output, boolean areShades) {
  void print(String reference, List<RegionColour> colours) {
    output.line("Reference: %s", reference);
    colours.forEach(this::print);
  }

  private void print(RegionColour read) {
    PhotoColour colour = read.colour();
    output.line("");
    read.name().ifPresent(output::line);
    output.line("%s%s", output.block(colour.lab()), Output.notation(colour.lab()));
    output.line("  region    %s", read.region().toText());
    if (areShades) {
      output.line("  share     %.0f %% of the region's area", 100 * read.share());
    }
    output.line("  pixels    %s", colour.shares().toText());
    output.line("  texture   ΔE00 %.1f holds 80 %% of the pixels", colour.pixelSpread());
    output.line("  error     ΔE00 %.1f holds the true colour in 80 %%", colour.intervalDeltaE00());
    if (!areShades && colour.several().isPresent()) {
      TwoColours two = colour.several().get();
      output.line(
          "  several   %s and %s, %.0f %% and %.0f %% of the pixels; a smaller region holds one of"
              + " them",
          Output.hex(two.most()),
          Output.hex(two.rest()),
          100 * two.share(),
          100 - 100 * two.share());
    }
    if (!colour.lightnessKnown()) {
      output.line("  lightness unknown: nothing in the photo tells how bright its light was");
    }
    if (colour.shares().isCrushed()) {
      output.line("  strength  at least this: the colour is stronger than the file can hold");
    }
  }
}
