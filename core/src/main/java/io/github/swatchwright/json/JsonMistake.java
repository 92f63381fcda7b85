package io.github.swatchwright.json;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with JSON that can't be parsed, in words for those who write it by hand. */
final class JsonMistake {
  private static final Pattern CHARACTER =
      Pattern.compile("(?s)Unexpected character \\('(.)' \\(code \\d+[^)]*\\)\\)(.*)");

  private static final Pattern TOKEN = Pattern.compile("(?s)Unrecognized token '([^']*)'.*");

  private JsonMistake() {}

  /** The parser's complaint as a painter understands it. */
  static String inWords(String complaint) {
    if (complaint.startsWith("Unexpected end-of-input")) {
      return "the text ends too early: a } or ] is missing, or a quotation mark";
    }
    Matcher token = TOKEN.matcher(complaint);
    if (token.matches()) {
      return "'" + token.group(1) + "' is no number: text stands in quotation marks, \"…\"";
    }
    Matcher character = CHARACTER.matcher(complaint);
    return character.matches()
        ? atCharacter(character.group(1), character.group(2))
        : plain(complaint);
  }

  private static String atCharacter(String found, String expected) {
    boolean nameExpected = expected.contains("to start field name");
    boolean valueExpected = expected.contains("expected a valid value");
    if ((found.equals("}") && nameExpected) || (found.equals("]") && valueExpected)) {
      return "there is a comma before the closing " + found + ", which has to go";
    }
    if ("“”„‘’'`«»".contains(found)) {
      return "text and names stand in straight quotation marks, \"…\", not in " + found;
    }
    if (found.equals("/")) {
      return "JSON has no comments; a paint has a field \"notes\"";
    }
    if (expected.contains("comma to separate")) {
      return "a comma is missing before " + found;
    }
    if (expected.contains("a colon to separate")) {
      return "a colon is missing between a name and its value, before " + found;
    }
    if (nameExpected && Character.isDigit(found.codePointAt(0))) {
      return "a name must stand behind a comma; numbers have a decimal point, such as 1.5";
    }
    if (nameExpected) {
      return "a name in quotation marks, \"…\", must stand here, not " + found;
    }
    return "a value must stand here, not " + found;
  }

  /** The parser's words without its own options and the second location that it puts in. */
  private static String plain(String message) {
    return message
        .replaceAll("\\[Source:[^\\]]*line: (\\d+), column: (\\d+)\\]", "line $1, column $2")
        .replaceAll(", from `[^`]*`", "")
        .replaceAll(": enable `[^`]*` to allow", "");
  }
}
