package io.github.swatchwright.json;

import io.github.swatchwright.argument.BadArgumentException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A JSON value that knows where it stands, and refuses to be taken for anything else than it is.
 *
 * @param place where it stands
 * @param content what it is
 */
record JsonElement(JsonPlace place, JsonContent content) {
  private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  /** The exception for what is wrong with this value. */
  JsonInputException refuse(String complaint) {
    return place.refuse(complaint);
  }

  private JsonInputException refuse(String complaint, Throwable cause) {
    JsonInputException refusal = refuse(complaint);
    refusal.initCause(cause);
    return refusal;
  }

  private JsonInputException isNot(String wanted) {
    return refuse("is " + content.inWords() + ", must be " + wanted);
  }

  /** Its fields, when it is an object that has no others than the known ones. */
  JsonFields fields(String... known) {
    if (content instanceof JsonContent.Members members) {
      return JsonFields.of(this, members.fields(), List.of(known));
    }
    throw isNot("an object");
  }

  /** Its fields, when it is an object with names of any kind. */
  JsonContent.Members members() {
    if (content instanceof JsonContent.Members members) {
      return members;
    }
    throw isNot("an object");
  }

  /** Its items, when it is a list of that many. */
  List<JsonElement> items(int fewest, int most) {
    if (!(content instanceof JsonContent.Items list)) {
      throw isNot("a list");
    }
    int size = list.items().size();
    if (size < fewest || size > most) {
      String allowed = fewest == most ? "exactly " + most : fewest + " to " + most;
      throw refuse("holds " + size + " items, must hold " + allowed);
    }
    return list.items();
  }

  /** Its characters, when it is a string. */
  String text() {
    if (content instanceof JsonContent.Text text) {
      return text.text();
    }
    throw isNot("a string");
  }

  /** The day that it names, such as {@code "2026-11-20"} (ISO 8601). */
  LocalDate date() {
    String text = text();
    if (DAY.matcher(text).matches()) {
      try {
        return LocalDate.parse(text);
      } catch (DateTimeParseException e) {
        throw refuse("is " + content.inWords() + ", which is no day of the calendar", e);
      }
    }
    throw isNot("a day such as \"2026-11-20\"");
  }

  /** Whether it is true, when it is true or false. */
  boolean truth() {
    if (content instanceof JsonContent.Literal literal && !literal.word().equals("null")) {
      return literal.word().equals("true");
    }
    throw isNot("true or false");
  }

  /** Its value, when it is a finite number. */
  double number() {
    if (!(content instanceof JsonContent.Numeral numeral)) {
      throw isNot("a number");
    }
    double value = valueOf(numeral);
    if (!Double.isFinite(value)) {
      throw isNot("a finite number within ±" + Double.MAX_VALUE);
    }
    return value;
  }

  private static double valueOf(JsonContent.Numeral numeral) {
    return switch (numeral.digits()) {
      case "NaN", "Infinity", "+Infinity", "-Infinity", "INF", "+INF", "-INF" -> Double.NaN;
      default -> Double.parseDouble(numeral.digits());
    };
  }

  /** Its value, when it is a number within the closed range. */
  double number(double lowest, double highest) {
    double value = number();
    if (value < lowest || value > highest) {
      throw isNot("within [" + lowest + ", " + highest + "]");
    }
    return value;
  }

  /** Its value, when it is a whole number within the closed range. */
  int wholeNumber(int lowest, int highest) {
    double value = number();
    if (value != Math.rint(value) || value < lowest || value > highest) {
      throw isNot("a whole number within [" + lowest + ", " + highest + "]");
    }
    return (int) value;
  }

  /** The choice whose word it is. */
  <T> T oneOf(List<T> choices, Function<T, String> word) {
    String text = text();
    return choices.stream()
        .filter(choice -> word.apply(choice).equals(text))
        .findFirst()
        .orElseThrow(
            () -> isNot("one of " + choices.stream().map(word).collect(Collectors.joining(", "))));
  }

  /**
   * What is made of this value. When that refuses an argument that is a field of this object, the
   * message names the field's place.
   */
  <T> T make(Supplier<T> maker) {
    try {
      return maker.get();
    } catch (JsonInputException e) {
      throw e;
    } catch (BadArgumentException e) {
      throw named(e.argument())
          .map(element -> element.refuse(e.complaint()))
          .orElseGet(() -> refuse(String.valueOf(e.getMessage())));
    } catch (IllegalArgumentException e) {
      throw refuse(String.valueOf(e.getMessage()));
    }
  }

  /** The unit at the end of an argument's name; fields don't have it. */
  private static String withoutUnit(String argument) {
    return argument.endsWith("Nm") ? argument.substring(0, argument.length() - 2) : argument;
  }

  /** The field {@code name}, or the item {@code name[index]} of a field, when there is one. */
  private Optional<JsonElement> named(String argument) {
    if (!(content instanceof JsonContent.Members members)) {
      return Optional.empty();
    }
    int bracket = argument.indexOf('[');
    if (bracket < 0) {
      return Optional.ofNullable(members.fields().get(withoutUnit(argument)));
    }
    JsonElement list = members.fields().get(argument.substring(0, bracket));
    return list != null && list.content instanceof JsonContent.Items items
        ? Optional.of(
            items.items().get(Integer.parseInt(argument, bracket + 1, argument.length() - 1, 10)))
        : Optional.empty();
  }
}
