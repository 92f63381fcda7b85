package io.github.swatchwright.exchange;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.exchange.BadLinesException.BadLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The first table of a CGATS.17 (ISO 28178) file: keywords with their values, the names of fields,
 * and sets of values, one a line. {@code #} begins a comment; values with spaces stand in quotation
 * marks.
 *
 * @param keywords values by upper-case keyword, in order; of a keyword that comes twice, both
 * @param fields the names of fields, in upper case
 * @param sets the values
 */
record CgatsTable(Map<String, String> keywords, List<String> fields, List<Row> sets) {
  private static final int LONGEST_SHOWN = 60;

  private static final Pattern TOKEN = Pattern.compile("\"([^\"]*)\"|(#.*)|([^\\s\"#]\\S*)");

  /**
   * A set of values.
   *
   * @param line its line, from 1
   * @param values one for each field
   */
  record Row(int line, List<String> values) {}

  /** Reads the table; rows that can't be taken are added to {@code bad}. */
  static CgatsTable read(String text, String source, List<BadLine> bad) {
    Reader reader = new Reader(bad);
    int number = 0;
    for (String line : text.split("\\r\\n|\\n|\\r", -1)) {
      reader.line(++number, line);
    }
    return reader.table(source);
  }

  /** The place of the first of those fields that there is, or −1. */
  int place(String... names) {
    for (String name : names) {
      int place = fields.indexOf(name);
      if (place >= 0) {
        return place;
      }
    }
    return -1;
  }

  private static List<String> tokens(String line) {
    List<String> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(line);
    while (matcher.find() && matcher.group(2) == null) {
      tokens.add(matcher.group(1) == null ? matcher.group(3) : matcher.group(1));
    }
    return tokens;
  }

  /** Where in the file the reader is. */
  private enum Part {
    HEAD,
    FORMAT,
    DATA,
    AFTER
  }

  private static final class Reader {
    private final List<BadLine> bad;
    private final Map<String, String> keywords = new LinkedHashMap<>();
    private final List<String> fields = new ArrayList<>();
    private final List<Row> sets = new ArrayList<>();
    private Part part = Part.HEAD;
    private int rows;

    Reader(List<BadLine> bad) {
      this.bad = bad;
    }

    void line(int number, String line) {
      List<String> tokens = tokens(line);
      if (tokens.isEmpty()) {
        return;
      }
      String first = tokens.get(0).toUpperCase(Locale.ROOT);
      switch (first) {
        case "BEGIN_DATA_FORMAT" -> begin(number, Part.FORMAT);
        case "BEGIN_DATA" -> begin(number, Part.DATA);
        case "END_DATA_FORMAT" -> part = Part.HEAD;
        case "END_DATA" -> part = Part.AFTER;
        default -> content(number, first, tokens);
      }
    }

    private void begin(int number, Part next) {
      if (part == Part.AFTER) {
        bad.add(new BadLine(number, "begins a second table, and only one is read"));
      } else if (next == Part.FORMAT && rows > 0) {
        bad.add(new BadLine(number, "names fields after values"));
      }
      part = next;
    }

    private void content(int number, String first, List<String> tokens) {
      switch (part) {
        case HEAD ->
            keywords.merge(
                first,
                String.join(" ", tokens.subList(1, tokens.size())),
                (one, other) -> one + "; " + other);
        case FORMAT -> name(tokens);
        case DATA -> row(number, tokens);
        default -> {}
      }
    }

    /** Values that were read have the fields that they were read with. */
    private void name(List<String> tokens) {
      if (rows == 0) {
        tokens.forEach(name -> fields.add(name.toUpperCase(Locale.ROOT)));
      }
    }

    private void row(int number, List<String> tokens) {
      rows++;
      if (tokens.size() == fields.size()) {
        sets.add(new Row(number, List.copyOf(tokens)));
      } else {
        bad.add(
            new BadLine(number, "has " + tokens.size() + " values, must have " + fields.size()));
      }
    }

    CgatsTable table(String source) {
      if (fields.isEmpty() || rows == 0 || part != Part.AFTER) {
        throw new IllegalArgumentException(
            source
                + ": is no CGATS file: it must hold BEGIN_DATA_FORMAT, END_DATA_FORMAT, BEGIN_DATA,"
                + " values and END_DATA");
      }
      if (fields.size() > ReadLimits.USUAL.mostFields()) {
        throw new IllegalArgumentException(
            source
                + ": has "
                + fields.size()
                + " fields, must have at most "
                + ReadLimits.USUAL.mostFields());
      }
      if (bad.isEmpty()) {
        check(source, "NUMBER_OF_FIELDS", fields.size());
        check(source, "NUMBER_OF_SETS", rows);
      }
      return new CgatsTable(keywords, fields, sets);
    }

    /** A file that was cut short says so by these. */
    private void check(String source, String keyword, int counted) {
      String stated = keywords.get(keyword);
      if (stated != null && !stated.equals(Integer.toString(counted))) {
        throw new IllegalArgumentException(
            source
                + ": "
                + keyword
                + " is "
                + Printable.oneLine(stated, LONGEST_SHOWN)
                + ", but there are "
                + counted);
      }
    }
  }
}
