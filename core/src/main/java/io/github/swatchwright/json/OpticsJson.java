package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.paint.FittedOptics;
import io.github.swatchwright.spectrum.Bands;
import java.io.IOException;
import java.util.List;

/**
 * What test cards have taught about a paint:
 *
 * <pre>{@code
 * {"from":380,"step":10,"z":[36 numbers],"u":[36 numbers],"cards":6,"residual":0.4,
 *  "rows":[{"row":12,"slopes":[72 numbers]}]}
 * }</pre>
 *
 * <p>{@code z} and {@code u} are the logit of internal masstone reflectance and ln S. {@code rows}
 * is what the covariance needs, see {@link FittedOptics}: single-precision numbers, of which paints
 * that share a card share the row's number. {@code residual} is the mean ΔE00 of the paint's cards.
 */
final class OpticsJson {
  private OpticsJson() {}

  static FittedOptics read(JsonElement element) {
    JsonFields fields = element.fields("from", "step", "z", "u", "cards", "residual", "rows");
    fields.required("from").number(Bands.FIRST_NM, Bands.FIRST_NM);
    fields.required("step").number(Bands.STEP_NM, Bands.STEP_NM);
    double[] z = numbers(fields.required("z"));
    double[] u = numbers(fields.required("u"));
    int cards = fields.required("cards").wholeNumber(0, 1_000_000);
    double residual = fields.required("residual").number();
    List<FittedOptics.Row> rows =
        fields.required("rows").items(0, FittedOptics.LARGEST_ROW + 1).stream()
            .map(OpticsJson::row)
            .toList();
    return element.make(() -> new FittedOptics(z, u, cards, residual, rows));
  }

  private static double[] numbers(JsonElement element) {
    return element.items(Bands.COUNT, Bands.COUNT).stream()
        .mapToDouble(JsonElement::number)
        .toArray();
  }

  private static FittedOptics.Row row(JsonElement element) {
    JsonFields fields = element.fields("row", "slopes");
    int number = fields.required("row").wholeNumber(0, FittedOptics.LARGEST_ROW);
    List<JsonElement> items = fields.required("slopes").items(2 * Bands.COUNT, 2 * Bands.COUNT);
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
    json.writeArrayFieldStart("rows");
    for (FittedOptics.Row row : optics.rows()) {
      json.writeStartObject();
      json.writeNumberField("row", row.number());
      json.writeArrayFieldStart("slopes");
      for (float slope : row.slopes()) {
        json.writeNumber(slope);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
