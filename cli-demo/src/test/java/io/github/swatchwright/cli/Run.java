package io.github.swatchwright.cli;

import io.github.swatchwright.cli.terminal.Terminal;
import io.github.swatchwright.cli.terminal.TerminalColours;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What a command did.
 *
 * @param status its exit status
 * @param out what it printed as its result
 * @param err what else it printed
 */
record Run(int status, String out, String err) {

  /** Runs a command as if its output were a file. */
  static Run of(String... args) {
    return of(Terminal.FILE, args);
  }

  /** The arguments with more at their end. */
  static String[] with(String[] arguments, String... more) {
    return Stream.concat(Arrays.stream(arguments), Arrays.stream(more)).toArray(String[]::new);
  }

  /** Runs a command as if on a terminal that shows colours. */
  static Run onTerminal(String... args) {
    return of(new Terminal(TerminalColours.TRUE, Terminal.USUAL_WIDTH), args);
  }

  /** Runs a command as if on that terminal. */
  static Run of(Terminal terminal, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status;
    try (PrintStream printOut = new PrintStream(out, true, StandardCharsets.UTF_8);
        PrintStream printErr = new PrintStream(err, true, StandardCharsets.UTF_8)) {
      status = Main.run(args, printOut, printErr, terminal);
    }
    return new Run(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** The path of a shelf of five invented paints. */
  static String fiveShelf() {
    try {
      return Path.of(Objects.requireNonNull(Run.class.getResource("five.shelf.json")).toURI())
          .toString();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
