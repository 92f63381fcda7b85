package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Bottle;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.testdata.DemoProject;
import io.github.swatchwright.testdata.DemoShelf;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Everything that was mixed once can be mixed again next week, or is refused with what would do.
 */
class NotebookRepeatTest {
  private static final String[] LADDER = {
    "ladder",
    "Bright orange:3, Yellow oxide:2, Red oxide:1",
    "Burnt umber:4, Red oxide:1",
    "--rungs",
    "4"
  };
  private static final Pattern LEAST = Pattern.compile("give --millilitres ([0-9.]+) at least");

  private final Path folder;

  NotebookRepeatTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private String bench(String... asked) throws IOException {
    String file = folder.resolve("bench.jsonl").toString();
    List<String> args = new ArrayList<>(List.of(asked));
    args.replaceAll(arg -> arg.equals("*") ? plan() : arg);
    args.addAll(List.of("--notebook", file));
    Run run = Run.of(args.toArray(String[]::new));
    assertThat(run.status()).as(run.err()).isZero();
    return file;
  }

  private String plan() {
    try {
      return Files.writeString(folder.resolve("plan.json"), DemoProject.text()).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Run again(String file, String millilitres, String... more) {
    List<String> args = new ArrayList<>(List.of("notebook", file, "--repeat", "1"));
    args.addAll(List.of("--millilitres", millilitres));
    args.addAll(List.of(more));
    return Run.of(args.toArray(String[]::new));
  }

  private static JsonNode mixes(Run run) throws IOException {
    assertThat(run.status()).as(run.err()).isZero();
    return new ObjectMapper().readTree(run.out()).get("mixes");
  }

  // What can't be seen is 0.5; a corrected pot had an error of its own, which the ratio doesn't
  // have.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "recipe|1|match;#8A4B2A;--alternatives;2",
        "recipe|1|match;#4F575B",
        "mix|1|predict;Titanium white:20, Phthalo blue:0.3",
        "rung|4|ladder;Bright orange:3, Yellow oxide:2, Red oxide:1;Burnt umber:4, Red oxide:1"
            + ";--rungs;4",
        "corrected pot|1|correct;Titanium white:6, Red oxide:2;--measured;#C3907F;--target;#B47A68",
        "step|2|coat;--base;Dredger grey;--coats;Titanium white:2@1:2, Blue filter:3",
        "step|9|plan;*;--cards;0",
      })
  void isTheSameColourOrRefusedWithTheAmountThatIsEnough(String kind, int count, String asked)
      throws IOException {
    String file = bench(asked.split(";", -1));
    for (String millilitres : List.of("0.2", "1", "4")) {
      Run run = again(file, millilitres, "--json");
      if (run.status() != 0) {
        Matcher least = LEAST.matcher(run.err());
        assertThat(least.find()).as(run.err()).isTrue();
        assertThat(Double.parseDouble(least.group(1)))
            .isGreaterThan(Double.parseDouble(millilitres));
        run = again(file, least.group(1), "--json");
      }
      JsonNode mixes = mixes(run);
      assertThat(mixes).hasSize(count);
      for (JsonNode mix : mixes) {
        assertThat(mix.get("of").asText()).isEqualTo(kind);
        assertThat(mix.get("millilitres").asDouble())
            .isGreaterThanOrEqualTo(Double.parseDouble(millilitres) - 1e-9);
        if (mix.has("deltaE00") && !kind.equals("corrected pot")) {
          assertThat(mix.get("deltaE00").asDouble()).isLessThanOrEqualTo(0.5);
        }
      }
    }
  }

  @Test
  void aTraceThatWouldBecomeADropIsRefused() throws IOException {
    String file = bench("predict", "Titanium white:20, Phthalo blue:0.3");

    assertThat(again(file, "0.5").err())
        .matches(
            "swatchwright: whole drops can't do that: in 0.5 ml, mix 1 comes out ΔE00 [0-9.]+ from"
                + " what it was; give --millilitres [0-9.]+ at least\n");
  }

  @Test
  void aLadderGivesAllRungsOrTheOneThatIsAskedFor() throws IOException {
    String file = bench(LADDER);

    assertThat(again(file, "3").out())
        .contains("Entry 1 again, rung 1 of 4: ", "rung 4 of 4: ", "from then");
    assertThat(again(file, "3", "--mix", "2").out())
        .contains("rung 2 of 4")
        .doesNotContain("rung 3");
    assertThat(again(file, "3", "--mix", "7").err())
        .isEqualTo("swatchwright: --mix is 7, must be one of 1, 2, 3, 4\n");
    assertThat(
            Run.of(
                    "notebook",
                    file,
                    "--test-card",
                    "1",
                    "--measured",
                    "#804020",
                    "--out",
                    folder.resolve("cards.json").toString())
                .err())
        .contains("tell with --mix which rung it is");
  }

  @Test
  void aCoatSaysWhatThinsItAndHowMuchOfThat() throws IOException {
    String file = bench("coat", "--base", "Dredger grey", "--coats", "Red oxide:2@1:2");

    assertThat(again(file, "1").out())
        .contains("and 2.07 ml of acrylic thinner") // 23 drops of 0.045 ml, twice
        .contains("23 drops   1.04 ml  Red oxide");
  }

  private String bottles(double left) throws IOException {
    Shelf shelf = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
    List<Paint> paints = new ArrayList<>(shelf.paints());
    paints.replaceAll(
        paint ->
            paint.name().equals("Red oxide")
                ? paint.withBottle(new Bottle(OptionalDouble.of(left), OptionalDouble.empty()))
                : paint);
    return Files.writeString(
            folder.resolve("bottles.json"), ShelfJson.toText(Shelf.of(shelf.name(), paints)))
        .toString();
  }

  @Test
  void whatIsMixedIsTakenOutOfTheBottles() throws IOException {
    String shelf = bottles(2.5);
    String file = bench("predict", "Titanium white:1, Red oxide:1", "--shelf", shelf);

    Run run = again(file, "2", "--take");

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Red oxide runs short: ");
    double left =
        ShelfJson.read(Path.of(shelf)).paint("Red oxide").bottle().leftMillilitres().orElseThrow();
    assertThat(left).isBetween(1.4, 1.5); // 23 drops of 0.045 ml were taken
    assertThat(again(file, "4", "--take").err())
        .contains("the bottle of 'Red oxide' holds 1.4", "are needed");
  }

  @Test
  void takingNeedsAShelfAndAnAmount() throws IOException {
    String file = bench("predict", "Titanium white:1, Red oxide:1");

    assertThat(again(file, "2", "--take").err()).contains("--take needs --shelf");
    assertThat(Run.of("notebook", file, "--repeat", "1", "--take").err())
        .contains("--take goes with --repeat and --millilitres");
  }
}
