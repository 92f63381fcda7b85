package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.estimate.ShelfProblem;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.match.ShelfReach;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.spectrum.Illuminant;
import java.io.IOException;
import java.util.Optional;

/** A shelf looked through as JSON, see {@link JsonResult#of(ShelfReport, Optional, Illuminant)}. */
final class ShelfReportJson {
  private ShelfReportJson() {}

  /**
   * The report as JSON.
   *
   * @param report the report
   * @param light the light that it was made for
   */
  static JsonResult of(ShelfReport report, Illuminant light) {
    return of(report, Optional.empty(), light);
  }

  /**
   * The report and the shelf's reach as JSON.
   *
   * @param report the report
   * @param reach what the shelf can be mixed to, when that is known
   * @param light the light that both were made for
   */
  static JsonResult of(ShelfReport report, Optional<ShelfReach> reach, Illuminant light) {
    return new JsonResult(
        json -> {
          json.writeStringField("name", report.name());
          json.writeStringField("light", light.name());
          JsonOutput.list(json, "paints", report.paints(), entry -> write(json, entry));
          JsonOutput.words(
              json, "problems", report.problems().stream().map(ShelfProblem::text).toList());
          if (reach.isPresent()) {
            write(json, reach.get());
          }
        });
  }

  private static void write(JsonGenerator json, ShelfReach reach) throws IOException {
    Rounded.field(json, "reach", reach.share());
    JsonOutput.objects(
        json,
        "gaps",
        reach.gaps(),
        gap -> {
          json.writeStringField("name", gap.name());
          Rounded.field(json, "share", gap.share());
          ColourJson.write(json, "furthest", gap.furthest().lab());
          Rounded.field(json, "deltaE00", gap.furthest().nearestDeltaE00());
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
