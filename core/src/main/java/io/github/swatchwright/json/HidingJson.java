package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.paint.Hiding;
import java.io.IOException;
import java.util.List;

/**
 * A hiding figure: one of {@code {"coats":n}}, {@code {"contrastRatio":r}}, {@code
 * {"scattering":s}} and {@code {"word":"semi-opaque"}}.
 */
final class HidingJson {
  private HidingJson() {}

  static Hiding read(JsonElement element) {
    JsonElement figure =
        element
            .fields("coats", "contrastRatio", "scattering", "word")
            .only("coats, contrastRatio, scattering or word");
    String form = element.members().fields().keySet().iterator().next();
    return element.make(
        () ->
            switch (form) {
              case "coats" -> new Hiding.Coats(figure.number());
              case "contrastRatio" -> new Hiding.ContrastRatio(figure.number());
              case "scattering" -> new Hiding.Scattering(figure.number());
              default -> figure.oneOf(List.of(Hiding.Word.values()), Hiding.Word::word);
            });
  }

  static void write(JsonGenerator json, Hiding hiding) throws IOException {
    json.writeObjectFieldStart("hiding");
    if (hiding instanceof Hiding.Coats coats) {
      json.writeNumberField("coats", coats.coats());
    } else if (hiding instanceof Hiding.ContrastRatio contrast) {
      json.writeNumberField("contrastRatio", contrast.ratio());
    } else if (hiding instanceof Hiding.Scattering scattering) {
      json.writeNumberField("scattering", scattering.scattering());
    } else if (hiding instanceof Hiding.Word word) {
      json.writeStringField("word", word.word());
    }
    json.writeEndObject();
  }
}
