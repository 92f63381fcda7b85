package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.swatchwright.testdata.DemoProject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was tried on scrap is written down, found, and remembered when it matters. */
class NotebookTrialTest {
  private static final String[] COAT = {
    "coat", "--base", "Dredger grey", "--coats", "Titanium white:2@1:2"
  };

  private final Path folder;
  private String file = "";

  NotebookTrialTest(@TempDir Path folder) {
    this.folder = folder;
  }

  @BeforeEach
  void someCoatsAreWrittenDown() {
    file = folder.resolve("bench.jsonl").toString();
    done(with(COAT, "--notebook", file));
  }

  private static String[] with(String[] line, String... more) {
    String[] all = Arrays.copyOf(line, line.length + more.length);
    System.arraycopy(more, 0, all, line.length, more.length);
    return all;
  }

  private static String done(String... args) {
    Run run = Run.of(args);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return run.out();
  }

  private String tried(String text, String went) {
    return done(
        "notebook",
        file,
        "--tried",
        text,
        "--on",
        "1",
        "--went",
        went,
        "--with",
        "pressure=1.4bar, thinner=1:2",
        "--note",
        "mist first",
        "--photo",
        "scrap-3.jpg");
  }

  @Test
  void aTrialIsFoundByItsPaintItsSettingsAndItsWords() throws IOException {
    String words =
        "whitewash chips; pressure 1.4bar, thinner 1:2; went well. mist first (photo scrap-3.jpg)";

    assertThat(tried("whitewash chips", "well"))
        .isEqualTo("Written down for entry 1: " + words + "\n");
    for (String find : new String[] {"titanium", "CHIPS pressure", "1.4bar", "mist white"}) {
      assertThat(done("notebook", file, "--find", find)).isEqualTo("  2  on 1: " + words + "\n");
    }
    assertThat(done("notebook", file, "--find", "chips enamel"))
        .isEqualTo("No trial holds all of these words.\n");
    assertThat(
            new ObjectMapper()
                .readTree(done("notebook", file, "--find", "chips", "--json"))
                .get("trials")
                .get(0)
                .get("trial")
                .get("with")
                .get("pressure")
                .asText())
        .isEqualTo("1.4bar");
  }

  @Test
  void coatAndPlanShowTheLastTrialOfTheSamePaintAndStep() throws IOException {
    tried("whitewash too thick", "badly");
    tried("whitewash misted on", "well");
    String project = Files.writeString(folder.resolve("plan.json"), DemoProject.text()).toString();

    assertThat(done(with(COAT, "--notebook", file)))
        .contains("Last time (entry 3): whitewash misted on; pressure 1.4bar")
        .doesNotContain("too thick");
    assertThat(done("plan", project, "--cards", "0", "--notebook", file))
        .containsOnlyOnce("Last time (entry 3): whitewash misted on");
    assertThat(done("coat", "--base", "#808080", "--coats", "Red oxide:1", "--notebook", file))
        .doesNotContain("Last time");
    assertThat(done("notebook", file)).contains("  2  ").contains("--tried");
  }

  @Test
  void aLadderShowsTheLastTrialOfItsPaints() {
    String[] ladder = {"ladder", "Bright orange:3", "Burnt umber:4", "--rungs", "3"};
    done(with(ladder, "--notebook", file));
    done("notebook", file, "--tried", "orange ladder sponged", "--on", "2", "--went", "well");

    assertThat(done(with(ladder, "--notebook", file)))
        .containsOnlyOnce("Last time (entry 3): orange ladder sponged");
    assertThat(done(ladder)).doesNotContain("Last time");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--tried;x|--tried goes with --on N",
        "--tried;x;--on;1|--tried goes with --on N",
        "--on;1|go with --tried",
        "--tried;x;--on;9;--went;well|--on is 9, must be the number of an entry, 1 to 1",
        "--tried;x;--on;1;--went;great|--went is 'great', must be one of well, so-so, badly",
        "--tried;x;--on;1;--went;well;--with;tip|is not of the form name=value",
        "--tried;x;--on;1;--went;well;--with;a=1,a=2|'a' is given twice",
        "--tried;x;--on;1;--went;well;--find;y|give one of --show, --repeat, --test-card, --tried"
            + " and --find",
      })
  void mistakesGetOneLine(String options, String complaint) {
    String[] line = with(new String[] {"notebook", file}, options.split(";", -1));

    assertThat(Run.of(line).err()).startsWith("swatchwright: ").contains(complaint);
  }
}
