package io.github.swatchwright.cli;

import java.io.Console;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Whether to show colours: on a terminal, unless the environment says no. */
final class TerminalColours {
  private TerminalColours() {}

  static boolean areWanted(Map<String, String> environment) {
    return environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !environment.getOrDefault("TERM", "dumb").equals("dumb")
        && isTerminal(System.console());
  }

  /** From Java 22 on there is a console even without a terminal, and it says so. */
  private static boolean isTerminal(@Nullable Console console) {
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }
}
