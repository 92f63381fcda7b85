package io.github.swatchwright.cli.file;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * The files that a command line names, found by the types of its options, and refused before any
 * work when they can't be what they are asked to be.
 */
public final class FileArguments {
  private final List<Use> uses;

  private FileArguments(List<Use> uses) {
    this.uses = uses;
  }

  /** What happens to a file. */
  private enum Kind {
    READ,
    WRITTEN,
    NOTEBOOK_READ,
    NOTEBOOK_GROWN;

    boolean changes() {
      return this == WRITTEN || this == NOTEBOOK_GROWN;
    }

    boolean isNotebook() {
      return this == NOTEBOOK_READ || this == NOTEBOOK_GROWN;
    }
  }

  private record Use(String argument, Path path, Kind kind, List<String> endings) {}

  /** Whether an argument's file is changed by its command. */
  public static boolean changesFiles(ArgSpec argument) {
    Class<?> type = elementType(argument);
    return type == NewFile.class || (type == NotebookFile.class && argument.isOption());
  }

  /** The type of an argument, or of its elements when it is a list. */
  public static Class<?> elementType(ArgSpec argument) {
    return argument.auxiliaryTypes().length > 0
        ? argument.auxiliaryTypes()[0]
        : argument.typeInfo().getType();
  }

  /** The files of a command line that was parsed. */
  public static FileArguments of(ParseResult parsed) {
    List<Use> uses = new ArrayList<>();
    for (ArgSpec argument : parsed.matchedArgs()) {
      Object value = argument.getValue();
      Collection<?> values = value instanceof Collection<?> many ? many : List.of(value);
      for (Object one : values) {
        use(argument, one).ifPresent(uses::add);
      }
    }
    return new FileArguments(uses);
  }

  private static Optional<Use> use(ArgSpec argument, @Nullable Object value) {
    String name = name(argument);
    if (value instanceof NewFile file) {
      return Optional.of(new Use(name, file.path(), Kind.WRITTEN, endings(argument)));
    }
    if (value instanceof NotebookFile file) {
      Kind kind = argument.isOption() ? Kind.NOTEBOOK_GROWN : Kind.NOTEBOOK_READ;
      return Optional.of(new Use(name, file.path(), kind, List.of()));
    }
    if (value instanceof GivenFile file) {
      return Optional.of(new Use(name, file.path(), Kind.READ, List.of()));
    }
    return value instanceof String text
        ? beforeRegion(text).map(path -> new Use(name, path, Kind.READ, List.of()))
        : Optional.empty();
  }

  /** The photo or chart of an argument such as {@code photo.jpg@10,20,5,5}. */
  private static Optional<Path> beforeRegion(String text) {
    int at = text.lastIndexOf('@');
    if (at < 1) {
      return Optional.empty();
    }
    try {
      return Optional.of(Path.of(text.substring(0, at))).filter(Files::exists);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static String name(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }

  private static List<String> endings(ArgSpec argument) {
    Endings endings =
        argument.userObject() instanceof Field field ? field.getAnnotation(Endings.class) : null;
    return endings == null ? List.of() : List.of(endings.value());
  }

  /**
   * Refuses what can't be done: an ending that tells no format, a place that can't be written, and
   * a file that is to be written and is something else as well.
   *
   * @throws IllegalArgumentException when it is refused
   */
  public void check() {
    for (Use use : uses) {
      if (use.kind.changes()) {
        checkEnding(use);
        TargetFile.of(use.argument, use.path);
      }
    }
    for (int i = 0; i < uses.size(); i++) {
      for (int k = 0; k < i; k++) {
        checkPair(uses.get(k), uses.get(i));
      }
    }
  }

  private static void checkEnding(Use use) {
    if (!use.endings.isEmpty() && !use.endings.contains(GivenFile.ending(use.path))) {
      throw new IllegalArgumentException(
          use.argument + ": " + use.path + " must end in " + inWords(use.endings));
    }
  }

  private static String inWords(List<String> endings) {
    int last = endings.size() - 1;
    String end = "." + endings.get(last);
    return last == 0 ? end : "." + String.join(", .", endings.subList(0, last)) + " or " + end;
  }

  private static void checkPair(Use one, Use other) {
    boolean clash =
        (one.kind.changes() || other.kind.changes())
            && !(one.kind.isNotebook() && other.kind.isNotebook());
    if (clash && place(one).equals(place(other))) {
      boolean otherIsWritten = other.kind.changes();
      Use written = otherIsWritten ? other : one;
      Use also = otherIsWritten ? one : other;
      throw new IllegalArgumentException(
          written.argument
              + ": "
              + written.path
              + " is "
              + also.argument
              + " as well, must be another file");
    }
  }

  /** Where a path leads, whether there is a file or not. */
  private static Path place(Use use) {
    if (use.kind.changes()) {
      return TargetFile.of(use.argument, use.path).file();
    }
    Path absolute = use.path.toAbsolutePath().normalize();
    try {
      if (Files.exists(absolute)) {
        return absolute.toRealPath();
      }
      Path folder = absolute.getParent();
      return folder == null ? absolute : folder.toRealPath().resolve(absolute.getFileName());
    } catch (IOException e) {
      return absolute;
    }
  }

  /**
   * Refuses files to be read that aren't plain files. A recorded command line could name a pipe
   * that never ends.
   *
   * @throws IllegalArgumentException when one is something else
   */
  public void checkPlain() {
    for (Use use : uses) {
      if (!use.kind.changes() && Files.exists(use.path) && !Files.isRegularFile(use.path)) {
        throw new IllegalArgumentException(
            use.argument + ": " + use.path + " is not a plain file, must be one");
      }
    }
  }
}
