package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.paint.FittedOptics;
import io.github.swatchwright.spectrum.Bands;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What test cards have taught about a paint:
 *
 * <pre>{@code
 * {"from":380,"step":10,"z":[36 numbers],"u":[36 numbers],"cards":6,"residual":0.4,"width":0.9,
 *  "days":[{"painted":"2026-03-01","logStrength":0.14,"sd":0.17},{"painted":"2026-11-20",…}],
 *  "rows":[{"row":12,"slopes":[72 numbers, and one for each day]}]}
 * }</pre>
 *
 * <p>{@code z} and {@code u} are the logit of internal masstone reflectance and ln S. {@code rows}
 * is what the covariance needs, see {@link FittedOptics}: single-precision numbers, of which paints
 * that share a card share the row's number. {@code residual} is the mean ΔE00 of the paint's cards,
 * and {@code width} how wide errors turned out to be, as a share of what is usual. {@code days} are
 * the days on which cards were painted with it, see {@link FittedOptics.Day}; left out when no card
 * said its day.
 */
final class OpticsJson {
  private OpticsJson() {}

  static FittedOptics read(JsonElement element) {
    JsonFields fields =
        element.fields("from", "step", "z", "u", "cards", "residual", "width", "days", "rows");
    fields.required("from").number(Bands.FIRST_NM, Bands.FIRST_NM);
    fields.required("step").number(Bands.STEP_NM, Bands.STEP_NM);
    double[] z = numbers(fields.required("z"));
    double[] u = numbers(fields.required("u"));
    int cards = fields.required("cards").wholeNumber(0, 1_000_000);
    double residual = fields.required("residual").number();
    double width = fields.optional("width").map(JsonElement::number).orElse(1.0);
    List<FittedOptics.Day> days =
        fields
            .optional("days")
            .map(given -> given.items(1, FittedOptics.MOST_DAYS).stream().map(OpticsJson::day))
            .orElse(Stream.of())
            .toList();
    List<FittedOptics.Row> rows =
        fields.required("rows").items(0, FittedOptics.LARGEST_ROW + 1).stream()
            .map(row -> row(row, days.size()))
            .toList();
    return element.make(() -> new FittedOptics(z, u, cards, residual, width, days, rows));
  }

  private static FittedOptics.Day day(JsonElement element) {
    JsonFields fields = element.fields("painted", "logStrength", "sd");
    Optional<LocalDate> painted = fields.optional("painted").map(JsonElement::date);
    double logStrength = fields.required("logStrength").number();
    double sd = fields.required("sd").number();
    return element.make(() -> new FittedOptics.Day(painted, logStrength, sd));
  }

  private static double[] numbers(JsonElement element) {
    return element.items(Bands.COUNT, Bands.COUNT).stream()
        .mapToDouble(JsonElement::number)
        .toArray();
  }

  private static FittedOptics.Row row(JsonElement element, int days) {
    JsonFields fields = element.fields("row", "slopes");
    int number = fields.required("row").wholeNumber(0, FittedOptics.LARGEST_ROW);
    int count = 2 * Bands.COUNT + days;
    List<JsonElement> items = fields.required("slopes").items(count, count);
    float[] slopes = new float[items.size()];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = (float) items.get(i).number(-Float.MAX_VALUE, Float.MAX_VALUE);
    }
    return new FittedOptics.Row(number, slopes);
  }

  static void write(JsonGenerator json, FittedOptics optics) throws IOException {
    json.writeObjectFieldStart("optics");
    json.writeNumberField("from", Bands.FIRST_NM);
    json.writeNumberField("step", Bands.STEP_NM);
    json.writeFieldName("z");
    json.writeArray(optics.z(), 0, Bands.COUNT);
    json.writeFieldName("u");
    json.writeArray(optics.u(), 0, Bands.COUNT);
    json.writeNumberField("cards", optics.cards());
    json.writeNumberField("residual", optics.residualDeltaE00());
    json.writeNumberField("width", optics.widthScale());
    if (!optics.days().isEmpty()) {
      writeDays(json, optics.days());
    }
    JsonOutput.objects(
        json,
        "rows",
        optics.rows(),
        row -> {
          json.writeNumberField("row", row.number());
          json.writeArrayFieldStart("slopes");
          for (float slope : row.slopes()) {
            json.writeNumber(slope);
          }
          json.writeEndArray();
        });
    json.writeEndObject();
  }

  private static void writeDays(JsonGenerator json, List<FittedOptics.Day> days)
      throws IOException {
    JsonOutput.objects(
        json,
        "days",
        days,
        day -> {
          if (day.painted().isPresent()) {
            json.writeStringField("painted", day.painted().get().toString());
          }
          json.writeNumberField("logStrength", day.logStrength());
          json.writeNumberField("sd", day.sd());
        });
  }
}
