package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.swatchwright.cli.terminal.ProgressBar;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReachCommandTest {
  private static Path catalogue(Path folder) throws IOException {
    return Files.writeString(
        folder.resolve("catalogue.json"),
        """
        {"format":"swatchwright-shelf","version":1,"name":"catalogue","paints":[
          {"name":"White","medium":"acrylic","masstone":{"lab":[96,0,2]}},
          {"name":"Signal yellow","medium":"acrylic","masstone":{"lab":[80,5,75]},"make":"ready-mixed"},
          {"name":"Sea blue","medium":"acrylic","masstone":{"lab":[35,5,-40]},"make":"ready-mixed"},
          {"name":"Pearl","medium":"acrylic","masstone":{"lab":[80,0,0]},"effect":"pearl"}]}
        """);
  }

  @Test
  void namesThePaintThatHelpsMost(@TempDir Path folder) throws IOException {
    String file = catalogue(folder).toString();
    Run run =
        Run.of(
            "reach",
            "lab(35,5,-40)",
            "#808080",
            "--catalogue",
            file,
            "--shelf",
            Run.fiveShelf(),
            "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    JsonNode result = new ObjectMapper().readTree(run.out());
    assertThat(result.get("tried").asInt()).isEqualTo(2);
    assertThat(result.get("targets").get(0).get("reachable").asBoolean()).isFalse();
    JsonNode best = result.get("additions").get(0);
    assertThat(best.get("paint").asText()).isEqualTo("Sea blue");
    // The target is its own colour; the estimate may move it by part of a swatch's error.
    assertThat(best.get("nearest").get(0).get("deltaE00").asDouble()).isCloseTo(0, within(1.0));
    assertThat(best.get("nearest").get(0).get("drops").get(0).get("paint").asText())
        .isEqualTo("Sea blue");
    assertThat(
            Run.of(
                    "reach",
                    "lab(35,5,-40)",
                    "--catalogue",
                    file,
                    "--shelf",
                    Run.fiveShelf(),
                    "--alternatives",
                    "1")
                .out())
        .contains("missing: ", " 1.  Sea blue: 1 of 1 within reach, mean ΔE00 ")
        .doesNotContain(" 2.  ");
  }

  @Test
  void refusesBadInputInOneLine(@TempDir Path folder) throws IOException {
    String file = catalogue(folder).toString();
    assertRefused(
        "missing: --catalogue FILE; 'swatchwright reach --help' shows an example",
        "reach",
        "#808080");
    assertRefused(
        "--catalogue: there is no file none.json", "reach", "#808080", "--catalogue", "none.json");
    assertRefused(
        "--paints is 4, must be within [1, 3]",
        "reach",
        "#808080",
        "--catalogue",
        file,
        "--paints",
        "4");
    assertRefused(
        "--alternatives is 6, must be within [1, 5]",
        "reach",
        "#808080",
        "--catalogue",
        file,
        "--alternatives",
        "6");
    assertRefused(
        "'#80808' is not a colour of the form #RRGGBB with six digits 0 to F",
        "reach",
        "#80808",
        "--catalogue",
        file);
  }

  private static void assertRefused(String message, String... args) {
    Run run = Run.of(args);
    assertThat(run.err()).isEqualTo("swatchwright: " + message + System.lineSeparator());
    assertThat(run.out()).isEmpty();
    assertThat(run.status()).isEqualTo(2);
  }

  @Test
  void aBarComesUpAfterHalfASecondMovesAndGoes() {
    ByteArrayOutputStream drawn = new ByteArrayOutputStream();
    long[] now = {0};
    try (PrintStream terminal = new PrintStream(drawn, true, StandardCharsets.UTF_8)) {
      try (ProgressBar quick = new ProgressBar(terminal, () -> now[0])) {
        now[0] = 400_000_000;
        quick.reached(0.9);
      }
      assertThat(drawn.size()).isZero();
      try (ProgressBar bar = new ProgressBar(terminal, () -> now[0])) {
        now[0] += 600_000_000;
        bar.reached(0.5);
        now[0] += 50_000_000;
        bar.reached(0.6);
        now[0] += 60_000_000;
        bar.reached(1);
      }
    }
    String half = "#".repeat(15) + " ".repeat(15);
    assertThat(drawn.toString(StandardCharsets.UTF_8))
        .isEqualTo("\r[" + half + "]  50 %\r[" + "#".repeat(30) + "] 100 %\r\u001B[K");
  }

  @Test
  void noBarIsDrawnWhereNothingLooks(@TempDir Path folder) throws IOException {
    Run run = Run.of("reach", "#808080", "--catalogue", catalogue(folder).toString());
    assertThat(run.err()).isEmpty();
  }
}
