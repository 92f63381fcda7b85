package io.github.swatchwright.exchange;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.exchange.BadLinesException.BadLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A region of a photo and the name of what is in it, from CSV with the columns {@code name} and
 * {@code region}; others aren't looked at, so that a table of colours is such a file, too.
 *
 * @param line where it stands in the file, from 1
 * @param name in one line, not blank
 * @param region as it was given, such as {@code 10,20,5%,5%}, not checked yet
 */
public record NamedRegion(int line, String name, String region) {

  /**
   * Reads regions.
   *
   * @param bytes UTF-8
   * @param source what messages call the file
   * @return at least one, no name twice
   * @throws BadLinesException when lines can't be taken
   * @throws IllegalArgumentException when the file as a whole can't
   */
  public static List<NamedRegion> read(byte[] bytes, String source) {
    List<BadLine> bad = new ArrayList<>();
    List<CsvRecord> records = CsvText.read(TextFile.utf8(bytes, source), bad);
    List<String> columns =
        records.isEmpty()
            ? List.of()
            : records.get(0).fields().stream()
                .map(column -> column.strip().toLowerCase(Locale.ROOT))
                .toList();
    int name = columns.indexOf("name");
    int region = columns.indexOf("region");
    if (name < 0 || region < 0) {
      throw new IllegalArgumentException(
          source + ": must begin with a line of columns that names 'name' and 'region'");
    }
    List<NamedRegion> regions = new ArrayList<>();
    Map<String, Integer> lines = new HashMap<>();
    for (CsvRecord record : records.subList(1, records.size())) {
      if (record.fields().size() != columns.size()) {
        bad.add(
            new BadLine(
                record.line(),
                "has "
                    + record.fields().size()
                    + " fields, must have "
                    + columns.size()
                    + " as the first line; a region of four numbers stands in quotation marks"));
        continue;
      }
      String called = Printable.oneLine(record.fields().get(name).strip());
      Integer earlier = lines.putIfAbsent(called, record.line());
      if (called.isEmpty()) {
        bad.add(new BadLine(record.line(), "has no name"));
      } else if (earlier != null) {
        bad.add(
            new BadLine(
                record.line(), "name is " + Printable.quoted(called) + ", as on line " + earlier));
      }
      regions.add(new NamedRegion(record.line(), called, record.fields().get(region)));
    }
    if (!bad.isEmpty()) {
      throw new BadLinesException(source, bad);
    }
    if (regions.isEmpty()) {
      throw new IllegalArgumentException(source + ": has no region, must have at least one");
    }
    return List.copyOf(regions);
  }
}
