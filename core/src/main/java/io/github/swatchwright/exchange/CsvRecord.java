package io.github.swatchwright.exchange;

import java.util.List;

/**
 * One record of a CSV file.
 *
 * @param line the line that it begins on, from 1
 * @param fields its fields, without quotation marks
 */
record CsvRecord(int line, List<String> fields) {
  CsvRecord {
    fields = List.copyOf(fields);
  }
}
