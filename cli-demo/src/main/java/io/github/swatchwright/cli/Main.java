package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.cli.file.FileArguments;
import io.github.swatchwright.cli.file.FileWrites;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.file.NotebookFile;
import io.github.swatchwright.cli.terminal.Terminal;
import io.github.swatchwright.exchange.BadLinesException;
import io.github.swatchwright.json.NotebookEntry;
import java.io.ByteArrayOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Runs one command. Text is UTF-8 whatever the platform's encoding. */
public final class Main {
  /** Exit status of a command that was done. */
  static final int DONE = 0;

  /** Exit status after a fault of the program itself. */
  static final int FAULT = 1;

  /** Exit status after wrong use or bad input. */
  static final int REFUSED = 2;

  /** Messages are cut off here, so that no list of numbers fills the screen. */
  private static final int LONGEST_MESSAGE = 1000;

  private static final int HELP_WIDTH = 80;

  /** Narrower help than this can't be laid out. */
  private static final int NARROWEST_HELP = 60;

  private Main() {}

  /** Runs the command that the arguments name, and ends the process with its exit status. */
  public static void main(String[] args) {
    PrintStream err =
        new PrintStream(new FileOutputStream(FileDescriptor.err), false, StandardCharsets.UTF_8);
    int status = run(args, new FileOutputStream(FileDescriptor.out), err, Terminal.ofProcess());
    err.flush();
    // Ending by itself leaves an interrupted program to the one who interrupted it.
    if (status != DONE) {
      System.exit(status);
    }
  }

  /**
   * Runs a command.
   *
   * @param args the command and its arguments
   * @param out receives the result, as a whole and only when all files are written
   * @param err receives everything else
   * @param terminal what the result is shown on
   * @return the exit status: 0 done, 2 wrong use or bad input, 1 a fault of the program
   */
  static int run(String[] args, OutputStream out, PrintStream err, Terminal terminal) {
    try {
      ByteArrayOutputStream result = new ByteArrayOutputStream();
      PrintStream print = new PrintStream(result, false, StandardCharsets.UTF_8);
      run(Output.of(print, err, terminal, new TypedLine(List.of(args))));
      print.flush();
      ResultStream.write(out, result.toByteArray());
      return DONE;
    } catch (BadLinesException e) {
      complain(err, e.summary());
      e.listed().forEach(line -> err.println("  " + Printable.oneLine(line)));
      return REFUSED;
    } catch (CommandLine.ParameterException e) {
      complain(err, UsageMessage.of(e));
      return REFUSED;
    } catch (IllegalArgumentException e) {
      complain(err, String.valueOf(e.getMessage()));
      return REFUSED;
    } catch (OutOfMemoryError e) {
      complain(
          err,
          "there isn't enough memory for this (OutOfMemoryError): Java may use "
              + (Runtime.getRuntime().maxMemory() >> 20)
              + " MB; SWATCHWRIGHT_MEMORY=1g, set for the launcher, allows more");
      return FAULT;
    } catch (RuntimeException | Error e) {
      complain(
          err,
          "internal fault, please report it: "
              + e.getClass().getSimpleName()
              + ": "
              + e.getMessage());
      return FAULT;
    }
  }

  private static void complain(PrintStream err, String message) {
    err.println("swatchwright: " + Printable.oneLine(message, LONGEST_MESSAGE).strip());
  }

  /**
   * Runs the command that was typed, and writes its files.
   *
   * @throws CommandLine.ParameterException after wrong use
   * @throws IllegalArgumentException when an argument or a file can't be taken
   */
  static void run(Output output) {
    CommandLine.ParseResult parsed = parse(output, output.typed());
    CommandSpec command = parsed.commandSpec();
    if (parsed.isUsageHelpRequested()) {
      output.ownText(command.commandLine().getUsageMessage(Help.Ansi.OFF));
      return;
    }
    if (parsed.isVersionHelpRequested()) {
      output.line("swatchwright %s", NotebookEntry.LIBRARY_VERSION);
      return;
    }
    FileArguments.of(parsed).check();
    try (FileWrites files = output.files()) {
      ((Command) command.userObject()).run();
      files.commit();
    }
  }

  /**
   * A command line, parsed by the command that it names.
   *
   * @throws CommandLine.ParameterException after wrong use
   */
  static CommandLine.ParseResult parse(Output output, TypedLine typed) {
    String[] args = typed.arguments().toArray(String[]::new);
    CommandLine.ParseResult parsed = commandLine(output, args).parseArgs(args);
    while (parsed.hasSubcommand()) {
      parsed = parsed.subcommand();
    }
    return parsed;
  }

  /** When the first argument names a command, it is set up alone, which takes less time. */
  private static CommandLine commandLine(Output output, String[] args) {
    Map<String, Function<Output, Command>> commands = commands();
    if (args.length > 0 && commands.containsKey(args[0])) {
      commands.keySet().retainAll(Set.of(args[0]));
    }
    return commandLine(output, commands);
  }

  /** All commands. */
  static CommandLine commandLine(Output output) {
    return commandLine(output, commands());
  }

  private static CommandLine commandLine(
      Output output, Map<String, Function<Output, Command>> commands) {
    CommandLine commandLine = new CommandLine(new SwatchwrightCommand());
    commands.values().forEach(maker -> commandLine.addSubcommand(maker.apply(output)));
    commandLine
        .getSubcommands()
        .values()
        .forEach(one -> layOut(one.getCommandSpec().usageMessage(), helpWidth(output)));
    return commandLine
        .registerConverter(GivenFile.class, text -> new GivenFile(path(text)))
        .registerConverter(NewFile.class, text -> new NewFile(path(text)))
        .registerConverter(NotebookFile.class, text -> new NotebookFile(path(text)))
        .setExpandAtFiles(false)
        .setUsageHelpWidth(helpWidth(output));
  }

  private static void layOut(UsageMessageSpec help, int width) {
    help.abbreviateSynopsis(true);
    help.footer(HelpExample.wrapped(help.footer(), width));
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new CommandLine.TypeConversionException("'" + text + "' can't be the name of a file");
    }
  }

  private static int helpWidth(Output output) {
    return Math.max(NARROWEST_HELP, Math.min(HELP_WIDTH, output.terminal().width()));
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
    commands.put("plan", PlanCommand::new);
    commands.put("sample", SampleCommand::new);
    commands.put("sheet", SheetCommand::new);
    commands.put("calibrate", CalibrateCommand::new);
    commands.put("shelf", ShelfCommand::new);
    commands.put("notebook", NotebookCommand::new);
    commands.put("completion", CompletionCommand::new);
    return commands;
  }
}
