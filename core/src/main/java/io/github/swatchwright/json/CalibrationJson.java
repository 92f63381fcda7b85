package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.estimate.BatchStrength;
import io.github.swatchwright.estimate.DayStrength;
import io.github.swatchwright.optics.Saunderson;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What test cards did for a shelf as JSON, see {@link JsonResult#of(Calibration)}. */
final class CalibrationJson {
  private CalibrationJson() {}

  /** The result as JSON. */
  static JsonResult of(Calibration calibration) {
    return of(calibration, Optional.empty());
  }

  /** The result as a JSON object, with the cards to paint {@code next}. */
  static JsonResult of(Calibration calibration, NextCards next) {
    return of(calibration, Optional.of(next));
  }

  private static JsonResult of(Calibration calibration, Optional<NextCards> next) {
    return new JsonResult(
        json -> {
          JsonOutput.objects(
              json,
              "paints",
              calibration.paints(),
              paint -> {
                json.writeStringField("name", paint.name());
                json.writeNumberField("cards", paint.cards());
                Rounded.field(json, "before", paint.before());
                Rounded.field(json, "after", paint.after());
              });
          writeCards(json, "contradictions", calibration.contradictions());
          writeCards(json, "unexpected", calibration.unexpected());
          if (!calibration.batches().isEmpty()) {
            writeBatches(json, calibration.batches());
          }
          writeDays(json, calibration.days());
          Rounded.field(json, "widthScale", calibration.widthScale());
          if (calibration.shelf().surface().isPresent()) {
            Saunderson surface = calibration.shelf().surface().get();
            json.writeObjectFieldStart("surface");
            Rounded.field(json, "k1", surface.k1());
            Rounded.field(json, "k2", surface.k2());
            json.writeEndObject();
          }
          json.writeObjectFieldStart("residual");
          Rounded.field(json, "before", calibration.before());
          Rounded.field(json, "after", calibration.after());
          json.writeEndObject();
          if (next.isPresent()) {
            NextCardsJson.write(json, next.get());
          }
        });
  }

  private static void writeCards(
      JsonGenerator json, String name, List<Calibration.DifferingCard> cards) throws IOException {
    JsonOutput.objects(
        json,
        name,
        cards,
        card -> {
          json.writeNumberField("card", card.card());
          ColourJson.write(json, "measured", card.measured());
          ColourJson.write(json, "expected", card.expected());
          Rounded.field(json, "deltaE00", card.deltaE00());
        });
  }

  private static void writeDays(JsonGenerator json, List<DayStrength> days) throws IOException {
    JsonOutput.objects(
        json,
        "strengths",
        days,
        found -> {
          json.writeStringField("paint", found.paint());
          if (found.since().isPresent()) {
            json.writeStringField("since", found.since().get().toString());
          }
          if (found.latest().isPresent()) {
            json.writeStringField("painted", found.latest().get().toString());
          }
          Rounded.field(json, "strength", found.strength());
          Rounded.field(json, "sd", found.sd());
        });
  }

  private static void writeBatches(JsonGenerator json, List<BatchStrength> batches)
      throws IOException {
    JsonOutput.objects(
        json,
        "batches",
        batches,
        found -> {
          json.writeStringField("paint", found.paint());
          json.writeStringField("batch", found.batch());
          Rounded.field(json, "strength", found.strength());
          Rounded.field(json, "sd", found.sd());
        });
  }
}
