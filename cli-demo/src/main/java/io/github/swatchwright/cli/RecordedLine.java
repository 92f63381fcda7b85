package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.FileArguments;
import io.github.swatchwright.cli.file.GivenFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * A command line from a notebook as it may be run again: its command, its arguments, and the
 * options that only read. A notebook may come from someone else, so every option that changes a
 * file is left out, whatever its name: the type of the option tells.
 *
 * @param command the command
 * @param options options with their values, {@code --name=value}
 * @param arguments the other arguments
 * @param leftOut options that would have changed files, as they were recorded
 */
record RecordedLine(
    String command, List<String> options, List<String> arguments, List<String> leftOut) {
  private static final String SHELF = "--shelf=";

  /**
   * Reads a recorded line.
   *
   * @throws IllegalArgumentException when it names a file to read that isn't a plain file, or is of
   *     the command that repeats
   * @throws picocli.CommandLine.ParameterException when no command has these options
   */
  static RecordedLine of(TypedLine recorded, Output output) {
    ParseResult parsed = Main.parse(output, recorded);
    CommandSpec spec = parsed.commandSpec();
    if (spec.userObject() instanceof NotebookCommand || spec.parent() == null) {
      throw new IllegalArgumentException(
          "'swatchwright " + recorded.toText() + "' can't be repeated from a notebook");
    }
    FileArguments.of(parsed).checkPlain();
    List<String> options = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    for (OptionSpec option : spec.options()) {
      if (parsed.hasMatchedOption(option)) {
        (FileArguments.changesFiles(option) ? leftOut : options).addAll(texts(option));
      }
    }
    List<String> arguments = new ArrayList<>();
    for (PositionalParamSpec argument : spec.positionalParameters()) {
      arguments.addAll(argument.originalStringValues());
    }
    return new RecordedLine(spec.name(), options, arguments, leftOut);
  }

  private static List<String> texts(OptionSpec option) {
    return option.arity().max() == 0
        ? List.of(option.longestName())
        : option.originalStringValues().stream()
            .map(value -> option.longestName() + "=" + value)
            .toList();
  }

  /** The shelf that it names. */
  Optional<GivenFile> shelf() {
    return options.stream()
        .filter(option -> option.startsWith(SHELF))
        .map(option -> new GivenFile(Path.of(option.substring(SHELF.length()))))
        .findFirst();
  }

  /** The same question to that shelf, in that form. */
  RecordedLine asking(GivenFile shelf) {
    List<String> changed = new ArrayList<>(options);
    changed.removeIf(option -> option.startsWith(SHELF));
    changed.add(SHELF + shelf.path());
    return new RecordedLine(command, changed, arguments, leftOut);
  }

  /** The same with one more option. */
  RecordedLine with(String option) {
    List<String> more = new ArrayList<>(options);
    more.add(option);
    return new RecordedLine(command, more, arguments, leftOut);
  }

  /** The line to run. Arguments that look like options stand behind {@code --}. */
  TypedLine toTypedLine() {
    List<String> line = new ArrayList<>();
    line.add(command);
    line.addAll(options);
    if (arguments.stream().anyMatch(argument -> argument.startsWith("-"))) {
      line.add("--");
    }
    line.addAll(arguments);
    return new TypedLine(line);
  }
}
