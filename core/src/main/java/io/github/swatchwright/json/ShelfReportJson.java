package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.ShelfReport;
import io.github.swatchwright.spectrum.Illuminant;
import java.io.IOException;

/** A shelf looked through, as JSON: its {@code paints} and the {@code problems} with them. */
public final class ShelfReportJson {
  private ShelfReportJson() {}

  /**
   * The report as a JSON object.
   *
   * @param report the report
   * @param light the light that it was made for
   */
  public static String toText(ShelfReport report, Illuminant light) {
    return JsonOutput.object(
        json -> {
          json.writeStringField("name", report.name());
          json.writeStringField("light", light.name());
          json.writeArrayFieldStart("paints");
          for (ShelfReport.Entry entry : report.paints()) {
            write(json, entry);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("problems");
          for (String problem : report.problems()) {
            json.writeString(problem);
          }
          json.writeEndArray();
        });
  }

  private static void write(JsonGenerator json, ShelfReport.Entry entry) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", entry.paint().name());
    json.writeStringField("medium", entry.paint().medium().word());
    json.writeStringField("finish", entry.paint().finish().word());
    if (entry.masstone().isPresent()) {
      ColourJson.write(json, "masstone", entry.masstone().get());
    }
    if (entry.paint().hiding().isPresent()) {
      Hiding hiding = entry.paint().hiding().get();
      HidingJson.write(json, hiding);
    }
    if (entry.coatsToHide().isPresent()) {
      Rounded.field(json, "coatsToHide", entry.coatsToHide().getAsDouble());
    }
    json.writeEndObject();
  }
}
