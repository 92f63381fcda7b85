package io.github.swatchwright.exchange;

import io.github.swatchwright.exchange.BadLinesException.BadLine;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Comma-separated values, RFC 4180: fields in quotation marks may hold commas, line breaks and
 * doubled quotation marks. Lines may end with CR LF or LF; they are written with CR LF.
 *
 * <p>A spreadsheet runs a field that begins with {@code = + - @}, a tab or a carriage return as a
 * formula. Such a field is written with an apostrophe before it unless it is a plain number, and
 * reads back without it: names of paints can come from anybody. Blanks around a field are kept by
 * quotation marks; around a field without them, they don't count.
 *
 * <p>Spreadsheets of many countries part fields by semicolons, because their decimals have a comma.
 * A file whose first line has semicolons and no comma is read so: there, {@code 12,5} is 12.5.
 */
public final class CsvText {
  /** Also what was made inert already, so that each field reads back as it was. */
  private static final Pattern FORMULA = Pattern.compile("'*[=+\\-@\t\r]");

  private static final Pattern INERT = Pattern.compile("'+[=+\\-@\t\r]");

  private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?[0-9]*,[0-9]+");

  private final String text;
  private final char separator;
  private final List<BadLine> bad;
  private final List<CsvRecord> records = new ArrayList<>();
  private final StringBuilder field = new StringBuilder();
  private List<String> fields = new ArrayList<>();
  private int at;
  private int line = 1;
  private int recordLine = 1;

  private CsvText(String text, List<BadLine> bad) {
    this.text = text;
    this.separator = separator(text);
    this.bad = bad;
  }

  private static char separator(String text) {
    String first = text.lines().findFirst().orElse("").replaceAll("\"[^\"]*\"?", "");
    return first.indexOf(';') >= 0 && first.indexOf(',') < 0 ? ';' : ',';
  }

  /** Writes records. */
  public static String toText(List<List<String>> records) {
    return records.stream()
        .map(record -> record.stream().map(CsvText::quoted).collect(Collectors.joining(",")))
        .map(record -> record + "\r\n")
        .collect(Collectors.joining());
  }

  private static String quoted(String field) {
    String inert =
        FORMULA.matcher(field).lookingAt() && !Words.isNumber(field) ? "'" + field : field;
    boolean plain =
        inert.chars().noneMatch(c -> c == ',' || c == ';' || c == '"' || c == '\n' || c == '\r')
            && inert.equals(inert.strip());
    return plain ? inert : "\"" + inert.replace("\"", "\"\"") + "\"";
  }

  /** The field as it was before it was made inert. */
  private static String active(String field) {
    return INERT.matcher(field).lookingAt() ? field.substring(1) : field;
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
    boolean inQuotes = text.charAt(at) == '"';
    if (inQuotes) {
      readQuoted();
    } else {
      while (at < text.length() && !endsField(text.charAt(at))) {
        if (text.charAt(at) == '"') {
          refuse("has a quotation mark inside a field that doesn't begin with one");
        }
        field.append(text.charAt(at++));
      }
    }
    endField(inQuotes);
  }

  private boolean endsField(char c) {
    return c == separator || c == '\r' || c == '\n';
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

  /** A field without quotation marks, with a decimal point in numbers. */
  private String plain(String bare) {
    boolean isDecimal = separator == ';' && DECIMAL_COMMA.matcher(bare).matches();
    return isDecimal ? bare.replace(',', '.') : bare;
  }

  /** Takes the comma or the line end after a field. */
  private void endField(boolean inQuotes) {
    if (field.length() > ReadLimits.USUAL.longestText()) {
      refuse("has a field of more than " + ReadLimits.USUAL.longestText() + " characters");
    }
    fields.add(active(inQuotes ? field.toString() : plain(field.toString().strip())));
    field.setLength(0);
    if (at == text.length()) {
      return;
    }
    if (text.charAt(at) == separator) {
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
    if (fields.size() > ReadLimits.USUAL.mostFields()) {
      refuse(
          "has " + fields.size() + " fields, must have at most " + ReadLimits.USUAL.mostFields());
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
