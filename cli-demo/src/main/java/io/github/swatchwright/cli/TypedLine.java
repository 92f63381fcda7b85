package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Printable;
import java.util.ArrayList;
import java.util.List;

/**
 * A command line as a notebook keeps it.
 *
 * @param arguments the command and its arguments
 */
record TypedLine(List<String> arguments) {
  /** Copies the list. */
  TypedLine {
    arguments = List.copyOf(arguments);
  }

  /**
   * The command line without an option, and without its value when it takes one. What stands behind
   * {@code --} isn't an option.
   */
  TypedLine without(String option, boolean takesValue) {
    List<String> kept = new ArrayList<>();
    int end = arguments.contains("--") ? arguments.indexOf("--") : arguments.size();
    for (int i = 0; i < end; i++) {
      String argument = arguments.get(i);
      if (argument.equals(option)) {
        i += takesValue ? 1 : 0;
      } else if (!argument.startsWith(option + "=")) {
        kept.add(argument);
      }
    }
    kept.addAll(arguments.subList(end, arguments.size()));
    return new TypedLine(kept);
  }

  /** The command line as one types it in a shell. */
  String toText() {
    return String.join(" ", arguments.stream().map(TypedLine::quoted).toList());
  }

  /** An argument as one types it in a shell. */
  static String quoted(String argument) {
    return argument.matches("[-A-Za-z0-9_./%@:=,+]+")
        ? argument
        : "'" + Printable.oneLine(argument).replace("'", "'\\''") + "'";
  }
}
