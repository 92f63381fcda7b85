package io.github.swatchwright.json;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.exchange.NamedColour;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A command's result as a table: a row for each recipe, rung, prediction, step or colour, and a
 * column for each of its fields. Fields of objects are named {@code predicted.srgb}; {@code drops}
 * is a mix as text, {@code "Name:3, Other name:1"}; other lists are parted by spaces.
 *
 * @param columns names, in the order in which they first appear
 * @param rows a value for each column; empty where the row has none
 * @param colours the colours of rows that have one
 */
public record ResultTable(
    List<String> columns, List<List<String>> rows, List<NamedColour> colours) {
  private static final List<String> LISTS =
      List.of("recipes", "rungs", "predictions", "steps", "additions", "colours", "paints");
  private static final List<String> NAMES = List.of("drops", "mix", "name", "paint", "region");
  private static final List<String> COLOURS = List.of("predicted.srgb", "srgb", "masstone.srgb");

  /** Copies the lists. */
  public ResultTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    colours = List.copyOf(colours);
  }

  /** The table of a result as the result classes of this package write it. */
  static ResultTable of(JsonElement root) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (JsonElement item : items(root)) {
      Map<String, String> row = new LinkedHashMap<>();
      flatten("", item, row);
      rows.add(row);
    }
    Set<String> columns = new LinkedHashSet<>();
    rows.forEach(row -> columns.addAll(row.keySet()));
    return new ResultTable(
        List.copyOf(columns),
        rows.stream()
            .map(row -> columns.stream().map(column -> row.getOrDefault(column, "")).toList())
            .toList(),
        colours(rows));
  }

  /** The table with its columns' names as first record. */
  public List<List<String>> records() {
    List<List<String>> records = new ArrayList<>();
    records.add(columns);
    records.addAll(rows);
    return records;
  }

  private static List<JsonElement> items(JsonElement root) {
    Map<String, JsonElement> fields = root.members().fields();
    return LISTS.stream()
        .flatMap(list -> Optional.ofNullable(fields.get(list)).stream())
        .findFirst()
        .map(list -> list.items(0, Integer.MAX_VALUE))
        .orElse(List.of(root));
  }

  private static void flatten(String name, JsonElement element, Map<String, String> row) {
    if (element.content() instanceof JsonContent.Members members) {
      String prefix = name.isEmpty() ? "" : name + ".";
      members.fields().forEach((field, value) -> flatten(prefix + field, value, row));
    } else if (element.content() instanceof JsonContent.Items list) {
      boolean mix = list.items().stream().allMatch(ResultTable::isPart);
      row.put(
          name,
          list.items().stream()
              .map(mix ? ResultTable::part : ResultTable::text)
              .collect(Collectors.joining(mix ? ", " : " ")));
    } else {
      row.put(name, text(element));
    }
  }

  private static boolean isPart(JsonElement element) {
    return element.content() instanceof JsonContent.Members members
        && (members.fields().containsKey("paint") || members.fields().containsKey("pot"))
        && members.fields().containsKey("drops");
  }

  private static String part(JsonElement element) {
    JsonFields fields = new JsonFields(element, element.members().fields());
    String name =
        fields
            .optional("paint")
            .map(ResultTable::text)
            .orElseGet(() -> "pot(" + text(fields.required("pot")) + ")");
    return name + ":" + text(fields.required("drops")).replaceFirst("\\.0+$", "");
  }

  private static String text(JsonElement element) {
    JsonContent content = element.content();
    if (content instanceof JsonContent.Text text) {
      return text.text();
    }
    if (content instanceof JsonContent.Items list) {
      return list.items().stream().map(ResultTable::text).collect(Collectors.joining(" "));
    }
    return content instanceof JsonContent.Members members
        ? members.fields().values().stream().map(ResultTable::text).collect(Collectors.joining(" "))
        : content.inWords();
  }

  private static List<NamedColour> colours(List<Map<String, String>> rows) {
    List<NamedColour> colours = new ArrayList<>();
    for (Map<String, String> row : rows) {
      String srgb = first(row, COLOURS, "");
      if (!srgb.isEmpty()) {
        String name = first(row, NAMES, "Colour " + (colours.size() + 1));
        colours.add(new NamedColour(name, Srgb.parseHex(srgb)));
      }
    }
    return colours;
  }

  private static String first(Map<String, String> row, List<String> columns, String otherwise) {
    return columns.stream()
        .map(column -> row.getOrDefault(column, ""))
        .filter(text -> !text.isEmpty())
        .findFirst()
        .orElse(otherwise);
  }
}
