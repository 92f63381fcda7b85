package io.github.swatchwright.json;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.photo.Chart;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A colour chart as JSON, format {@code swatchwright-chart} version 1: the known colours of its
 * patches row by row, and how many stand in a row, or else where each patch is, as left, top, width
 * and height in percent of the chart.
 *
 * <pre>{@code
 * {"format":"swatchwright-chart","version":1,"white":"D50","columns":6,
 *  "patches":[{"lab":[38.1,13.9,14.4]},{"lab":[65.8,17.7,17.6]}]}
 * {"format":"swatchwright-chart","version":1,
 *  "patches":[{"lab":[38.1,13.9,14.4],"percent":[2,3,10,12]}]}
 * }</pre>
 *
 * <p>The colours are CIELAB for the 2° observer, relative to {@code white}, which is D65 unless D50
 * is stated; those relative to D50 are adapted by the Bradford transform.
 */
public final class ChartJson {
  private static final DocumentHead HEAD = new DocumentHead("swatchwright-chart", 1);

  private ChartJson() {}

  /**
   * Reads a chart from a file, which messages name by its path.
   *
   * @throws JsonInputException when the file doesn't hold a chart
   * @throws IOException when it can't be read
   */
  public static Chart read(Path file) throws IOException {
    return chart(JsonDocument.read(file));
  }

  /**
   * Reads a chart from a text.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @throws JsonInputException when the text doesn't hold a chart
   */
  public static Chart parse(String text, String source) {
    return chart(JsonDocument.parse(text, source));
  }

  private static Chart chart(JsonElement root) {
    JsonFields fields = root.fields("format", "version", "white", "columns", "patches");
    HEAD.check(fields);
    boolean d50 =
        fields
            .optional("white")
            .map(white -> white.oneOf(List.of("D50", "D65"), word -> word).equals("D50"))
            .orElse(false);
    JsonElement list = fields.required("patches");
    List<JsonElement> patches = list.items(1, Chart.MOST_PATCHES);
    Optional<JsonElement> columns = fields.optional("columns");
    if (columns.isPresent()) {
      int across = columns.get().wholeNumber(1, patches.size());
      List<Lab> known =
          patches.stream().map(patch -> lab(patch.fields("lab").required("lab"), d50)).toList();
      return list.make(() -> Chart.ofGrid(across, known));
    }
    List<Chart.Patch> placed = patches.stream().map(patch -> placed(patch, d50)).toList();
    return list.make(() -> new Chart(placed));
  }

  private static Chart.Patch placed(JsonElement patch, boolean d50) {
    JsonFields fields = patch.fields("lab", "percent");
    Lab known = lab(fields.required("lab"), d50);
    JsonElement place = fields.required("percent");
    List<JsonElement> percent = place.items(4, 4);
    double left = percent.get(0).number(0, 100) / 100;
    double top = percent.get(1).number(0, 100) / 100;
    double width = percent.get(2).number(0, 100) / 100;
    double height = percent.get(3).number(0, 100) / 100;
    return place.make(() -> new Chart.Patch(left, top, width, height, known));
  }

  private static Lab lab(JsonElement element, boolean d50) {
    List<JsonElement> numbers = element.items(3, 3);
    double l = numbers.get(0).number(0, 100);
    double limit = Lab.LARGEST_PARSED_AB;
    double a = numbers.get(1).number(-limit, limit);
    double b = numbers.get(2).number(-limit, limit);
    Lab lab = new Lab(l, a, b, d50 ? WhitePoint.D50 : WhitePoint.D65);
    return d50 ? lab.toXyz().adaptTo(WhitePoint.D65).toLab() : lab;
  }
}
