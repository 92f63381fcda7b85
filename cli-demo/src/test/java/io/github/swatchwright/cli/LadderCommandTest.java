package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LadderCommandTest {
  private static JsonNode json(String... args) throws Exception {
    List<String> all = new ArrayList<>(List.of("ladder", "--json"));
    all.addAll(Arrays.asList(args));
    Run run = Run.of(all.toArray(String[]::new));
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void givesRungsWithAdditionsCoverageAndLook() throws Exception {
    JsonNode ladder = json("Deckhouse cream", "Quay-mud brown", "--rungs", "3", "--for", "rust");

    assertThat(ladder.get("rungs")).hasSize(3);
    for (JsonNode rung : ladder.get("rungs")) {
      assertThat(rung.fieldNames())
          .toIterable()
          .contains("add", "drops", "predicted", "coverage", "visibleShare");
    }
    assertThat(ladder.get("rungs").get(0).get("add").get(0).get("drops").isInt()).isTrue();
    assertThat(ladder.get("look").get("srgb").asText()).matches("#[0-9A-F]{6}");
  }

  @Test
  void drawsTheSameSpeckleForTheSameSeed(@TempDir Path folder) throws Exception {
    List<String> drawn = new ArrayList<>();
    for (String seed : List.of("5", "5", "6")) {
      Path file = folder.resolve("speckle.svg");
      json("Deckhouse cream", "Quay-mud brown", "--picture", file.toString(), "--seed", seed);
      drawn.add(Files.readString(file));
    }

    assertThat(drawn.get(0)).startsWith("<svg").isEqualTo(drawn.get(1)).isNotEqualTo(drawn.get(2));
  }

  @Test
  void takesColoursWithSharesFromAFile(@TempDir Path folder) throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("colours.json"),
            "{\"colours\":[{\"srgb\":\"#CCC096\",\"share\":0.7},{\"srgb\":\"#6A5844\",\"share\":0.3}]}");
    JsonNode ladder = json("--colours", file.toString(), "--rungs", "2", "--separate");

    assertThat(ladder.get("rungs").get(0).get("visibleShare").asDouble()).isBetween(0.6, 0.75);
  }

  @Test
  void tellsWhatToAddInWords() {
    Run run = Run.of("ladder", "Deckhouse cream", "Quay-mud brown", "--rungs", "4");

    assertThat(run.out())
        .contains("start with", "drops  Deckhouse cream", "add", "From a distance", "Light  D65");
  }

  @Test
  void keepsSomeOfThePotAndTellsWhatIsLeftOver() {
    Run run = Run.of("ladder", "#C8642A", "#4A3226", "--for", "rust");

    assertThat(run.out()).containsPattern("keep +\\d+ drops? +of shade 1");
    assertThat(run.out()).contains("Left over", "drops in all, of which the model takes 16");
  }

  @Test
  void tellsWhatThePotIsForAndWhatToMindOnce() {
    String out = Run.of("ladder", "#C8642A", "#4A3226", "--for", "rust").out();

    assertThat(out)
        .containsPattern("makes +15 drops, 0\\.67 ml: 9 to paint with, 5 to keep, 1 over");
    assertThat(out.split("first wait")).hasSize(4);
    assertThat(out).containsOnlyOnce("thin with   acrylic thinner");
    assertThat(out).containsOnlyOnce("Airbrush mist harms the lungs");
    assertThat(out).containsOnlyOnce("safety data sheet and local rules come first");
    assertThat(out).doesNotContain("white spirit");
  }

  @Test
  void rustFromOneLightPotTakesOneDarkenerAllTheWay() {
    String out = Run.of("ladder", "#C8642A", "#4A3226", "--for", "rust").out();

    String darker = out.substring(out.indexOf(" 2. "));
    assertThat(darker).containsPattern("add +\\d drops? +Burnt umber");
    assertThat(darker).doesNotContain("Raw umber", "Lamp black", "start again", "start with");
  }

  @ParameterizedTest(name = "ladder {1} {2} {0} is refused: {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          --rungs=1|#C8642A|#3B2A22|rungs is 1, must be within [2, 12]
          --rungs=4|#C8642A|#C8642A|the ends are ΔE00 0.00 apart, must be at least 1
          --coverage=1,1.2,0.3,0.1|#C8642A|#3B2A22|coverage 2 is 1.2, must be within [0.0, 1.0]
          --coverage=50%,20%,10%,5%|#C8642A|#3B2A22|coverage 1 is 0.5, must be 1 unless a base is stated
          --coverage=1,x,.1,.1|#C8642A|#3B2A22|--coverage: 'x' is not a share such as 40% or 0.4
          --medium=milk|#C8642A|#3B2A22|--medium is 'milk', must be one of acrylic, lacquer, enamel, oil, water
          --use=0|#C8642A|#3B2A22|--use is 0.0, must be above 0 and at most 1
          --use=1.5|#C8642A|#3B2A22|--use is 1.5, must be above 0 and at most 1
          --min-drops=50|#C8642A|#3B2A22|min-drops is 50, must be within [1, 40]
          --use=NaN|#C8642A|#3B2A22|--use is NaN, must be above 0 and at most 1
          --order=up|#C8642A|#3B2A22|--order is 'up', must be one of dark-to-light, light-to-dark
          --for=moss|#C8642A|#3B2A22|--for is 'moss', must be one of rust, fading, wood, rubber, metal
          --shares=.5,.5|#C8642A|#3B2A22|there are 2 shares, must be as many as rungs: 4
          --area=-3|#C8642A|#3B2A22|--area in cm² is -3.0, must be within [0.01, 1000000.0]
          --wash=Rust-brown wash:2@1:-4|#C8642A|#3B2A22|thinner in 'Rust-brown wash' is -4.0, must be within [0.0, 1000.0]
          --colours=none.json|#C8642A|#3B2A22|give two ends or --colours, not both
          """)
  void refuses(String option, String from, String to, String message) {
    Run run = Run.of("ladder", from, to, option);

    assertThat(run.err()).isEqualTo("swatchwright: " + message + System.lineSeparator());
    assertThat(run.out()).isEmpty();
    assertThat(run.status()).isEqualTo(2);
  }

  @Test
  void refusesCoverageThatRisesWhereItCannot() {
    Run run =
        Run.of("ladder", "#C8642A", "#3B2A22", "--for", "rust", "--coverage", "100%,20%,30%,10%");

    assertThat(run.err().strip())
        .isEqualTo(
            "swatchwright: coverage 3 is 0.3, must be at most coverage 2, 0.2: each pass of rust"
                + " covers less");
    assertThat(run.status()).isEqualTo(2);
  }
}
