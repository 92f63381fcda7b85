package io.github.swatchwright.cli;

import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Prints what a shell needs to complete commands and options. */
@CommandLine.Command(
    name = "completion",
    description = "Prints a script by which bash and zsh complete commands and options.",
    footer = {"", "Example, for this session:", "  . <(swatchwright completion)"})
final class CompletionCommand implements Command {
  private final Output output;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  boolean help;

  CompletionCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    output.ownText(AutoComplete.bash("swatchwright", Main.commandLine(output)));
  }
}
