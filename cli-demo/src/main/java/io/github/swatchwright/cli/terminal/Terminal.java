package io.github.swatchwright.cli.terminal;

import java.io.Console;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the results are shown on.
 *
 * @param colours how it shows colours
 * @param width characters in a line; {@link #ENDLESS} for files
 */
public record Terminal(TerminalColours colours, int width) {
  /** A file's lines may have any length. */
  public static final int ENDLESS = Integer.MAX_VALUE;

  /** The width of a terminal that doesn't state one. */
  public static final int USUAL_WIDTH = 100;

  private static final int NARROWEST = 40;

  /** A file or a pipe. */
  public static final Terminal FILE = new Terminal(TerminalColours.NONE, ENDLESS);

  /** The terminal, file or pipe that the process writes to. */
  public static Terminal ofProcess() {
    return of(System.getenv(), isTerminal(System.console()));
  }

  /**
   * A terminal as the environment describes it: {@code COLUMNS} is its width, from 40 on.
   *
   * @param environment the process's variables
   * @param isTerminal whether someone looks at the output
   */
  public static Terminal of(Map<String, String> environment, boolean isTerminal) {
    String columns = environment.getOrDefault("COLUMNS", "");
    int otherwise = isTerminal ? USUAL_WIDTH : ENDLESS;
    int width =
        columns.matches("[0-9]{1,4}") ? Math.max(NARROWEST, Integer.parseInt(columns)) : otherwise;
    return new Terminal(TerminalColours.of(environment, isTerminal), width);
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
