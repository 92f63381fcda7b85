package io.github.swatchwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Tables of results, as {@code --table} writes them, in the columns of a shelf: a listed shelf has
 * {@code masstone.lab} and {@code hiding.contrastRatio}, a sample {@code region} and {@code lab}.
 * What a shelf has no column for is left out.
 */
final class ResultColumns {
  private static final Map<String, String> NAMES =
      Map.of(
          "hiding.coats", "coats",
          "hiding.contrastratio", "contrastRatio",
          "hiding.scattering", "scattering",
          "hiding.word", "hidingWord");

  private ResultColumns() {}

  /** Whether the first line is that of a table of results. */
  static boolean isHeader(CsvRecord header) {
    List<String> names = header.fields().stream().map(ResultColumns::lower).toList();
    return names.contains("masstone.srgb") || (names.contains("region") && names.contains("srgb"));
  }

  private static String lower(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  /** The table as the records of a shelf. */
  static List<CsvRecord> asShelf(List<CsvRecord> table) {
    List<String> names = table.get(0).fields().stream().map(ResultColumns::lower).toList();
    int lab = names.contains("masstone.lab") ? names.indexOf("masstone.lab") : names.indexOf("lab");
    int named = names.contains("name") ? names.indexOf("name") : names.indexOf("region");
    List<CsvRecord> records = new ArrayList<>();
    for (CsvRecord record : table) {
      List<String> fields = new ArrayList<>();
      boolean isFirst = records.isEmpty();
      fields.add(isFirst ? "name" : field(record, named));
      for (int i = 0; i < names.size(); i++) {
        String column = NAMES.getOrDefault(names.get(i), names.get(i));
        if (i != named && ShelfColumn.named(column).isPresent() && !column.equals("srgb")) {
          fields.add(isFirst ? column : field(record, i));
        }
      }
      String[] values = field(record, lab).strip().split(" ", -1);
      for (int axis = 0; axis < 3; axis++) {
        fields.add(isFirst ? "lab_" + "lab".charAt(axis) : values.length == 3 ? values[axis] : "");
      }
      records.add(new CsvRecord(record.line(), fields));
    }
    return records;
  }

  private static String field(CsvRecord record, int place) {
    return place >= 0 && place < record.fields().size() ? record.fields().get(place) : "";
  }
}
