package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Language, digits, time zone and encoding of the machine change no byte of a result. */
class SurroundingsTest {
  private static final String[] ASKED = {"match", "#8A4B2A", "--max-drops", "6"};

  @ParameterizedTest
  @ValueSource(
      strings = {
        "-Duser.language=tr -Duser.country=TR -Duser.timezone=Asia/Kathmandu -Dfile.encoding=Cp1254",
        "-Duser.language=de -Duser.country=DE -Duser.timezone=America/St_Johns -Dfile.encoding=UTF-16",
        "-Duser.language=ar -Duser.country=EG -Duser.extensions=u-nu-arab -Dfile.encoding=ISO-8859-6"
      })
  void changeNothing(String options) throws Exception {
    assertThat(printed(options.split(" ", -1))).isEqualTo(printed("-Duser.language=en"));
  }

  private static String printed(String... options) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(options));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    command.addAll(List.of(ASKED));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(text).isZero();
    return text;
  }
}
