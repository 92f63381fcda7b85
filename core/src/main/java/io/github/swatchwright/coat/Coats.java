package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Coats as text: {@code "Name:2@1:4, Other name:1 over 60%"}, which is two coats of one volume of
 * paint to four of thinner, then one coat that isn't thinned and covers 60 % of the area.
 */
public final class Coats {
  private static final Pattern ENTRY =
      Pattern.compile(
          "\\G\\s*(?<name>.+?)\\s*:\\s*(?<coats>[^,:@\\s]+)"
              + "(?:\\s*@\\s*(?<paint>[^,:\\s]+)\\s*:\\s*(?<thinner>[^,:\\s]+))?"
              + "(?:\\s+over\\s+(?<share>[^,%\\s]+)\\s*%)?\\s*(?:,|$)");

  private Coats() {}

  /**
   * Reads coats, lowest first.
   *
   * @throws IllegalArgumentException when the text has another form, a number is none or out of
   *     range, or a paint isn't on the shelf
   */
  public static List<Coat> parse(String text, Shelf shelf) {
    List<Coat> coats = new ArrayList<>();
    Matcher entry = ENTRY.matcher(text);
    int end = 0;
    while (end < text.length()) {
      if (!entry.find()) {
        throw new IllegalArgumentException(
            Printable.quoted(text.substring(end).trim())
                + " is not of the form Name:coats, Name:coats@paint:thinner or"
                + " Name:coats@paint:thinner over 60%");
      }
      coats.add(coat(entry, shelf));
      end = entry.end();
    }
    if (coats.isEmpty()) {
      throw new IllegalArgumentException("there are no coats, must be at least one");
    }
    return coats;
  }

  private static Coat coat(Matcher entry, Shelf shelf) {
    Mix mix = Mix.of(shelf.paint(entry.group("name")));
    double coats = number(entry, "coats");
    double thinner = 0;
    if (entry.group("paint") != null) {
      double paint = number(entry, "paint");
      if (!(paint > 0)) {
        throw new IllegalArgumentException(
            "paint in "
                + Printable.quoted(entry.group().trim())
                + " is "
                + paint
                + ", must be above 0");
      }
      thinner = number(entry, "thinner") / paint;
    }
    double coverage = entry.group("share") == null ? 1 : number(entry, "share") / 100;
    return new Coat(mix, coats, thinner, coverage);
  }

  private static double number(Matcher entry, String group) {
    String digits = entry.group(group);
    try {
      return Double.parseDouble(digits);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          Printable.quoted(digits)
              + " in the coat "
              + Printable.quoted(entry.group().trim())
              + " is not a number",
          e);
    }
  }
}
