package io.github.swatchwright.cli;

import io.github.swatchwright.argument.NearestWord;
import io.github.swatchwright.argument.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What a painter is told who used a command wrongly, in one line. */
final class UsageMessage {
  private static final Map<Class<?>, String> KINDS =
      Map.of(
          boolean.class,
          "left without a value",
          int.class,
          "a whole number",
          Integer.class,
          "a whole number",
          double.class,
          "a number, with a point before decimals",
          Double.class,
          "a number, with a point before decimals");

  private UsageMessage() {}

  /** The line for what the parser of arguments refuses. */
  static String of(CommandLine.ParameterException refused) {
    if (refused instanceof CommandLine.UnmatchedArgumentException unmatched) {
      return unmatched(unmatched);
    }
    if (refused instanceof CommandLine.MissingParameterException missing) {
      return missing(missing);
    }
    if (refused instanceof CommandLine.OverwrittenOptionException twice) {
      return name(twice.getOverwritten()) + " is given twice, may be given once";
    }
    return value(refused.getArgSpec(), refused.getValue())
        .orElseGet(() -> String.valueOf(refused.getMessage()));
  }

  /** What is wrong with a value that can't be read as its argument's type. */
  private static Optional<String> value(@Nullable ArgSpec argument, @Nullable String value) {
    if (argument == null || value == null) {
      return Optional.empty();
    }
    return Optional.ofNullable(KINDS.get(argument.type()))
        .map(kind -> name(argument) + " is " + Printable.quoted(value) + ", must be " + kind);
  }

  private static String missing(CommandLine.MissingParameterException missing) {
    String names =
        missing.getMissing().stream().map(UsageMessage::whole).collect(Collectors.joining(", "));
    String where = missing.getCommandLine().getCommandSpec().qualifiedName();
    boolean value = String.valueOf(missing.getMessage()).contains("for option");
    return value
        ? whole(missing.getMissing().get(0)) + ": the value is missing"
        : "missing: " + names + "; '" + where + " --help' shows an example";
  }

  private static String name(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }

  private static String whole(ArgSpec argument) {
    return argument instanceof OptionSpec option
        ? option.longestName() + " " + option.paramLabel()
        : argument.paramLabel();
  }

  private static String unmatched(CommandLine.UnmatchedArgumentException e) {
    String typed = e.getUnmatched().get(0);
    CommandLine command = e.getCommandLine();
    String help = "'" + command.getCommandSpec().qualifiedName() + " --help'";
    if (e.isUnknownOption()) {
      return "there is no option "
          + Printable.quoted(typed)
          + nearest(typed.replaceFirst("=.*", ""), options(command))
          + "; "
          + help
          + " lists them";
    }
    if (command.getSubcommands().isEmpty()) {
      return Printable.quoted(typed)
          + " is one argument too many; quote what has blanks in it, "
          + help
          + " tells what is asked for";
    }
    List<String> commands = List.copyOf(command.getSubcommands().keySet());
    return "there is no command "
        + Printable.quoted(typed)
        + nearest(typed, commands)
        + "; "
        + help
        + " lists them";
  }

  private static List<String> options(CommandLine command) {
    List<String> names = new ArrayList<>();
    command.getCommandSpec().options().forEach(option -> names.add(option.longestName()));
    return names;
  }

  /** A beginning of a word, or one with slips of the keyboard. */
  private static String nearest(String typed, List<String> words) {
    List<String> begun = words.stream().filter(word -> word.startsWith(typed)).toList();
    int letters = typed.replace("-", "").length();
    return (begun.size() == 1
            ? begun.stream().findFirst()
            : NearestWord.to(typed, words, Math.max(1, letters / 3)))
        .map(word -> "; nearest is '" + word + "'")
        .orElse("");
  }
}
