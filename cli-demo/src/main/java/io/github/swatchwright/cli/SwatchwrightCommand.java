package io.github.swatchwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Option;

/** The program without a command: it only has help. */
@CommandLine.Command(
    name = "swatchwright",
    synopsisSubcommandLabel = "COMMAND",
    description = "Finds the paint mix for a colour, from the bottles you own.",
    footer = {
      "",
      "A colour is #RRGGBB, lab(L, a, b), photo.jpg@x,y,w,h, or the name of a paint on the shelf.",
      "A mix is \"Name:3, Other name:1\"; the numbers are drops.",
      "",
      "Example:",
      "  swatchwright match '#8A4B2A'"
    })
final class SwatchwrightCommand implements Command {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  boolean help;

  @Override
  public void run() {
    throw new IllegalArgumentException(
        "name a command: compare, predict, match, reach, correct, ladder, coat, sample, calibrate or "
            + "shelf; swatchwright --help tells what they do");
  }
}
