package io.github.swatchwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Language, digits, time zone and encoding of the machine change no byte of a result. */
class SurroundingsTest {
  /** Runs a test with the options of a JVM in another country. */
  @Retention(RetentionPolicy.RUNTIME)
  @ParameterizedTest
  @ValueSource(
      strings = {
        "-Duser.language=tr -Duser.country=TR -Duser.timezone=Asia/Kathmandu -Dfile.encoding=Cp1254",
        "-Duser.language=de -Duser.country=DE -Duser.timezone=America/St_Johns -Dfile.encoding=UTF-16",
        "-Duser.language=ar -Duser.country=EG -Duser.extensions=u-nu-arab -Dfile.encoding=ISO-8859-6"
      })
  private @interface Elsewhere {}

  private static final String[] ASKED = {"match", "#8A4B2A", "--max-drops", "6"};

  /** One argument a word; {@code *} stands for a folder. */
  private static final List<String> COMMANDS =
      List.of(
          "compare lab(50.5,1,2) #828282 --json",
          "predict White:2.5,Black:1 --light A",
          "ladder Black White --rungs 3",
          "coat --base #808080 --coats White:2@1:4 --area 120",
          "correct White:6,Black:2 --measured #C3907F --target #B47A68",
          "shelf --export */shelf.csv",
          "shelf --export */shelf.gpl",
          "shelf --export */shelf.json",
          "compare #808080 #9F9F9F --card */card.html",
          "shelf --import */shelf.csv --json",
          "match #12345G",
          "predict White:2,5");

  /** Runs commands one after the other; prints what they print, and the files that they write. */
  static final class Several {
    private Several() {}

    public static void main(String[] args) throws IOException {
      PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, UTF_8);
      Path folder = Path.of(args[0]);
      for (String command : COMMANDS) {
        String line = command.replace("*", args[0]) + " --shelf " + Run.fiveShelf();
        Run run = Run.of(line.split(" ", -1));
        out.println(run.status() + run.out() + run.err().replace(args[0], "*"));
      }
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.sorted().toList()) {
          out.println(file.getFileName() + "\n" + Files.readString(file));
        }
      }
    }
  }

  @Elsewhere
  void changeNoFileAndNoMessage(String options, @TempDir Path usual, @TempDir Path other)
      throws Exception {
    String expected = start(Several.class, List.of("-Duser.language=en"), usual.toString());
    assertThat(expected).contains("card.html").contains("shelf.csv").contains("is not a colour");
    assertThat(start(Several.class, List.of(options.split(" ", -1)), other.toString()))
        .isEqualTo(expected);
  }

  @Elsewhere
  void changeNothing(String options) throws Exception {
    assertThat(printed(options.split(" ", -1))).isEqualTo(printed("-Duser.language=en"));
  }

  private static String printed(String... options) throws Exception {
    return start(Main.class, List.of(options), ASKED);
  }

  private static String start(Class<?> main, List<String> options, String... args)
      throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // Over before Java's second compiler would pay.
    command.add("-XX:TieredStopAtLevel=1");
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    command.addAll(List.of(args));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String text = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor()).as(text).isZero();
    return text;
  }
}
