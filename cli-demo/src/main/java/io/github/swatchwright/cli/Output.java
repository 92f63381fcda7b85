package io.github.swatchwright.cli;

import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.mix.Progress;
import java.io.PrintStream;
import java.time.Clock;
import java.util.Locale;
import java.util.function.Function;

/**
 * Where the results of one command line go.
 *
 * @param out standard output
 * @param err standard error
 * @param terminal what standard output is shown on
 * @param asked the command line
 * @param clock tells the date of a notebook's entry
 */
record Output(PrintStream out, PrintStream err, Terminal terminal, Asked asked, Clock clock) {

  /** The same place for the result of another command line. */
  Output asking(Asked other) {
    return new Output(out, err, terminal, other, clock);
  }

  /** Prints a line, broken where the terminal is narrower. */
  void line(String text) {
    Lines.of(text, terminal.width()).forEach(line -> out.print(line + "\n"));
  }

  /** Prints a formatted line; numbers have a decimal point whatever the locale. */
  void line(String format, Object... values) {
    line(String.format(Locale.ROOT, format, values));
  }

  /** Prints a line that is no part of the result. */
  void note(String text) {
    err.print("swatchwright: note: " + text + "\n");
  }

  /**
   * Does a long call, with a bar on standard error where that is a terminal which shows colours.
   */
  <T> T withProgress(Function<Progress, T> call) {
    if (terminal.colours() == TerminalColours.NONE) {
      return call.apply(Progress.UNHEARD);
    }
    try (ProgressBar bar = new ProgressBar(err, System::nanoTime)) {
      return call.apply(bar);
    }
  }

  /** Prints text that has its own line ends. */
  void text(String text) {
    out.print(text);
  }

  /** A block of the colour and a space, or nothing where colours aren't shown. */
  String block(Lab colour) {
    return terminal.colours().block(displayed(colour));
  }

  /** The colour in both notations, and a word when a display can't show it. */
  static String notation(Lab colour) {
    String text = displayed(colour).toHex() + "  " + colour.toText();
    return colour.toSrgb().isDisplayable() ? text : text + "  (too strong for a display)";
  }

  private static Srgb displayed(Lab colour) {
    return colour.toSrgb().fit(GamutPolicy.REDUCE_CHROMA);
  }
}
