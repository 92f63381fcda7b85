package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.cli.file.FileWrites;
import io.github.swatchwright.cli.terminal.Lines;
import io.github.swatchwright.cli.terminal.ProgressBar;
import io.github.swatchwright.cli.terminal.ScreenText;
import io.github.swatchwright.cli.terminal.Terminal;
import io.github.swatchwright.cli.terminal.TerminalColours;
import io.github.swatchwright.cli.terminal.TextTable;
import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.mix.Control;
import java.io.PrintStream;
import java.time.Clock;
import java.util.Locale;
import java.util.function.Function;

/**
 * Where the results of one command line go.
 *
 * @param out collects the result, which is printed when the command is done
 * @param err standard error
 * @param terminal what standard output is shown on
 * @param screen makes text from outside fit for the terminal
 * @param files writes files when the command is done
 * @param typed the command line
 * @param clock tells the date of a notebook's entry
 */
record Output(
    PrintStream out,
    PrintStream err,
    Terminal terminal,
    ScreenText screen,
    FileWrites files,
    TypedLine typed,
    Clock clock) {
  /** More threads than that hardly make anything faster. */
  private static final int MOST_THREADS = 8;

  /** For the result of a command line. */
  static Output of(PrintStream out, PrintStream err, Terminal terminal, TypedLine typed) {
    ScreenText screen = new ScreenText(terminal.colours());
    return new Output(out, err, terminal, screen, new FileWrites(), typed, Clock.systemUTC());
  }

  /** The same place for the result of another command line. */
  Output asking(TypedLine other) {
    return new Output(out, err, terminal, screen, new FileWrites(), other, clock);
  }

  /** Prints a line, broken where the terminal is narrower. */
  void line(String text) {
    Lines.of(screen.line(text), terminal.width()).forEach(line -> out.print(line + "\n"));
  }

  /** Prints a formatted line; numbers have a decimal point whatever the locale. */
  void line(String format, Object... values) {
    line(String.format(Locale.ROOT, format, values));
  }

  /** Prints the head and the rows of a table. */
  void table(TextTable table) {
    table.lines(terminal.width()).forEach(this::line);
  }

  /** Prints a line that is no part of the result. */
  void note(String text) {
    err.print("swatchwright: note: " + Printable.oneLine(text) + "\n");
  }

  /**
   * Does a long call on all processors, with a bar on standard error where that is a terminal which
   * shows colours.
   */
  <T> T withProgress(Function<Control, T> call) {
    Control control =
        Control.PLAIN.withThreads(
            Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
    if (terminal.colours() == TerminalColours.NONE) {
      return call.apply(control);
    }
    try (ProgressBar bar = new ProgressBar(err, System::nanoTime)) {
      return call.apply(control.withProgress(bar));
    }
  }

  /** Prints a JSON document, with escapes for what can't be shown. */
  void json(String document) {
    out.print(Printable.json(document));
  }

  /** Prints this program's own text, which has its own line ends: help, and scripts for shells. */
  void ownText(String text) {
    out.print(text);
  }

  /**
   * A block of the colour and a space, or nothing where colours aren't shown; for {@link #line} and
   * {@link #table}.
   */
  String block(Lab colour) {
    return screen.block(displayed(colour));
  }

  /** The colour in both notations, and a word when a display can't show it. */
  static String notation(Lab colour) {
    return hex(colour) + "  " + numbers(colour);
  }

  /** The colour as a display shows it best. */
  static String hex(Lab colour) {
    return displayed(colour).toHex();
  }

  /** The colour in CIELAB, and a word when a display can't show it. */
  static String numbers(Lab colour) {
    String text = colour.toText();
    return colour.toSrgb().isDisplayable() ? text : text + "  (too strong for a display)";
  }

  private static Srgb displayed(Lab colour) {
    return colour.toSrgb().fit(GamutPolicy.REDUCE_CHROMA);
  }
}
