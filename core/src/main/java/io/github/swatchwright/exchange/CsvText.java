package io.github.swatchwright.exchange;

import io.github.swatchwright.exchange.BadLinesException.BadLine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Comma-separated values, RFC 4180: fields in quotation marks may hold commas, line breaks and
 * doubled quotation marks. Lines may end with CR LF or LF; they are written with CR LF.
 */
public final class CsvText {
  private final String text;
  private final List<BadLine> bad;
  private final List<CsvRecord> records = new ArrayList<>();
  private final StringBuilder field = new StringBuilder();
  private List<String> fields = new ArrayList<>();
  private int at;
  private int line = 1;
  private int recordLine = 1;

  private CsvText(String text, List<BadLine> bad) {
    this.text = text;
    this.bad = bad;
  }

  /** Writes records. */
  public static String toText(List<List<String>> records) {
    return records.stream()
        .map(record -> record.stream().map(CsvText::quoted).collect(Collectors.joining(",")))
        .map(record -> record + "\r\n")
        .collect(Collectors.joining());
  }

  private static String quoted(String field) {
    boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? field : "\"" + field.replace("\"", "\"\"") + "\"";
  }

  /** Reads records; what breaks the format's rules is added to {@code bad}. Skips empty lines. */
  static List<CsvRecord> read(String text, List<BadLine> bad) {
    CsvText csv = new CsvText(text, bad);
    while (csv.at < text.length()) {
      csv.readField();
    }
    csv.endRecord();
    return csv.records;
  }

  private void readField() {
    if (text.charAt(at) == '"') {
      readQuoted();
    } else {
      while (at < text.length() && ",\r\n".indexOf(text.charAt(at)) < 0) {
        if (text.charAt(at) == '"') {
          refuse("has a quotation mark inside a field that doesn't begin with one");
        }
        field.append(text.charAt(at++));
      }
    }
    endField();
  }

  private void readQuoted() {
    at++;
    while (at < text.length()) {
      char c = text.charAt(at++);
      if (c == '"' && (at == text.length() || text.charAt(at) != '"')) {
        return;
      }
      at += c == '"' ? 1 : 0;
      line += c == '\n' ? 1 : 0;
      field.append(c);
    }
    refuse("has a quotation mark that is never closed");
  }

  /** Takes the comma or the line end after a field. */
  private void endField() {
    if (field.length() > TextFile.LONGEST_FIELD) {
      refuse("has a field of more than " + TextFile.LONGEST_FIELD + " characters");
    }
    fields.add(field.toString());
    field.setLength(0);
    if (at == text.length()) {
      return;
    }
    if (text.charAt(at) == ',') {
      at++;
      if (at == text.length()) {
        fields.add("");
      }
      return;
    }
    if (text.startsWith("\r\n", at)) {
      at++;
    } else if (text.charAt(at) != '\n') {
      refuse("has text after a closing quotation mark, or a lone carriage return");
      at = Math.max(at + 1, text.indexOf('\n', at));
      if (at >= text.length() || text.charAt(at) != '\n') {
        at = text.length();
        return;
      }
    }
    at++;
    line++;
    endRecord();
  }

  private void endRecord() {
    if (fields.size() > TextFile.MOST_FIELDS) {
      refuse("has " + fields.size() + " fields, must have at most " + TextFile.MOST_FIELDS);
    }
    if (fields.size() > 1 || !String.join("", fields).isBlank()) {
      records.add(new CsvRecord(recordLine, fields));
    }
    fields = new ArrayList<>();
    recordLine = line;
  }

  private void refuse(String reason) {
    if (bad.isEmpty() || bad.get(bad.size() - 1).number() != recordLine) {
      bad.add(new BadLine(recordLine, reason));
    }
  }
}
