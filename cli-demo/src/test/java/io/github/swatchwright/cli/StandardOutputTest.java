package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A result that can't be printed is told, but for a reader who has seen enough. */
class StandardOutputTest {
  @ParameterizedTest(name = "shelf {0}: status {1}")
  @CsvSource(
      delimiter = '~',
      nullValues = "nothing",
      textBlock =
          """
          > /dev/full; echo $? ~ 2 ~ swatchwright: the result can't be written to standard output
          >&-; echo $? >&2 ~ 2 ~ swatchwright: the result can't be written to standard output
          | true; echo $? ~ 0 ~ nothing
          """)
  void isTold(String redirection, int status, String message) throws Exception {
    assumeThat(Path.of("/dev/full")).exists();
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    // Bash's pipefail gives the program's status, not that of the reader.
    String script =
        "set -o pipefail; \"$0\" -XX:TieredStopAtLevel=1 -cp \"$1\" \"$2\" shelf " + redirection;

    Process process =
        new ProcessBuilder(
                "bash",
                "-c",
                script,
                java,
                System.getProperty("java.class.path"),
                Main.class.getName())
            .redirectErrorStream(true)
            .start();
    String printed =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();

    assertThat(printed).endsWith(Integer.toString(status));
    if (message == null) {
      assertThat(printed).isEqualTo("0");
    } else {
      assertThat(printed.lines()).hasSize(2);
      assertThat(printed).startsWith(message);
    }
  }
}
