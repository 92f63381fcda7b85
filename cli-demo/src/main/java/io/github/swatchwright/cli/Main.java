package io.github.swatchwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;

/** Runs one command. Text is UTF-8 whatever the platform's encoding. */
public final class Main {
  /** Exit status of a command that was done. */
  static final int DONE = 0;

  /** Exit status after a fault of the program itself. */
  static final int FAULT = 1;

  /** Exit status after wrong use or bad input. */
  static final int REFUSED = 2;

  private static final int HELP_WIDTH = 100;

  private Main() {}

  /** Runs the command that the arguments name, and ends the process with its exit status. */
  public static void main(String[] args) {
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    int status = run(args, out, err, TerminalColours.areWanted(System.getenv()));
    out.flush();
    err.flush();
    System.exit(status);
  }

  private static PrintStream utf8(FileDescriptor file) {
    return new PrintStream(new FileOutputStream(file), false, StandardCharsets.UTF_8);
  }

  /**
   * Runs a command.
   *
   * @param args the command and its arguments
   * @param out receives the result
   * @param err receives everything else
   * @param colourBlocks whether to show colours with a terminal's 24-bit escape sequences
   * @return the exit status: 0 done, 2 wrong use or bad input, 1 a fault of the program
   */
  static int run(String[] args, PrintStream out, PrintStream err, boolean colourBlocks) {
    CommandLine commandLine = commandLine(new Output(out, err, colourBlocks), args);
    try {
      CommandLine.ParseResult parsed = commandLine.parseArgs(args);
      while (parsed.hasSubcommand()) {
        parsed = parsed.subcommand();
      }
      CommandSpec command = parsed.commandSpec();
      if (parsed.isUsageHelpRequested()) {
        out.print(command.commandLine().getUsageMessage(Help.Ansi.OFF));
      } else {
        ((Command) command.userObject()).run();
      }
      return DONE;
    } catch (CommandLine.UnmatchedArgumentException e) {
      err.println("swatchwright: " + unmatched(e));
      return REFUSED;
    } catch (CommandLine.ParameterException | IllegalArgumentException e) {
      err.println("swatchwright: " + oneLine(e.getMessage()));
      return REFUSED;
    } catch (RuntimeException | Error e) {
      err.println(
          "swatchwright: internal fault, please report it: "
              + e.getClass().getSimpleName()
              + ": "
              + oneLine(e.getMessage()));
      return FAULT;
    }
  }

  /** When the first argument names a command, it is set up alone, which takes less time. */
  private static CommandLine commandLine(Output output, String[] args) {
    CommandLine commandLine = new CommandLine(new SwatchwrightCommand());
    Map<String, Function<Output, Command>> commands = commands();
    if (args.length > 0 && commands.containsKey(args[0])) {
      commands.keySet().retainAll(Set.of(args[0]));
    }
    commands.values().forEach(maker -> commandLine.addSubcommand(maker.apply(output)));
    return commandLine.setExpandAtFiles(false).setUsageHelpWidth(HELP_WIDTH);
  }

  private static Map<String, Function<Output, Command>> commands() {
    Map<String, Function<Output, Command>> commands = new LinkedHashMap<>();
    commands.put("compare", CompareCommand::new);
    commands.put("predict", PredictCommand::new);
    commands.put("match", MatchCommand::new);
    commands.put("reach", ReachCommand::new);
    commands.put("correct", CorrectCommand::new);
    commands.put("ladder", LadderCommand::new);
    commands.put("coat", CoatCommand::new);
    commands.put("sample", SampleCommand::new);
    commands.put("calibrate", CalibrateCommand::new);
    commands.put("shelf", ShelfCommand::new);
    return commands;
  }

  private static String unmatched(CommandLine.UnmatchedArgumentException e) {
    String argument = "'" + oneLine(e.getUnmatched().get(0)) + "'";
    CommandLine command = e.getCommandLine();
    String where = command.getCommandSpec().qualifiedName();
    if (e.isUnknownOption()) {
      return "there is no option " + argument + "; '" + where + " --help' lists them";
    }
    return command.getSubcommands().isEmpty()
        ? argument + " is one argument too many; '" + where + " --help' tells which there are"
        : "there is no command " + argument + "; '" + where + " --help' lists them";
  }

  private static String oneLine(@Nullable String message) {
    return String.valueOf(message).replaceAll("\\p{Cntrl}+", " ").strip();
  }
}
