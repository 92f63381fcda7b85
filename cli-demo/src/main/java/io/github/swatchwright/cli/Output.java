package io.github.swatchwright.cli;

import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import java.io.PrintStream;
import java.time.Clock;
import java.util.Locale;

/**
 * Where the results of one command line go.
 *
 * @param out standard output
 * @param err standard error
 * @param colourBlocks whether it is a terminal that shows colours
 * @param asked the command line
 * @param clock tells the date of a notebook's entry
 */
record Output(PrintStream out, PrintStream err, boolean colourBlocks, Asked asked, Clock clock) {

  /** The same place for the result of another command line. */
  Output asking(Asked other) {
    return new Output(out, err, colourBlocks, other, clock);
  }

  /** Prints a line. */
  void line(String text) {
    out.print(text + "\n");
  }

  /** Prints a formatted line; numbers have a decimal point whatever the locale. */
  void line(String format, Object... values) {
    line(String.format(Locale.ROOT, format, values));
  }

  /** Prints a line that is no part of the result. */
  void note(String text) {
    err.print("swatchwright: note: " + text + "\n");
  }

  /** Prints text that has its own line ends. */
  void text(String text) {
    out.print(text);
  }

  /** A block of the colour and a space, or nothing where colours aren't shown. */
  String block(Lab colour) {
    if (!colourBlocks) {
      return "";
    }
    int rgb = displayed(colour).toPacked();
    return String.format(
        Locale.ROOT,
        "\u001B[48;2;%d;%d;%dm      \u001B[0m ",
        rgb >> 16 & 0xFF,
        rgb >> 8 & 0xFF,
        rgb & 0xFF);
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
