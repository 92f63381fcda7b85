package io.github.swatchwright.testdata;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A published table as a test fixture: columns by name, rows in the file's order.
 *
 * <p>The file is UTF-8 text. Lines that start with {@code #} say where the figures are from and are
 * skipped, as are empty ones; the first other line names the columns; cells are parted by commas
 * where the line of names has one, by blanks otherwise. Nothing is quoted.
 */
public final class ReferenceTable {
  private final String name;
  private final List<String> columns;
  private final List<Row> rows;

  private ReferenceTable(String name, List<String> columns) {
    this.name = name;
    this.columns = columns;
    this.rows = new ArrayList<>();
  }

  /**
   * The table in a file beside this class.
   *
   * @throws IllegalArgumentException when there is no such file, or it isn't a table
   */
  public static ReferenceTable load(String file) {
    try (InputStream stream = ReferenceTable.class.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalArgumentException("there is no reference table " + file);
      }
      return read(file, new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException("reference table " + file + " can't be read", e);
    }
  }

  static ReferenceTable read(String name, BufferedReader reader) throws IOException {
    ReferenceTable table = null;
    String separator = ",";
    int number = 0;
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      number++;
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      if (table == null) {
        separator = line.contains(",") ? "\\s*,\\s*" : "\\s+";
        table = new ReferenceTable(name, List.of(line.trim().split(separator, -1)));
      } else {
        table.add(number, List.of(line.trim().split(separator, -1)));
      }
    }
    if (table == null || table.rows.isEmpty()) {
      throw new IllegalArgumentException("reference table " + name + " has no rows");
    }
    return table;
  }

  private void add(int line, List<String> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(
          "%s line %d has %d cells, must have %d: %s"
              .formatted(name, line, cells.size(), columns.size(), cells));
    }
    rows.add(new Row(this, line, cells));
  }

  private int indexOf(String column) {
    int index = columns.indexOf(column);
    if (index < 0) {
      throw new IllegalArgumentException(
          name + " has no column '" + column + "', must be one of " + columns);
    }
    return index;
  }

  /** The names of the columns. */
  public List<String> columns() {
    return columns;
  }

  /** All rows, in the file's order. */
  public List<Row> rows() {
    return List.copyOf(rows);
  }

  @Override
  public String toString() {
    return name;
  }

  /** One row of a table. */
  public static final class Row {
    private final ReferenceTable table;
    private final int line;
    private final List<String> cells;

    private Row(ReferenceTable table, int line, List<String> cells) {
      this.table = table;
      this.line = line;
      this.cells = cells;
    }

    /** The text of a cell. */
    public String text(String column) {
      return cells.get(table.indexOf(column));
    }

    /**
     * The number in a cell.
     *
     * @throws IllegalArgumentException when the cell holds something else; the message says where
     */
    public double number(String column) {
      String text = text(column);
      try {
        return Double.parseDouble(text);
      } catch (NumberFormatException e) {
        throw new IllegalArgumentException(
            "%s line %d, column %s: '%s' is not a number".formatted(table.name, line, column, text),
            e);
      }
    }

    /** The numbers of several cells, in the order asked for. */
    public double[] numbers(String... names) {
      return Arrays.stream(names).mapToDouble(this::number).toArray();
    }

    /** File, line and content: for the names of tests. */
    @Override
    public String toString() {
      return table.name + " line " + line + ": " + String.join(", ", cells);
    }
  }
}
