package io.github.swatchwright.cli;

import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.json.SampleJson;
import io.github.swatchwright.photo.Correction;
import io.github.swatchwright.photo.GreyCorrection;
import io.github.swatchwright.photo.NeutralPatch;
import io.github.swatchwright.photo.NoReference;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSampler;
import io.github.swatchwright.spectrum.Illuminant;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads colours from a photo. */
@CommandLine.Command(
    name = "sample",
    description = "Reads the colours of regions of a photo, as they are under daylight.",
    footer = {
      "",
      "A region is x,y,w,h in pixels of the upright picture, or in percent: 10%%,20%%,5%%,5%%.",
      "",
      "Example:",
      "  swatchwright sample hull.jpg --region 40%%,40%%,10%%,10%% --grey 120,80,60,60@18%%"
    })
final class SampleCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Parameters(index = "0", paramLabel = "PHOTO", description = "A JPEG, PNG, WebP or TIFF file.")
  String file = "";

  @Option(
      names = "--region",
      paramLabel = "X,Y,W,H",
      description =
          "Where to read a colour; give it again for more. Without it, the whole picture.")
  List<String> regions = new ArrayList<>();

  @Option(
      names = "--grey",
      paramLabel = "X,Y,W,H@Y%",
      description = "Where a grey card or white paper is, and how much of the light it reflects.")
  List<String> greys = new ArrayList<>();

  SampleCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    if (!shared.light().equals(Illuminant.D65)) {
      throw new IllegalArgumentException(
          "--light is " + shared.light() + ", must be D65: a photo tells no other light's colours");
    }
    Photo photo = PhotoFile.open(Path.of(file));
    Correction correction = correction(photo);
    List<SampleJson.Entry> entries = new ArrayList<>();
    for (Region region : regions(photo)) {
      PhotoColour colour = correction.colour(RegionSampler.sample(photo, region));
      entries.add(new SampleJson.Entry(region, colour));
    }
    shared.give(
        output,
        () -> SampleJson.toText(file, correction.reference(), entries),
        () -> {
          output.line("Reference: %s", correction.reference());
          entries.forEach(this::print);
        });
  }

  private List<Region> regions(Photo photo) {
    if (regions.isEmpty()) {
      return List.of(new Region(0, 0, photo.width(), photo.height()));
    }
    return regions.stream().map(text -> Region.parse(text, photo.width(), photo.height())).toList();
  }

  private Correction correction(Photo photo) {
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

  private void print(SampleJson.Entry entry) {
    PhotoColour colour = entry.colour();
    output.line("");
    output.line("%s%s", output.block(colour.lab()), Output.notation(colour.lab()));
    output.line("  region    %s", entry.region().toText());
    output.line("  pixels    %s", colour.shares().toText());
    output.line("  texture   ΔE00 %.1f holds 80 %% of the pixels", colour.pixelSpread());
    output.line("  error     ΔE00 %.1f holds the true colour in 80 %%", colour.intervalDeltaE00());
    if (!colour.lightnessKnown()) {
      output.line("  lightness unknown: nothing in the photo tells how bright its light was");
    }
    if (colour.shares().isCrushed()) {
      output.line("  strength  at least this: the colour is stronger than the file can hold");
    }
  }
}
