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
      "A colour is the name of a paint on the shelf, #RRGGBB, rgb(r, g, b), a colour",
      "name of CSS, lab(L, a, b), or a place in a photo, photo.jpg@x,y,w,h.",
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

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Show the version.")
  boolean version;

  @Override
  public void run() {
    throw new IllegalArgumentException("name a command; 'swatchwright --help' lists them");
  }
}
