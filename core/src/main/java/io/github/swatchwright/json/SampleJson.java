package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.PixelShares;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.photo.TwoColours;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Colours from a photo as JSON: {@code colours}, each with {@code lab} and {@code srgb}, its {@code
 * share} of the region, the {@code spread} of the pixels in ΔE00, the {@code interval} that holds
 * the true colour, and which pixels were left out; {@code name} where it has one, and {@code
 * several} where the region holds more than one colour. What was written can be read back; a file
 * by hand needs {@code {"colours":[{"lab":[L,a,b]}]}} at least, or {@code srgb} instead.
 */
public final class SampleJson {
  private static final int MOST_COLOURS = 1000;

  private SampleJson() {}

  /**
   * A colour as it was read back.
   *
   * @param lab relative to D65
   * @param share of its region, 0 to 1
   * @param spread the ΔE00 that holds 80 % of its pixels, 0 when not stated
   * @param intervalDeltaE00 the ΔE00 that holds the true colour in 80 %
   * @param lightnessKnown false when nothing in the photo shows how bright its light was
   */
  public record Colour(
      Lab lab,
      double share,
      double spread,
      OptionalDouble intervalDeltaE00,
      boolean lightnessKnown) {}

  /**
   * Reads colours from a file, which messages name by its path.
   *
   * @throws JsonInputException when the file doesn't hold a sample
   * @throws IOException when it can't be read
   */
  public static List<Colour> read(Path file) throws IOException {
    return colours(JsonDocument.read(file));
  }

  /**
   * Reads colours from a text.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @throws JsonInputException when the text doesn't hold a sample
   */
  public static List<Colour> parse(String text, String source) {
    return colours(JsonDocument.parse(text, source));
  }

  private static List<Colour> colours(JsonElement root) {
    return root
        .fields("photo", "reference", "colours")
        .required("colours")
        .items(1, MOST_COLOURS)
        .stream()
        .map(SampleJson::colour)
        .toList();
  }

  private static Colour colour(JsonElement element) {
    JsonFields fields =
        element.fields(
            "name",
            "region",
            "swatchError",
            "several",
            "lab",
            "srgb",
            "displayable",
            "lightnessKnown",
            "share",
            "spread",
            "interval",
            "leftOut");
    return new Colour(
        lab(fields),
        fields.optional("share").map(share -> share.number(0, 1)).orElse(1.0),
        fields.optional("spread").map(spread -> spread.number(0, 1000)).orElse(0.0),
        fields
            .optional("interval")
            .map(interval -> interval.fields("deltaE00", "probability").required("deltaE00"))
            .map(radius -> OptionalDouble.of(radius.number(0, 1000)))
            .orElse(OptionalDouble.empty()),
        fields.optional("lightnessKnown").map(JsonElement::truth).orElse(true));
  }

  private static Lab lab(JsonFields fields) {
    if (fields.optional("lab").isEmpty()) {
      JsonElement srgb = fields.required("srgb");
      return srgb.make(() -> Srgb.parseHex(srgb.text())).toLab();
    }
    List<JsonElement> lab = fields.required("lab").items(3, 3);
    double limit = Lab.LARGEST_PARSED_AB;
    return Lab.ofD65(
        lab.get(0).number(-5, 150),
        lab.get(1).number(-limit, limit),
        lab.get(2).number(-limit, limit));
  }

  /**
   * The result as JSON.
   *
   * @param photo what the photo is called
   * @param reference what the colours were corrected by, in words
   * @param colours the colours, in the order they were asked for
   */
  static JsonResult of(String photo, String reference, List<RegionColour> colours) {
    return new JsonResult(
        json -> {
          json.writeStringField("photo", OneLine.of(photo));
          json.writeStringField("reference", reference);
          JsonOutput.list(json, "colours", colours, read -> write(json, read));
        });
  }

  private static void write(JsonGenerator json, RegionColour read) throws IOException {
    PhotoColour colour = read.colour();
    PixelShares shares = colour.shares();
    json.writeStartObject();
    if (read.name().isPresent()) {
      json.writeStringField("name", read.name().get());
    }
    json.writeStringField("region", read.region().toText());
    ColourJson.writeFields(json, colour.lab());
    json.writeBooleanField("lightnessKnown", colour.lightnessKnown());
    Rounded.field(json, "share", read.share());
    Rounded.field(json, "spread", colour.pixelSpread());
    Rounded.field(json, "swatchError", colour.error());
    json.writeObjectFieldStart("interval");
    Rounded.field(json, "deltaE00", colour.intervalDeltaE00());
    Rounded.field(json, "probability", Prediction.INTERVAL_PROBABILITY);
    json.writeEndObject();
    if (colour.several().isPresent()) {
      writeSeveral(json, colour.several().get());
    }
    json.writeObjectFieldStart("leftOut");
    Rounded.field(json, "clipped", shares.clipped());
    Rounded.field(json, "nearBlack", shares.nearBlack());
    Rounded.field(json, "transparent", shares.transparent());
    Rounded.field(json, "stray", shares.stray());
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void writeSeveral(JsonGenerator json, TwoColours several) throws IOException {
    json.writeArrayFieldStart("several");
    writeOne(json, several.most(), several.share());
    writeOne(json, several.rest(), 1 - several.share());
    json.writeEndArray();
  }

  private static void writeOne(JsonGenerator json, Lab lab, double share) throws IOException {
    json.writeStartObject();
    ColourJson.writeFields(json, lab);
    Rounded.field(json, "share", share);
    json.writeEndObject();
  }
}
