package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.NotebookEntry;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two processes write in one notebook at once. */
class NotebookProcessTest {
  private static final int ENTRIES = 200;

  /** Writes entries into a notebook, by a name: its arguments are file and name. */
  static final class Writer {
    private Writer() {}

    public static void main(String[] args) throws IOException {
      Notebook notebook = Notebook.at(Path.of(args[0]));
      for (int number = 1; number <= ENTRIES; number++) {
        notebook.append(
            new NotebookEntry(
                Instant.EPOCH,
                "1",
                "s",
                "h",
                List.of(args[1], "" + number),
                "{\"n\":" + number + "}"));
      }
    }
  }

  private static Process start(Path file, String name) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Writer.class.getName(),
            file.toString(),
            name)
        .inheritIO()
        .start();
  }

  @Test
  void nothingIsLost(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("bench.jsonl");

    Process one = start(file, "one");
    Process two = start(file, "two");

    assertThat(one.waitFor()).isZero();
    assertThat(two.waitFor()).isZero();
    Notebook.Contents contents = Notebook.at(file).read();
    assertThat(contents.setAside()).isEmpty();
    for (String name : List.of("one", "two")) {
      assertThat(contents.entries().stream().map(NotebookEntry::asked))
          .filteredOn(asked -> asked.get(0).equals(name))
          .extracting(asked -> Integer.parseInt(asked.get(1)))
          .isEqualTo(IntStream.rangeClosed(1, ENTRIES).boxed().toList());
    }
  }

  /** Makes a test card of a notebook's entry: its arguments are those of the command line. */
  static final class CardMaker {
    private CardMaker() {}

    public static void main(String[] args) {
      for (int i = 0; i < 4; i++) {
        Run run = Run.of(args);
        if (run.status() != Main.DONE) {
          throw new IllegalStateException(run.err());
        }
      }
    }
  }

  @Test
  void noTestCardIsLost(@TempDir Path folder) throws Exception {
    Path notes = folder.resolve("bench.jsonl");
    Run.of(
        "predict", "White:3, Black:1", "--shelf", Run.fiveShelf(), "--notebook", notes.toString());
    Path cards = folder.resolve("cards.json");
    List<Process> makers = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      makers.add(
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty("java.class.path"),
                  CardMaker.class.getName(),
                  "notebook",
                  notes.toString(),
                  "--test-card",
                  "1",
                  "--measured",
                  "#8A8A88",
                  "--out",
                  cards.toString())
              .inheritIO()
              .start());
    }
    for (Process maker : makers) {
      assertThat(maker.waitFor()).isZero();
    }
    assertThat(CardsJson.read(cards).cards()).hasSize(12);
  }
}
