package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The program in a process of its own. */
class MainProcessTest {

  private static Process start(String... args) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Dfile.encoding=ISO-8859-1", "-Duser.language=de", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add(Main.class.getName());
    command.addAll(List.of(args));
    return new ProcessBuilder(command).start();
  }

  private static String text(InputStream in) throws Exception {
    return new String(in.readAllBytes(), StandardCharsets.UTF_8);
  }

  @Test
  void printsUtf8AndDecimalPointsWhateverThePlatform() throws Exception {
    Process process = start("compare", "#808080", "#828282");

    assertThat(text(process.getInputStream())).contains("ΔE00    0.7").doesNotContain("\u001B");
    assertThat(process.waitFor()).isZero();
  }

  @Test
  void endsWithStatusTwoAndOneLineAfterBadInput() throws Exception {
    Process process = start("compare", "#808080", "grün");

    assertThat(text(process.getInputStream())).isEmpty();
    assertThat(text(process.getErrorStream()).lines()).hasSize(1);
    assertThat(process.waitFor()).isEqualTo(2);
  }
}
