package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.LadderWarning;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.spectrum.Illuminant;
import java.io.IOException;

/**
 * A ladder as JSON: the {@code rungs}, each with the whole drops to {@code add} to what is left of
 * the pot and the {@code drops} that are in the pot then, which need not be whole; the {@code look}
 * of the area from a distance; and {@code warnings}.
 *
 * <pre>{@code
 * {"light":"D65","use":0.4,"evenStep":9.6,"unevenness":0.02,
 *  "rungs":[{"add":[{"paint":"Bright orange","drops":12}],"drops":[{"paint":"Bright orange","drops":12}],
 *            "predicted":{"lab":[…],"srgb":"#C8642A"},"interval":{"deltaE00":2.4,"probability":0.8},
 *            "step":9.6,"coverage":0.4,"visibleShare":0.3,"oneDrop":1.2,
 *            "potMillilitres":0.54,"millilitres":{"paint":0.16,"thinner":0}}],
 *  "baseShare":0,"look":{"lab":[…],"srgb":"#A5562B"},
 *  "warnings":[{"kind":"end-out-of-reach","rung":4,"text":"…"}]}
 * }</pre>
 *
 * <p>A wash has no {@code add}, and says its {@code coats} and {@code thinner} to one of paint.
 */
public final class LadderJson {
  private LadderJson() {}

  /**
   * The ladder as a JSON object.
   *
   * @param ladder what was planned
   * @param light the light that it was planned for
   */
  public static String toText(Ladder ladder, Illuminant light) {
    return JsonOutput.object(
        json -> {
          json.writeStringField("light", light.name());
          json.writeNumberField("use", ladder.pot().use());
          Rounded.field(json, "evenStep", ladder.evenStep());
          Rounded.field(json, "unevenness", ladder.unevenness());
          ColourJson.write(json, "from", ladder.from());
          ColourJson.write(json, "to", ladder.to());
          json.writeArrayFieldStart("rungs");
          for (Rung rung : ladder.rungs()) {
            write(json, rung);
          }
          json.writeEndArray();
          Rounded.field(json, "baseShare", ladder.baseShare());
          if (ladder.base().isPresent()) {
            ColourJson.write(json, "base", ladder.base().get());
          }
          ColourJson.write(json, "look", ladder.look());
          if (ladder.wantedLook().isPresent()) {
            Lab wanted = ladder.wantedLook().get();
            ColourJson.write(json, "wantedLook", wanted);
            Rounded.field(json, "lookDeltaE00", Ciede2000.deltaE(wanted, ladder.look()));
          }
          json.writeArrayFieldStart("warnings");
          for (LadderWarning warning : ladder.warnings()) {
            json.writeStartObject();
            json.writeStringField("kind", warning.kind().word());
            json.writeNumberField("rung", warning.rung());
            json.writeStringField("text", warning.text());
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private static void write(JsonGenerator json, Rung rung) throws IOException {
    json.writeStartObject();
    json.writeArrayFieldStart("add");
    for (Recipe.Drops some : rung.add()) {
      json.writeStartObject();
      json.writeStringField("paint", some.paint().name());
      json.writeNumberField("drops", some.count());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("drops");
    for (Mix.Part part : rung.pot().parts()) {
      json.writeStartObject();
      json.writeStringField("paint", part.paint().name());
      Rounded.field(json, "drops", part.drops());
      json.writeEndObject();
    }
    json.writeEndArray();
    if (rung.wash().isPresent()) {
      Rounded.field(json, "coats", rung.wash().get().coats());
      Rounded.field(json, "thinner", rung.wash().get().thinner());
    }
    ColourJson.write(json, rung.prediction());
    if (rung.step().isPresent()) {
      Rounded.field(json, "step", rung.step().getAsDouble());
    }
    Rounded.field(json, "coverage", rung.coverage());
    Rounded.field(json, "visibleShare", rung.visibleShare());
    Rounded.field(json, "oneDrop", rung.oneDrop());
    Rounded.field(json, "potMillilitres", rung.potMillilitres());
    json.writeObjectFieldStart("millilitres");
    Rounded.field(json, "paint", rung.amount().paintMillilitres());
    Rounded.field(json, "thinner", rung.amount().thinnerMillilitres());
    json.writeEndObject();
    json.writeEndObject();
  }
}
