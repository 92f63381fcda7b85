package io.github.swatchwright.json;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.ColourDifference;
import io.github.swatchwright.spectrum.Illuminant;

/**
 * The difference of two colours as JSON, see {@link JsonResult#of(Lab, Lab, ColourDifference,
 * Illuminant)}.
 */
final class ComparisonJson {
  private ComparisonJson() {}

  /**
   * The result as JSON.
   *
   * @param reference the colour that is compared with
   * @param sample the colour that is compared
   * @param difference sample minus reference
   * @param light the light that both were computed for
   */
  static JsonResult of(Lab reference, Lab sample, ColourDifference difference, Illuminant light) {
    return new JsonResult(
        json -> {
          json.writeStringField("light", light.name());
          ColourJson.write(json, "reference", reference);
          ColourJson.write(json, "sample", sample);
          Rounded.field(json, "deltaE00", difference.deltaE());
          Rounded.field(json, "deltaL", difference.deltaL());
          Rounded.field(json, "deltaC", difference.deltaC());
          Rounded.field(json, "deltaH", difference.deltaH());
          json.writeStringField("verdict", difference.verdict().word());
        });
  }
}
