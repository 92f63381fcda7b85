package io.github.swatchwright.cli;

import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.mix.Progress;
import java.io.PrintStream;
import java.util.Locale;
import java.util.function.Function;

/**
 * Where results go.
 *
 * @param out standard output
 * @param err standard error
 * @param colourBlocks whether it is a terminal that shows colours
 */
record Output(PrintStream out, PrintStream err, boolean colourBlocks) {

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

  /**
   * Does a long call, with a bar on standard error where that is a terminal which shows colours.
   */
  <T> T withProgress(Function<Progress, T> call) {
    if (!colourBlocks) {
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
