package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.sheet.Area;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetField;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPage;
import io.github.swatchwright.sheet.Spot;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * The layout of one page of a sheet as JSON, format {@code swatchwright-sheet} version 1. Lengths
 * are millimetres from the paper's left upper corner; an area is {@code [left, top, width,
 * height]}. {@code marks} are the centres of ring marks, the four corners first, clockwise from the
 * left upper one; a ring mark is a black disc of radius 4 mm, in it a white one of 2.7 mm, in it a
 * black one of 1.5 mm. A field's {@code label} is a paint's name, or a mix behind {@code =}.
 *
 * <pre>{@code
 * {"format":"swatchwright-sheet","version":1,"paper":"A4","columns":2,"rows":1,"page":1,"pages":1,
 *  "sheet":"5F3A9C","shelf":"-","medium":"acrylic","width":210,"height":297,
 *  "marks":[[10,10],[200,10],[200,287],[10,287],[10,79],[10,148],[10,217]],
 *  "code":[20,8,40,40],"card":[128,16,62,34],"greys":[[20,283,9,8]],
 *  "fields":[{"label":"Yellow oxide","black":[22,62,40,20],"paper":[62,62,40,20],
 *             "stroke":[25,66,74,12]}]}
 * }</pre>
 */
public final class SheetLayoutJson {
  private static final DocumentHead HEAD = new DocumentHead("swatchwright-sheet", 1);
  private static final double LARGEST = 1000;

  private SheetLayoutJson() {}

  /**
   * Reads a layout from a file, which messages name by its path.
   *
   * @throws JsonInputException when the file doesn't hold a layout
   * @throws IOException when it can't be read
   */
  public static SheetLayout read(Path file) throws IOException {
    return layout(JsonDocument.read(file));
  }

  /**
   * Reads a layout from a text.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @throws JsonInputException when the text doesn't hold a layout
   */
  public static SheetLayout parse(String text, String source) {
    return layout(JsonDocument.parse(text, source));
  }

  private static SheetLayout layout(JsonElement root) {
    JsonFields fields =
        root.fields(
            "format", "version", "paper", "columns", "rows", "page", "pages", "sheet", "shelf",
            "medium", "width", "height", "marks", "code", "card", "greys", "fields");
    HEAD.check(fields);
    List<SheetField> painted =
        fields.required("fields").items(1, 100).stream().map(SheetLayoutJson::field).toList();
    SheetPage page = page(root, fields, painted);
    double width = fields.required("width").number();
    double height = fields.required("height").number();
    List<Spot> marks =
        fields.required("marks").items(SheetLayout.FEWEST_MARKS, SheetLayout.MOST_MARKS).stream()
            .map(SheetLayoutJson::spot)
            .toList();
    Area code = area(fields.required("code"));
    Area card = area(fields.required("card"));
    List<Area> greys =
        fields.required("greys").items(0, 20).stream().map(SheetLayoutJson::area).toList();
    return root.make(() -> new SheetLayout(width, height, marks, code, card, greys, painted, page));
  }

  private static SheetPage page(JsonElement root, JsonFields fields, List<SheetField> painted) {
    Paper paper = fields.required("paper").oneOf(List.of(Paper.values()), Paper::word);
    int columns = fields.required("columns").wholeNumber(1, 100);
    int rows = fields.required("rows").wholeNumber(1, 100);
    int page = fields.required("page").wholeNumber(1, SheetPage.MOST_PAGES);
    int pages = fields.required("pages").wholeNumber(1, SheetPage.MOST_PAGES);
    String sheet = fields.required("sheet").text();
    String shelf = fields.required("shelf").text();
    Medium medium = fields.required("medium").oneOf(List.of(Medium.values()), Medium::word);
    List<String> labels = painted.stream().map(SheetField::label).toList();
    return root.make(
        () -> new SheetPage(paper, columns, rows, page, pages, sheet, shelf, medium, labels));
  }

  private static SheetField field(JsonElement element) {
    JsonFields fields = element.fields("label", "black", "paper", "stroke");
    String label = fields.required("label").text();
    Area black = area(fields.required("black"));
    Area paper = area(fields.required("paper"));
    Area stroke = area(fields.required("stroke"));
    return element.make(() -> new SheetField(label, black, paper, stroke));
  }

  private static Spot spot(JsonElement element) {
    List<JsonElement> numbers = element.items(2, 2);
    return new Spot(numbers.get(0).number(0, LARGEST), numbers.get(1).number(0, LARGEST));
  }

  private static Area area(JsonElement element) {
    List<JsonElement> numbers = element.items(4, 4);
    double left = numbers.get(0).number(0, LARGEST);
    double top = numbers.get(1).number(0, LARGEST);
    double width = numbers.get(2).number(0, LARGEST);
    double height = numbers.get(3).number(0, LARGEST);
    return element.make(() -> new Area(left, top, width, height));
  }

  /** The layout as a JSON document. */
  public static String toText(SheetLayout layout) {
    return JsonOutput.document(json -> write(json, layout));
  }

  private static void write(JsonGenerator json, SheetLayout layout) throws IOException {
    SheetPage page = layout.page();
    HEAD.write(json);
    json.writeStringField("paper", page.paper().word());
    json.writeNumberField("columns", page.columns());
    json.writeNumberField("rows", page.rows());
    json.writeNumberField("page", page.page());
    json.writeNumberField("pages", page.pages());
    json.writeStringField("sheet", page.sheet());
    json.writeStringField("shelf", page.shelf());
    json.writeStringField("medium", page.medium().word());
    Rounded.field(json, "width", layout.width());
    Rounded.field(json, "height", layout.height());
    json.writeArrayFieldStart("marks");
    for (Spot mark : layout.marks()) {
      json.writeStartArray();
      json.writeNumber(mark.x());
      json.writeNumber(mark.y());
      json.writeEndArray();
    }
    json.writeEndArray();
    area(json, "code", layout.code());
    area(json, "card", layout.card());
    json.writeArrayFieldStart("greys");
    for (Area grey : layout.greys()) {
      numbers(json, grey);
    }
    json.writeEndArray();
    JsonOutput.objects(
        json,
        "fields",
        layout.fields(),
        field -> {
          JsonOutput.text(json, "label", field.label());
          area(json, "black", field.black());
          area(json, "paper", field.paper());
          area(json, "stroke", field.stroke());
        });
  }

  private static void area(JsonGenerator json, String name, Area area) throws IOException {
    json.writeFieldName(name);
    numbers(json, area);
  }

  private static void numbers(JsonGenerator json, Area area) throws IOException {
    json.writeStartArray();
    json.writeNumber(area.left());
    json.writeNumber(area.top());
    json.writeNumber(area.width());
    json.writeNumber(area.height());
    json.writeEndArray();
  }
}
