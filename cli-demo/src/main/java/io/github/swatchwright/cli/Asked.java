package io.github.swatchwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A command line as a notebook keeps it.
 *
 * @param arguments the command and its arguments
 */
record Asked(List<String> arguments) {
  /** Copies the list. */
  Asked {
    arguments = List.copyOf(arguments);
  }

  /** The command line without an option, and without its value when it takes one. */
  Asked without(String option, boolean takesValue) {
    List<String> kept = new ArrayList<>();
    for (int i = 0; i < arguments.size(); i++) {
      String argument = arguments.get(i);
      if (argument.equals(option)) {
        i += takesValue ? 1 : 0;
      } else if (!argument.startsWith(option + "=")) {
        kept.add(argument);
      }
    }
    return new Asked(kept);
  }

  /** The value of an option. */
  Optional<String> value(String option) {
    Optional<String> value = Optional.empty();
    for (int i = 0; i < arguments.size(); i++) {
      String argument = arguments.get(i);
      if (argument.startsWith(option + "=")) {
        value = Optional.of(argument.substring(option.length() + 1));
      } else if (argument.equals(option) && i + 1 < arguments.size()) {
        value = Optional.of(arguments.get(i + 1));
      }
    }
    return value;
  }

  /** The command line without the files that it wrote beside its result. */
  Asked withoutPictures() {
    return without("--card", true)
        .without("--plot", true)
        .without("--picture", true)
        .without("--table", true);
  }

  /** Whether what it does is to write a file. */
  boolean writesFile() {
    return value("--out").isPresent() || value("--export").isPresent();
  }

  /** The command line with more arguments at its end. */
  Asked with(String... more) {
    List<String> all = new ArrayList<>(arguments);
    all.addAll(List.of(more));
    return new Asked(all);
  }

  /** The command line as one types it in a shell. */
  String toText() {
    return String.join(" ", arguments.stream().map(Asked::quoted).toList());
  }

  private static String quoted(String argument) {
    return argument.matches("[-A-Za-z0-9_./%@:=,+]+")
        ? argument
        : "'" + argument.replaceAll("\\p{Cntrl}", " ").replace("'", "'\\''") + "'";
  }
}
