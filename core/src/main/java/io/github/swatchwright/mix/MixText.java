package io.github.swatchwright.mix;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a mix such as {@code "Name:3, Other name:1.5"}, and explains what is often written instead.
 *
 * @param text all of it
 * @param shelf the paints
 */
record MixText(String text, Shelf shelf) {
  /** Decimals without an exponent; the smallest {@code double} has 1074 places. */
  private static final Pattern PLAIN_DECIMAL =
      Pattern.compile("[+-]?([0-9]{1,9}(\\.[0-9]{0,1074})?|\\.[0-9]{1,1074})");

  /** A number that people write before the name: "3 Name", "3 drops of Name", "3x Name". */
  private static final Pattern NUMBER_FIRST =
      Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*(?:x|×|drops? of|parts?(?: of)?)?\\s+(.+)");

  /** A number after the name with another sign, or none: "Name 3", "Name=3", "Name x3". */
  private static final Pattern NUMBER_LAST =
      Pattern.compile("(.+?)\\s*(?:[=x×*]|\\s)\\s*([0-9]+(?:\\.[0-9]+)?)");

  /** Its parts. */
  List<Mix.Part> parts() {
    List<Mix.Part> parts = new ArrayList<>();
    for (String entry : entries()) {
      int colon = entry.lastIndexOf(':');
      String name = colon < 0 ? entry : entry.substring(0, colon);
      double drops = colon < 0 ? 1 : number(entry.substring(colon + 1).trim());
      parts.add(new Mix.Part(paint(name.trim()), drops));
    }
    return parts;
  }

  /** Parts between commas; a comma inside a name is told by the number that is still to come. */
  private List<String> entries() {
    List<String> entries = new ArrayList<>();
    StringBuilder pending = new StringBuilder();
    for (String piece : text.split(",", -1)) {
      boolean decimals = pending.length() == 0 && piece.strip().matches("[0-9]+");
      if (decimals
          && !entries.isEmpty()
          && entries.get(entries.size() - 1).matches(".*:\\s*\\d+")) {
        throw decimalComma(entries.get(entries.size() - 1), piece);
      }
      pending.append(pending.length() == 0 ? "" : ",").append(piece);
      if (piece.lastIndexOf(':') >= 0) {
        entries.add(pending.toString());
        pending.setLength(0);
      }
    }
    if (pending.length() > 0) {
      entries.add(pending.toString());
    }
    return entries;
  }

  private IllegalArgumentException decimalComma(String before, String after) {
    String whole = before.substring(before.lastIndexOf(':') + 1).strip();
    return refusal(
        Printable.quoted(whole + "," + after.strip())
            + inTheMix()
            + " has a comma, which parts the paints: write "
            + whole
            + "."
            + after.strip());
  }

  /** The paint of that name, or what was probably meant. */
  private Paint paint(String name) {
    if (isOn(name)) {
      return shelf.paint(name);
    }
    if (name.matches(".*[;+/&].*")) {
      throw refusal(
          Printable.quoted(name.replaceFirst("^[^;+/&]*([;+/&]).*$", "$1"))
              + inTheMix()
              + ": commas part the paints, such as 'Name:3, Other name:1'");
    }
    if (name.isEmpty()) {
      throw refusal("a paint's name is missing" + inTheMix());
    }
    for (String piece : name.split(",", -1)) {
      if (isOn(piece.trim())) {
        throw refusal(
            Printable.quoted(piece.trim())
                + inTheMix()
                + " has no number of parts, must be "
                + Printable.quoted(piece.trim() + ":3")
                + " or the like");
      }
    }
    for (String piece : name.split(",", -1)) {
      refuseTurnedRound(piece.trim());
    }
    return shelf.paint(name);
  }

  private void refuseTurnedRound(String piece) {
    swapped(NUMBER_FIRST.matcher(piece), 2, 1)
        .or(() -> swapped(NUMBER_LAST.matcher(piece), 1, 2))
        .ifPresent(
            meant -> {
              throw refusal(
                  Printable.quoted(piece)
                      + inTheMix()
                      + ": the number of parts goes behind the name and a colon, "
                      + Printable.quoted(meant));
            });
  }

  private Optional<String> swapped(Matcher matcher, int name, int number) {
    return matcher.matches() && isOn(matcher.group(name).trim())
        ? Optional.of(matcher.group(name).trim() + ":" + matcher.group(number).replace(',', '.'))
        : Optional.empty();
  }

  private boolean isOn(String name) {
    return shelf.paints().stream().anyMatch(paint -> paint.name().equalsIgnoreCase(name));
  }

  private double number(String digits) {
    if (!PLAIN_DECIMAL.matcher(digits).matches()) {
      throw refusal(Printable.quoted(digits) + inTheMix() + " is not a number of parts");
    }
    return Double.parseDouble(digits);
  }

  private String inTheMix() {
    return " in the mix " + Printable.quoted(text);
  }

  private static IllegalArgumentException refusal(String message) {
    return new IllegalArgumentException(message);
  }
}
