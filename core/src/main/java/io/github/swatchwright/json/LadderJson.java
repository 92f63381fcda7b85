package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.coat.Wait;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.paint.Shelf;
import java.io.IOException;
import java.util.List;

/**
 * A ladder as JSON: the {@code rungs}, each with the drops to {@code keep} of the pot before, the
 * whole drops to {@code add} to them and the {@code drops} that are in the pot then, which need not
 * be whole; the {@code look} of the area from a distance; and {@code warnings}.
 *
 * <pre>{@code
 * {"light":"D65","separate":false,"use":0.9,"evenStep":9.6,"unevenness":0.12,"allDrops":24,
 *  "letDown":{"drops":[{"paint":"Lamp black","drops":1},{"paint":"Burnt umber","drops":4}]},
 *  "rungs":[{"keep":0,"add":[{"paint":"Bright orange","drops":12}],"addLetDown":0,
 *            "drops":[{"paint":"Bright orange","drops":12}],"setAside":3,
 *            "predicted":{"lab":[…],"srgb":"#C8642A"},"interval":{"deltaE00":2.4,"probability":0.8},
 *            "thinnedWith":"acrylic thinner","dries":"4 hours when sprayed, 6 when brushed",
 *            "cautions":["acrylic-mist"],"step":9.6,"coverage":0.4,"visibleShare":0.3,"oneDrop":1.2,
 *            "potMillilitres":0.54,"millilitres":{"paint":0.16,"thinner":0}}],
 *  "baseShare":0,"look":{"lab":[…],"srgb":"#A5562B"},
 *  "warnings":[{"kind":"end-out-of-reach","rung":4,"text":"…"}]}
 * }</pre>
 *
 * <p>{@code keep} is 0 for the first rung and for a recipe of its own; {@code addLetDown} counts
 * drops of the {@code letDown}, a small pot of its own, which is left out when no rung takes of it;
 * {@code dries} is the wait before anything goes over it, and {@code cautions} are those that no
 * rung before names; {@code setAside} are drops that neither the pass nor the next pot takes. A
 * wash has no {@code add}, and says its {@code coats} and {@code thinner} to one of paint.
 */
final class LadderJson {
  private LadderJson() {}

  /**
   * The ladder as JSON.
   *
   * @param ladder what was planned
   */
  static JsonResult of(Ladder ladder) {
    return new JsonResult(
        json -> {
          json.writeStringField("light", ladder.light().name());
          json.writeBooleanField("separate", ladder.pot().separate());
          json.writeNumberField("use", ladder.pot().use());
          Rounded.field(json, "evenStep", ladder.evenStep());
          Rounded.field(json, "unevenness", ladder.unevenness());
          json.writeNumberField("allDrops", ladder.drops());
          if (ladder.letDown().isPresent()) {
            json.writeObjectFieldStart("letDown");
            RecipeJson.writePaints(json, "drops", ladder.letDown().get().drops());
            json.writeEndObject();
          }
          ColourJson.write(json, "from", ladder.from());
          ColourJson.write(json, "to", ladder.to());
          json.writeArrayFieldStart("rungs");
          for (int i = 0; i < ladder.rungs().size(); i++) {
            write(json, ladder.rungs().get(i), ladder.cautionsOfRungs().get(i));
          }
          json.writeEndArray();
          writeLook(json, ladder);
          writeWarnings(json, ladder);
        });
  }

  /** What lies below, and what the whole area looks like from a distance. */
  private static void writeLook(JsonGenerator json, Ladder ladder) throws IOException {
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
  }

  private static void writeWarnings(JsonGenerator json, Ladder ladder) throws IOException {
    JsonOutput.objects(
        json,
        "warnings",
        ladder.warnings(),
        warning -> {
          json.writeStringField("kind", warning.kind().word());
          json.writeNumberField("rung", warning.rung());
          json.writeStringField("text", warning.text());
        });
  }

  private static void write(JsonGenerator json, Rung rung, List<Caution> cautions)
      throws IOException {
    json.writeStartObject();
    PaintingJson.writePour(json, rung);
    JsonOutput.objects(
        json,
        "drops",
        rung.pot().parts(),
        part -> {
          json.writeStringField("paint", part.paint().name());
          Rounded.field(json, "drops", part.drops());
        });
    if (rung.wash().isPresent()) {
      Rounded.field(json, "coats", rung.wash().get().coats());
      Rounded.field(json, "thinner", rung.wash().get().thinner());
    }
    ColourJson.write(json, rung.prediction());
    if (rung.step().isPresent()) {
      Rounded.field(json, "step", rung.step().getAsDouble());
    }
    JsonOutput.text(json, "thinnedWith", Thinner.of(rung.pot()));
    JsonOutput.text(json, "dries", Wait.after(rung.coat().medium()).words());
    PaintingJson.writeCautionWords(json, cautions);
    Rounded.field(json, "coverage", rung.coverage());
    Rounded.field(json, "visibleShare", rung.visibleShare());
    Rounded.field(json, "oneDrop", rung.oneDrop());
    Rounded.field(json, "potMillilitres", rung.potMillilitres());
    Rounded.field(json, "setAside", rung.spare());
    PaintingJson.writeMillilitres(json, rung.amount());
    json.writeEndObject();
  }

  /**
   * Reads the rungs of a ladder from a text.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @param shelf the shelf whose paints the rungs name
   * @throws JsonInputException when the text isn't a ladder, or names a paint that isn't there
   */
  static List<ReadRung> parseRungs(String text, String source, Shelf shelf) {
    return RungReader.rungs(JsonDocument.parse(text, source), shelf);
  }
}
