package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.swatchwright.testdata.DemoProject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {
  private final Path folder;
  private String file = "";

  PlanCommandTest(@TempDir Path folder) {
    this.folder = folder;
  }

  @BeforeEach
  void writeTheDemoProject() throws IOException {
    file = Files.writeString(folder.resolve("dredger.json"), DemoProject.text()).toString();
  }

  private Run plan(String... options) {
    List<String> args = new ArrayList<>(List.of("plan", file));
    args.addAll(List.of(options));
    return Run.of(args.toArray(String[]::new));
  }

  @Test
  void thePageHasWhenWhatAndHowMuch() {
    Run run = plan();

    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .startsWith("Old harbour dredger, 1/72\n")
        .contains("Saturday morning\n    09:00  1 Hull, base coat\n")
        .contains("Buy chipping medium, 4.0 ml")
        .contains("No primer is planned for: Hull, Bucket chains, Deckhouse.")
        .contains("Put in because Harbour-dirt wash (oil) goes over Blue filter (enamel)")
        .contains("Pass 2, over 25 %: keep ")
        .contains("white spirit")
        .containsOnlyOnce("Rags with oil or enamel");
  }

  @Test
  void jsonHasTheKeysOfTheContract() throws Exception {
    JsonNode json = new ObjectMapper().readTree(plan("--json", "--cards", "0").out());

    for (String key : List.of("steps", "areas", "amounts", "calendar")) {
      assertThat(json.get(key)).as(key).isNotEmpty();
    }
    assertThat(json.has("cards")).isFalse();
  }

  @Test
  void theTableHasARowForEachStep() throws IOException {
    Path table = folder.resolve("steps.csv");

    Run run = plan("--cards", "0", "--table", table.toString());

    assertThat(run.err()).isEmpty();
    assertThat(Files.readAllLines(table)).hasSize(16);
    assertThat(Files.readAllLines(table).get(1)).startsWith("1,Hull,base,");
  }

  @Test
  void whatIsDoneAndMeasuredIsGoneOnFrom() throws Exception {
    Run run =
        plan(
            "--cards",
            "0",
            "--starts",
            "2026-12-05",
            "--done",
            "1",
            "--measured",
            "#4A5054",
            "--card",
            folder.resolve("card.html").toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("Done\n   1  Hull: base coat; measured #4A5054")
        .contains("Saturday 5 December, morning")
        .contains("Hull: base coat again")
        .contains("If some of the old pot is left, add to each");
    assertThat(Files.readString(folder.resolve("card.html")))
        .contains("Hull: base coat again")
        .contains("It takes in all");
  }

  @Test
  void whenEverythingIsDoneItSaysSo() throws Exception {
    int steps =
        new ObjectMapper().readTree(plan("--json", "--cards", "0").out()).get("steps").size();

    assertThat(plan("--cards", "0", "--done", String.valueOf(steps)).out())
        .contains("Everything is done.")
        .contains("In the end");
  }

  @Test
  void mistakesGetOneLine() {
    assertThat(plan("--done", "99").err())
        .isEqualTo("swatchwright: done is 99, must be within [1, 15]\n");
    assertThat(plan("--starts", "tomorrow").err())
        .isEqualTo("swatchwright: --starts is 'tomorrow', must be a day such as 2026-12-05\n");
    assertThat(plan("--measured", "#123456").err()).contains("--done");
    assertThat(Run.of("plan", folder.resolve("none.json").toString()).err())
        .contains("FILE: there is no file");
  }

  @Test
  void aPhotoIsLookedForBesideTheProject() throws IOException {
    Files.copy(Path.of("../testdata/photos/hull-plate.jpg"), folder.resolve("hull.jpg"));
    file =
        Files.writeString(
                folder.resolve("photo.json"),
                DemoProject.text()
                    .replace("{\"srgb\":\"#5B6468\"}", "{\"photo\":\"hull.jpg@240,100,160,160\"}"))
            .toString();

    Run run = plan("--cards", "0", "--grey", "510,56,76,76@18%");

    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.err()).contains("note: ");
  }
}
