package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;

/** One line of a notebook. {@code found} is kept as it was, without its line breaks. */
final class NotebookJson {
  private static final DocumentHead HEAD = new DocumentHead("swatchwright-notebook", 1);

  private NotebookJson() {}

  static String toLine(NotebookEntry entry) {
    JsonElement found = JsonDocument.parse(entry.found(), "found");
    found.members();
    return JsonOutput.line(json -> write(json, entry, found));
  }

  private static void write(JsonGenerator json, NotebookEntry entry, JsonElement found)
      throws IOException {
    HEAD.write(json);
    json.writeStringField("date", entry.date().toString());
    JsonOutput.text(json, "library", entry.library());
    json.writeObjectFieldStart("shelf");
    JsonOutput.text(json, "name", entry.shelfName());
    JsonOutput.text(json, "sha256", entry.shelfHash());
    json.writeEndObject();
    json.writeArrayFieldStart("asked");
    for (String argument : entry.asked()) {
      json.writeString(JsonOutput.item("asked", argument));
    }
    json.writeEndArray();
    json.writeFieldName("found");
    found.content().write(json);
  }

  static NotebookEntry read(JsonElement line) {
    JsonFields fields =
        line.fields("format", "version", "date", "library", "shelf", "asked", "found");
    HEAD.check(fields);
    JsonFields shelf = fields.required("shelf").fields("name", "sha256");
    JsonElement found = fields.required("found");
    found.members();
    return line.make(
        () ->
            new NotebookEntry(
                date(fields.required("date")),
                fields.required("library").text(),
                shelf.required("name").text(),
                shelf.required("sha256").text(),
                fields.required("asked").items(1, NotebookEntry.MOST_ARGUMENTS).stream()
                    .map(JsonElement::text)
                    .toList(),
                JsonOutput.object(found.members())));
  }

  private static Instant date(JsonElement element) {
    try {
      return Instant.parse(element.text());
    } catch (DateTimeException e) {
      throw element.refuse("is " + OneLine.quote(element.text()) + ", must be a date (ISO 8601)");
    }
  }
}
