package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.file.Endings;
import io.github.swatchwright.cli.file.FileArguments;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.terminal.Terminal;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What holds for every command and every option that there is, also those that come later. */
class EveryCommandTest {
  /** The arguments that a command can't do without; {@code *} stands for a folder. */
  private static final List<String> LEAST =
      List.of(
          "compare #808080 #828282",
          "predict White:2",
          "match #8A4B2A --max-drops 3",
          "reach #8A4B2A --catalogue */shelf.json",
          "correct White:6,Black:2 --measured #C3907F --target #B47A68",
          "ladder Black White --rungs 3",
          "coat --base #808080 --coats White:2",
          "plan */plan.json",
          "sample */photo.png",
          "calibrate */cards.json --out */better.json",
          "shelf",
          "sheet --names Grey --out */sheet.html",
          "notebook */notes.jsonl");

  private static Stream<CommandSpec> commands() {
    Output output =
        Output.of(
            new PrintStream(PrintStream.nullOutputStream(), false, StandardCharsets.UTF_8),
            new PrintStream(PrintStream.nullOutputStream(), false, StandardCharsets.UTF_8),
            Terminal.FILE,
            new TypedLine(List.of()));
    return Main.commandLine(output).getSubcommands().values().stream()
        .map(command -> command.getCommandSpec());
  }

  private static Stream<ArgSpec> arguments(CommandSpec command) {
    return command.args().stream();
  }

  /** Each option that changes a file, with a command that has it. */
  static Stream<String[]> writingOptions() {
    return commands()
        .flatMap(
            command ->
                command.options().stream()
                    .filter(FileArguments::changesFiles)
                    .map(option -> new String[] {command.name(), option.longestName()}));
  }

  @Test
  void everyFileIsDeclaredByWhatHappensToIt() {
    // Use GivenFile, NewFile or NotebookFile: by these types files are checked before any work,
    // written wholly or not at all, and left out when someone else's notebook is repeated.
    commands()
        .flatMap(EveryCommandTest::arguments)
        .forEach(
            argument ->
                assertThat(FileArguments.elementType(argument))
                    .as("type of %s", argument)
                    .isNotIn(Path.class, File.class));
  }

  @Test
  void everyNewFileOfSeveralFormatsSaysWhichEndingsItMayHave() {
    commands()
        .flatMap(command -> command.options().stream())
        .filter(option -> FileArguments.elementType(option) == NewFile.class)
        .filter(option -> !option.longestName().equals("--out"))
        .forEach(
            option ->
                assertThat(((Field) option.userObject()).isAnnotationPresent(Endings.class))
                    .as(option.longestName())
                    .isTrue());
  }

  @Test
  void everyCommandIsTriedHere() {
    List<String> tried =
        LEAST.stream()
            .map(
                line ->
                    line.substring(0, line.indexOf(' ') < 0 ? line.length() : line.indexOf(' ')))
            .toList();
    assertThat(commands().map(CommandSpec::name))
        .allMatch(name -> tried.contains(name) || name.equals("completion"));
  }

  private static String[] line(String command, Path folder) {
    return LEAST.stream()
        .filter(line -> line.equals(command) || line.startsWith(command + " "))
        .findFirst()
        .orElseThrow(() -> new AssertionError("add a line for " + command))
        .replace("*", folder.toString())
        .split(" ", -1);
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("writingOptions")
  void aFileThatCannotBeWrittenIsRefusedBeforeAnyWork(
      String command, String option, @TempDir Path folder) throws IOException {
    Files.copy(Path.of(Run.fiveShelf()), folder.resolve("shelf.json"));
    String[] least = line(command, folder);
    // The option's own value, when it is among the least that the command takes, comes last.
    List<String> args = new ArrayList<>(List.of(least));
    if (args.contains(option)) {
      int at = args.indexOf(option);
      args.remove(at + 1);
      args.remove(at);
    }
    String ending = ending(command, option);
    for (String place : new String[] {"none/a." + ending, "folder." + ending}) {
      Files.createDirectories(folder.resolve("folder." + ending));
      String file = folder.resolve(place).toString();

      Run run = Run.of(Run.with(args.toArray(String[]::new), option, file));

      assertThat(run.err()).startsWith("swatchwright: " + option + ": ");
      assertThat(run.err().lines()).hasSize(1);
      assertThat(run.out()).isEmpty();
      assertThat(run.status()).isEqualTo(2);
    }
  }

  private static String ending(String command, String name) {
    OptionSpec option =
        commands()
            .filter(spec -> spec.name().equals(command))
            .map(spec -> spec.findOption(name))
            .findFirst()
            .orElseThrow();
    Endings endings = ((Field) option.userObject()).getAnnotation(Endings.class);
    return endings == null ? "json" : endings.value()[0];
  }
}
