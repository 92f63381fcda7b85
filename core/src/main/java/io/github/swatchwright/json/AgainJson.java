package io.github.swatchwright.json;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.spectrum.Illuminant;

/**
 * A mix that was found once, mixed again: its {@code drops} and {@code millilitres}, the {@code
 * predicted} colour with today's paints, and whether {@code shelfChanged} since.
 */
public final class AgainJson {
  private AgainJson() {}

  /**
   * The result as a JSON object.
   *
   * @param mix the mix, for the wanted volume
   * @param prediction its colour with today's paints
   * @param shelfChanged whether the shelf is another than it was then
   * @param light the light that it was computed for
   */
  public static String toText(
      Mix mix, Prediction prediction, boolean shelfChanged, Illuminant light) {
    return JsonOutput.object(
        json -> {
          json.writeStringField("light", light.name());
          json.writeBooleanField("shelfChanged", shelfChanged);
          json.writeArrayFieldStart("drops");
          for (Mix.Part part : mix.parts()) {
            json.writeStartObject();
            json.writeStringField("paint", part.paint().name());
            json.writeNumberField("drops", Math.round(part.drops()));
            json.writeEndObject();
          }
          json.writeEndArray();
          Rounded.field(json, "millilitres", mix.millilitres());
          ColourJson.write(json, prediction);
        });
  }
}
