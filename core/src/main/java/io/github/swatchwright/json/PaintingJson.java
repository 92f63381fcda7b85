package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.mix.PaintAmount;
import java.io.IOException;
import java.util.List;

/**
 * What the results of several commands say about painting, in the same fields wherever it stands:
 * coats, how a ladder's pot is filled, how much it takes and what to be careful of.
 */
final class PaintingJson {
  private PaintingJson() {}

  /** {@code "mix":"Dredger grey:1","coats":2,"thinner":1,"coverage":1} */
  static void writeCoat(JsonGenerator json, Coat coat) throws IOException {
    JsonOutput.text(json, "mix", coat.mix().toText());
    Rounded.field(json, "coats", coat.coats());
    Rounded.field(json, "thinner", coat.thinner());
    Rounded.field(json, "coverage", coat.coverage());
  }

  /** {@code "keep":0,"add":[{"paint":"Bright orange","drops":12}],"addLetDown":0} */
  static void writePour(JsonGenerator json, Rung rung) throws IOException {
    json.writeNumberField("keep", rung.keep());
    RecipeJson.writePaints(json, "add", rung.add());
    json.writeNumberField("addLetDown", rung.letDown());
  }

  /** {@code "millilitres":{"paint":4,"thinner":4}} */
  static void writeMillilitres(JsonGenerator json, PaintAmount amount) throws IOException {
    json.writeObjectFieldStart("millilitres");
    Rounded.field(json, "paint", amount.paintMillilitres());
    Rounded.field(json, "thinner", amount.thinnerMillilitres());
    json.writeEndObject();
  }

  /** {@code "cautions":[{"about":"flames","text":"…"}]} */
  static void writeCautions(JsonGenerator json, List<Caution> cautions) throws IOException {
    JsonOutput.objects(
        json,
        "cautions",
        cautions,
        caution -> {
          json.writeStringField("about", caution.word());
          json.writeStringField("text", caution.text());
        });
  }

  /** The same by their words alone: {@code "cautions":["flames"]} */
  static void writeCautionWords(JsonGenerator json, List<Caution> cautions) throws IOException {
    JsonOutput.words(json, "cautions", cautions.stream().map(Caution::word).toList());
  }
}
