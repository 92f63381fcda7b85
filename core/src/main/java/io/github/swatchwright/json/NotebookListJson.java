package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** What a notebook holds, as JSON: its {@code entries}, numbered from 1, and what is set aside. */
final class NotebookListJson {
  private NotebookListJson() {}

  /** All entries, without what was found. */
  static JsonResult of(Notebook.Contents contents) {
    return new JsonResult(
        json -> {
          json.writeArrayFieldStart("entries");
          int number = 1;
          for (NotebookEntry entry : contents.entries()) {
            json.writeStartObject();
            write(json, number++, entry);
            json.writeEndObject();
          }
          json.writeEndArray();
          JsonOutput.objects(
              json,
              "setAside",
              contents.setAside(),
              line -> {
                json.writeNumberField("line", line.line());
                json.writeStringField("reason", line.reason());
              });
        });
  }

  /** One entry with all that was found. */
  static JsonResult of(int number, NotebookEntry entry) {
    return new JsonResult(
        json -> {
          write(json, number, entry);
          json.writeFieldName("found");
          JsonDocument.parse(entry.found(), "found").content().write(json);
        });
  }

  private static void write(JsonGenerator json, int number, NotebookEntry entry)
      throws IOException {
    json.writeNumberField("number", number);
    json.writeStringField("date", entry.date().toString());
    json.writeStringField("library", entry.library());
    json.writeObjectFieldStart("shelf");
    json.writeStringField("name", entry.shelfName());
    json.writeStringField("sha256", entry.shelfHash());
    json.writeEndObject();
    JsonOutput.words(json, "asked", entry.asked());
  }
}
