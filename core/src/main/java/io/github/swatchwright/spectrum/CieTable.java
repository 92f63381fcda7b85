package io.github.swatchwright.spectrum;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * One of the CIE's tables, shipped with this package: a column or more over 380 to 780 nm, every 5
 * nm. It is read when it is first asked for, and kept.
 */
final class CieTable {
  static final int ROWS = 81;
  static final int FIRST_NM = 380;
  static final int STEP_NM = 5;

  private final String resource;
  private final int columns;
  private volatile double @Nullable [][] content;

  CieTable(String resource, int columns) {
    this.resource = resource;
    this.columns = columns;
  }

  /** All columns, each of {@link #ROWS} values; shared, not to be changed. */
  double[][] columns() {
    double[][] known = content;
    if (known == null) {
      known = read();
      content = known;
    }
    return known;
  }

  private double[][] read() {
    try (InputStream stream = CieTable.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("resource " + resource + " is missing");
      }
      return parse(new BufferedReader(new InputStreamReader(stream, StandardCharsets.US_ASCII)));
    } catch (IOException e) {
      throw new UncheckedIOException("resource " + resource + " can't be read", e);
    }
  }

  private double[][] parse(BufferedReader lines) throws IOException {
    double[][] values = new double[columns][ROWS];
    int row = 0;
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      if (line.startsWith("#")) {
        continue;
      }
      int comma = line.indexOf(',');
      if (Integer.parseInt(line.substring(0, comma)) != FIRST_NM + STEP_NM * row) {
        throw new IllegalStateException(
            "resource " + resource + " has a row out of order: " + line);
      }
      for (int column = 0; column < columns; column++) {
        int next = line.indexOf(',', comma + 1);
        int end = next < 0 ? line.length() : next;
        values[column][row] = Double.parseDouble(line.substring(comma + 1, end));
        comma = end;
      }
      row++;
    }
    if (row != ROWS) {
      throw new IllegalStateException(
          "resource " + resource + " has " + row + " rows, not " + ROWS);
    }
    return values;
  }
}
