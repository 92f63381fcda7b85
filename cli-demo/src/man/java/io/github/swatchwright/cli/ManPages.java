package io.github.swatchwright.cli;

import io.github.swatchwright.json.NotebookEntry;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/** Writes the manual as AsciiDoc, a page for each command, from what {@code --help} tells. */
public final class ManPages {
  private static final int LINE = 80;

  private ManPages() {}

  /** Its argument is the folder to write to. */
  public static void main(String[] args) throws IOException {
    File folder = Files.createDirectories(Path.of(args[0])).toFile();
    Terminal terminal = new Terminal(TerminalColours.NONE, LINE);
    Output output =
        new Output(System.out, System.err, terminal, new TypedLine(List.of()), Clock.systemUTC());
    CommandSpec program = Main.commandLine(output).getCommandSpec();
    program.version(NotebookEntry.LIBRARY_VERSION);
    for (CommandLine command : program.subcommands().values()) {
      command.getCommandSpec().version(program.version());
    }
    int status = ManPageGenerator.generateManPage(folder, null, new boolean[0], true, program);
    if (status != CommandLine.ExitCode.OK) {
      throw new IOException("the manual wasn't written, status " + status);
    }
  }
}
