package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.NotebookEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotebookCommandTest {

  private static String done(String... args) {
    Run run = Run.of(args);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return run.out();
  }

  private static JsonNode json(String... args) throws IOException {
    return new ObjectMapper().readTree(done(args));
  }

  /** A notebook with a search for recipes and a prediction, on a shelf of its own. */
  private static String notebook(Path folder, String shelf) {
    String file = folder.resolve("bench.jsonl").toString();
    done("match", "#707A70", "--shelf", shelf, "--alternatives", "2", "--notebook", file);
    done("predict", "White:3, Black:1.5", "--json", "--notebook=" + file, "--shelf=" + shelf);
    return file;
  }

  private static String shelf(Path folder) throws IOException {
    return Files.copy(Path.of(Run.fiveShelf()), folder.resolve("five.json")).toString();
  }

  @Test
  void listsWhatWasAskedWithoutTheNotebookItself(@TempDir Path folder) throws IOException {
    String shelf = shelf(folder);

    JsonNode entries = json("notebook", notebook(folder, shelf), "--json").get("entries");

    assertThat(entries).hasSize(2);
    assertThat(entries.get(0).get("asked").toString())
        .isEqualTo(
            "[\"match\",\"#707A70\",\"--shelf\",\"" + shelf + "\",\"--alternatives\",\"2\"]");
    assertThat(entries.get(1).get("asked").toString())
        .isEqualTo("[\"predict\",\"White:3, Black:1.5\",\"--shelf=" + shelf + "\"]");
    assertThat(entries.get(0).get("shelf").get("name").asText()).isEqualTo("Five invented paints");
    assertThat(entries.get(0).get("date").asText())
        .matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\dZ");
  }

  @Test
  void showsWhatWasFound(@TempDir Path folder) throws IOException {
    String shelf = shelf(folder);
    String file = notebook(folder, shelf);

    assertThat(json("notebook", file, "--show", "2", "--json").get("found"))
        .isEqualTo(json("predict", "White:3, Black:1.5", "--json", "--shelf", shelf));
  }

  @Test
  void asksTheSameQuestionAgain(@TempDir Path folder) throws IOException {
    String shelf = shelf(folder);
    String file = notebook(folder, shelf);

    assertThat(json("notebook", file, "--repeat", "1", "--json"))
        .isEqualTo(json("notebook", file, "--show", "1", "--json").get("found"));
    assertThat(done("notebook", file, "--repeat", "1")).doesNotContain("not as it was");
  }

  @Test
  void mixesTheSameAgainForAVolume(@TempDir Path folder) throws IOException {
    String shelf = shelf(folder);
    String file = notebook(folder, shelf);

    JsonNode found = json("notebook", file, "--repeat", "2", "--millilitres", "4", "--json");
    JsonNode again = found.get("mixes").get(0);

    // Two batches are 9 whole drops of 0.04 ml, 0.36 ml: 11 times that is 3.96 ml, 12 times 4.32.
    assertThat(again.get("millilitres").asDouble()).isEqualTo(4.32);
    assertThat(again.get("drops").toString())
        .isEqualTo(
            "[{\"paint\":\"White\",\"drops\":72,\"millilitres\":2.88},"
                + "{\"paint\":\"Black\",\"drops\":36,\"millilitres\":1.44}]");
    assertThat(again.get("deltaE00").asDouble()).isLessThan(0.01);
    assertThat(found.get("shelfChanged").asBoolean()).isFalse();
  }

  @Test
  void warnsWhenTheShelfIsAnother(@TempDir Path folder) throws IOException {
    String shelf = shelf(folder);
    String file = notebook(folder, shelf);
    Files.writeString(
        Path.of(shelf), Files.readString(Path.of(shelf)).replace("Five invented", "5 invented"));

    assertThat(done("notebook", file, "--repeat", "1")).contains("The shelf is not as it was then");
    assertThat(done("notebook", file, "--repeat", "2", "--millilitres", "1"))
        .contains("The shelf is not as it was then");
  }

  @Test
  void turnsEntriesIntoTestCards(@TempDir Path folder) throws IOException {
    String shelf = shelf(folder);
    String file = notebook(folder, shelf);
    Path cards = folder.resolve("cards.json");

    done("notebook", file, "--test-card", "2", "--measured", "#8A8A88", "--out", cards.toString());
    done("notebook", file, "--test-card", "1", "--measured", "#717A71", "--out", cards.toString());

    CardSet set = CardsJson.read(cards);
    assertThat(set.cards()).hasSize(2);
    assertThat(set.cards().get(0).parts())
        .extracting(part -> part.paint())
        .containsExactly("White", "Black");
    assertThat(set.cards().get(0).parts().get(1).amount()).isEqualTo(1.5);
    done(
        "calibrate",
        cards.toString(),
        "--shelf",
        shelf,
        "--out",
        folder.resolve("better.json").toString());
  }

  @Test
  void setsATornLineAside(@TempDir Path folder) throws IOException {
    String file = notebook(folder, shelf(folder));
    String text = Files.readString(Path.of(file));
    Files.writeString(Path.of(file), text.substring(0, text.length() - 20));

    assertThat(done("notebook", file)).contains("  1  ", "Set aside", "line 2: ");
  }

  @ParameterizedTest(name = "notebook {0} is refused: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --show 3|--show is 3, must be the number of an entry, 1 to 2
          --show 1 --repeat 1|give one of --show, --repeat, --test-card, --tried and --find, not more
          --millilitres 4|--millilitres goes with --repeat
          --repeat 1 --millilitres 0|millilitres is 0.0, must be a finite number above 0
          --test-card 1|--test-card, --measured (or --measured-in) and --out go together
          --repeat 1 --millilitres 1 --mix 3|--mix is 3, must be one of 1, 2
          """)
  void refuses(String options, String message, @TempDir Path folder) throws IOException {
    String file = notebook(folder, shelf(folder));

    Run run = Run.of(Run.with(new String[] {"notebook", file}, options.split(" ", -1)));

    assertThat(run.err().strip()).isEqualTo("swatchwright: " + message);
    assertThat(run.status()).isEqualTo(2);
  }

  @Test
  void saysWhenItCantBeWritten(@TempDir Path folder) {
    String file = folder.resolve("none").resolve("bench.jsonl").toString();

    Run run = Run.of("compare", "#123456", "#123457", "--notebook", file);

    assertThat(run.err().strip())
        .isEqualTo("swatchwright: --notebook: there is no folder " + folder.resolve("none"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void refusesANotebookThatIsNotThere(@TempDir Path folder) {
    Path file = folder.resolve("none.jsonl");

    assertThat(Run.of("notebook", file.toString()).err().strip())
        .isEqualTo("swatchwright: NOTEBOOK: there is no file " + file);
  }

  /** A notebook that someone else wrote, with one entry. */
  private static String foreign(Path folder, String... asked) throws IOException {
    Path file = folder.resolve("foreign.jsonl");
    Notebook.at(file)
        .append(
            new NotebookEntry(Instant.EPOCH, "1", "s", "0", List.of(asked), "{\"recipes\":[]}"));
    return file.toString();
  }

  @ParameterizedTest(name = "{0} is left out")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          compare|#808080|#828282|--card|*/x.svg
          compare|--table=*/x.csv|#808080|#828282|--light=A
          compare|#808080|#828282|--notebook|*/x.jsonl
          ladder|#303030|#A0A0A0|--picture|*/x.svg
          shelf|--plot|*/x.svg|--export=*/x.csv|--light=A
          """)
  void repeatingSomeoneElsesNotebookWritesNothing(
      String command,
      String first,
      String second,
      String third,
      String fourth,
      @TempDir Path folder)
      throws IOException {
    String there = folder.toString();
    String file =
        foreign(
            folder,
            command,
            first.replace("*", there),
            second.replace("*", there),
            third.replace("*", there),
            fourth.replace("*", there));

    Run run = Run.of("notebook", file, "--repeat", "1");

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Left out, since it writes a file: --");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(Path.of(file));
    }
  }

  @Test
  void whatStandsBehindTwoDashesIsRepeatedRightly(@TempDir Path folder) throws IOException {
    String card = folder.resolve("x.svg").toString();
    String file = foreign(folder, "compare", "--light=A", "--", "#808080", "#828282");

    assertThat(json("notebook", file, "--repeat", "1", "--json").get("light").asText())
        .isEqualTo("A");
    String odd = foreign(folder, "predict", "--", "--card", card);
    assertThat(Run.of("notebook", odd, "--repeat", "2").err()).contains("no paint '--card'");
    assertThat(Path.of(card)).doesNotExist();
  }

  @Test
  void anEntryThatRepeatsEntriesIsRefused(@TempDir Path folder) throws IOException {
    String file =
        foreign(folder, "notebook", folder.resolve("foreign.jsonl").toString(), "--repeat", "1");

    assertThat(Run.of("notebook", file, "--repeat", "1").err())
        .contains("can't be repeated from a notebook");
  }

  @Test
  void anEntryThatReadsADeviceIsRefused(@TempDir Path folder) throws IOException {
    String file = foreign(folder, "compare", "#808080", "#828282", "--shelf", "/dev/zero");

    assertThat(Run.of("notebook", file, "--repeat", "1").err())
        .contains("--shelf: /dev/zero is not a plain file, must be one");
  }
}
