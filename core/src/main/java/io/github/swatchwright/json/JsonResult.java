package io.github.swatchwright.json;

/**
 * A result that can be written as JSON and as a table, both straight from what was found. Immutable
 * as long as nobody changes what it was made of.
 */
public final class JsonResult {
  private final JsonOutput.Fields fields;

  JsonResult(JsonOutput.Fields fields) {
    this.fields = fields;
  }

  /** One JSON object as indented text that ends with a line feed. */
  public String toText() {
    return JsonOutput.object(fields);
  }

  /** A row for each recipe, rung, prediction, step or colour. */
  public ResultTable toTable() {
    return ResultTable.of(ContentGenerator.contentOf(fields));
  }
}
