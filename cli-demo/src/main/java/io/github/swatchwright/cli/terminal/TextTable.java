package io.github.swatchwright.cli.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Columns of text, aligned. Where a line is too short for them, columns that can be spared are left
 * out, the last one first; then texts of the first column are cut off and end in "…".
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
   * @param spare whether it may be left out where there is no room for it
   */
  public record Column(String name, boolean toTheRight, boolean spare) {
    /** A column that always stays. */
    public Column(String name, boolean toTheRight) {
      this(name, toTheRight, false);
    }

    /** A column that is left out where there is no room for it. */
    public static Column spared(String name) {
      return new Column(name, false, true);
    }
  }

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
   * @param width characters in a line
   */
  public List<String> lines(int width) {
    int[] widths = new int[columns.size()];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], length(row.get(i)));
      }
    }
    List<Integer> shown = new ArrayList<>(IntStream.range(0, widths.length).boxed().toList());
    for (int last = widths.length - 1; last > 0 && needed(shown, widths) > width; last--) {
      if (columns.get(last).spare()) {
        shown.remove(Integer.valueOf(last));
      }
    }
    int others = needed(shown, widths) - widths[0];
    widths[0] = Math.min(widths[0], Math.max(NARROWEST_FIRST, width - others));
    return rows.stream().map(row -> line(row, shown, widths)).toList();
  }

  private static int needed(List<Integer> shown, int[] widths) {
    return shown.stream().mapToInt(i -> widths[i]).sum() + (shown.size() - 1) * GAP.length();
  }

  private String line(List<String> row, List<Integer> shown, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i : shown) {
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
