package io.github.swatchwright.json;

import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.PixelShares;
import io.github.swatchwright.photo.Region;
import java.util.List;

/**
 * Colours from a photo as JSON: {@code colours}, each with {@code lab} and {@code srgb}, the {@code
 * share} of its region that is in the mean, the {@code spread} of the pixels in ΔE00, the {@code
 * interval} that holds the true colour, and which pixels were left out.
 */
public final class SampleJson {
  private SampleJson() {}

  /**
   * A region and its colour.
   *
   * @param region where it is
   * @param colour what it is
   */
  public record Entry(Region region, PhotoColour colour) {}

  /**
   * The result as a JSON object.
   *
   * @param photo what the photo is called
   * @param reference what the colours were corrected by, in words
   * @param entries the regions, in the order they were asked for
   */
  public static String toText(String photo, String reference, List<Entry> entries) {
    return JsonOutput.object(
        json -> {
          json.writeStringField("photo", OneLine.of(photo));
          json.writeStringField("reference", reference);
          json.writeArrayFieldStart("colours");
          for (Entry entry : entries) {
            PhotoColour colour = entry.colour();
            PixelShares shares = colour.shares();
            json.writeStartObject();
            json.writeStringField("region", entry.region().toText());
            ColourJson.writeFields(json, colour.lab());
            json.writeBooleanField("lightnessKnown", colour.lightnessKnown());
            Rounded.field(json, "share", shares.used());
            Rounded.field(json, "spread", colour.pixelSpread());
            json.writeObjectFieldStart("interval");
            Rounded.field(json, "deltaE00", colour.intervalDeltaE00());
            Rounded.field(json, "probability", Prediction.INTERVAL_PROBABILITY);
            json.writeEndObject();
            json.writeObjectFieldStart("leftOut");
            Rounded.field(json, "clipped", shares.clipped());
            Rounded.field(json, "nearBlack", shares.nearBlack());
            Rounded.field(json, "transparent", shares.transparent());
            Rounded.field(json, "stray", shares.stray());
            json.writeEndObject();
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }
}
