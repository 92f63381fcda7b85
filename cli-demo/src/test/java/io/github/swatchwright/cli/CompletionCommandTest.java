package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompletionCommandTest {

  /** What bash offers after words, of which the last is begun. */
  private static String offered(Path folder, String words, int place) throws Exception {
    Path script = folder.resolve("completion");
    Files.writeString(script, Run.of("completion").out());
    Process bash =
        new ProcessBuilder(
                "bash",
                "-c",
                ". '"
                    + script
                    + "'; COMP_WORDS=("
                    + words
                    + "); COMP_CWORD="
                    + place
                    + "; _complete_swatchwright; echo \"${COMPREPLY[@]}\"")
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String offered = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(bash.waitFor()).isZero();
    return offered.strip();
  }

  private static boolean isBashThere() throws InterruptedException {
    try {
      return new ProcessBuilder("bash", "-c", "true").start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  @Test
  void bashCompletesCommandsAndOptions(@TempDir Path folder) throws Exception {
    assumeTrue(isBashThere());

    assertThat(offered(folder, "swatchwright ma", 1)).isEqualTo("match");
    assertThat(offered(folder, "swatchwright match --max", 2)).isEqualTo("--max-drops");
    assertThat(offered(folder, "swatchwright ''", 1)).contains("shelf", "notebook", "ladder");
  }
}
