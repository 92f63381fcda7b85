package io.github.swatchwright.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/**
 * Columns of text, aligned. Where a line is too short for them, texts of the first column are cut
 * off and end in "…".
 */
public final class TextTable {
  private static final String GAP = "  ";
  private static final int NARROWEST_FIRST = 12;

  private final List<Column> columns;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * A column.
   *
   * @param name its head
   * @param toTheRight whether it stands flush right, as numbers do
   */
  public record Column(String name, boolean toTheRight) {}

  public TextTable(Column... columns) {
    this.columns = List.of(columns);
    rows.add(this.columns.stream().map(Column::name).toList());
  }

  /** Adds a row, a text for each column. */
  public void add(String... texts) {
    rows.add(List.of(texts));
  }

  /**
   * The head and all rows.
   *
   * @param width characters in a line; only texts of the first column are cut off to fit it
   */
  public List<String> lines(int width) {
    int[] widths = new int[columns.size()];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], length(row.get(i)));
      }
    }
    int others = 0;
    for (int i = 1; i < widths.length; i++) {
      others += GAP.length() + widths[i];
    }
    widths[0] = Math.min(widths[0], Math.max(NARROWEST_FIRST, width - others));
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private String line(List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      String text = cut(row.get(i), widths[i]);
      String space = " ".repeat(widths[i] - length(text));
      line.append(i == 0 ? "" : GAP);
      line.append(columns.get(i).toTheRight() ? space + text : text + space);
    }
    return line.toString().stripTrailing();
  }

  private static String cut(String text, int width) {
    return length(text) <= width
        ? text
        : text.substring(0, text.offsetByCodePoints(0, width - 1)) + "…";
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
