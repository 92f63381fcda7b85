package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.sheet.FieldReading;
import io.github.swatchwright.sheet.SheetReading;
import java.io.IOException;
import java.util.List;

/** What photos of a sheet say as JSON, see {@link JsonResult#ofSheet}. */
final class SheetReadingJson {
  private SheetReadingJson() {}

  /** The pages as one JSON object. */
  static JsonResult of(List<SheetReading> pages) {
    return new JsonResult(
        json -> {
          JsonOutput.objects(
              json,
              "pages",
              pages,
              page -> {
                json.writeStringField("sheet", page.layout().page().sheet());
                json.writeNumberField("page", page.layout().page().page());
                json.writeNumberField("pages", page.layout().page().pages());
                json.writeStringField("reference", page.reference());
                ColourJson.write(json, "paper", page.paper());
                texts(json, page.doubts());
              });
          json.writeArrayFieldStart("fields");
          for (SheetReading page : pages) {
            for (FieldReading field : page.fields()) {
              write(json, field);
            }
          }
          json.writeEndArray();
        });
  }

  private static void write(JsonGenerator json, FieldReading field) throws IOException {
    json.writeStartObject();
    JsonOutput.text(json, field.field().isMix() ? "mix" : "paint", name(field));
    if (field.read().isPresent()) {
      FieldReading.Read read = field.read().get();
      ColourJson.writeFields(json, read.opaque().masstone());
      Rounded.field(json, "error", read.opaque().error());
      Rounded.field(json, "interval", read.opaque().interval());
      Rounded.field(json, "hiding", read.opaque().contrastRatio());
      ColourJson.write(json, "overBlack", read.overBlack());
      ColourJson.write(json, "overPaper", read.overPaper());
      ColourJson.write(json, "black", read.black());
      ColourJson.write(json, "paper", read.paper());
      Rounded.field(json, "readError", read.error());
      Rounded.field(json, "leftOut", field.leftOut());
    }
    texts(json, field.doubts());
    json.writeEndObject();
  }

  private static String name(FieldReading field) {
    String label = field.field().label();
    return field.field().isMix() ? label.substring(1) : label;
  }

  private static void texts(JsonGenerator json, List<String> texts) throws IOException {
    JsonOutput.words(json, "doubts", texts);
  }
}
