package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.ClosedChannelException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NotebookTest {
  private static final Shelf SHELF =
      Shelf.of(
          "Bench",
          List.of(
              Paint.of("Rost, grün\u2028\uD83D\uDEA2", Medium.ACRYLIC, srgb("#8A4B2A")),
              Paint.of("White", Medium.ACRYLIC, srgb("#F4F4F0"))));

  private static Swatch srgb(String hex) {
    return new Swatch.OfSrgb(Srgb.parse(hex));
  }

  private static NotebookEntry entry(int number) {
    return new NotebookEntry(
        Instant.parse("2031-05-06T07:08:09Z").plusSeconds(number),
        NotebookEntry.LIBRARY_VERSION,
        SHELF.name(),
        ShelfJson.hash(SHELF),
        List.of("match", "Rost, grün\u2028\uD83D\uDEA2 \"quoted\"\n\\", "" + number),
        JsonOutput.object(
            json -> {
              json.writeNumberField("number", number);
              json.writeNumberField("deltaE00", 0.0004);
              json.writeStringField("text", "a\n  b");
              json.writeNullField("nothing");
              json.writeArrayFieldStart("recipes");
              json.writeStartObject();
              json.writeArrayFieldStart("drops");
              json.writeStartObject();
              json.writeStringField("paint", "White");
              json.writeNumberField("drops", number);
              json.writeEndObject();
              json.writeEndArray();
              json.writeEndObject();
              json.writeEndArray();
            }));
  }

  private static Notebook of(Path file, int entries) throws IOException {
    Notebook notebook = Notebook.at(file);
    for (int number = 1; number <= entries; number++) {
      notebook.append(entry(number));
    }
    return notebook;
  }

  private static List<NotebookEntry> entries(int... numbers) {
    return Arrays.stream(numbers).mapToObj(NotebookTest::entry).toList();
  }

  @Test
  void whatWasSaidToBeWrittenIsThereAfterInterrupts(@TempDir Path folder) throws Exception {
    Notebook notebook = Notebook.at(folder.resolve("bench.jsonl"));
    List<NotebookEntry> written = Collections.synchronizedList(new ArrayList<>());
    List<IOException> failures = Collections.synchronizedList(new ArrayList<>());
    AtomicInteger number = new AtomicInteger();
    int interrupts = 40;
    for (int i = 0; i < interrupts; i++) {
      Thread writer =
          new Thread(
              () -> {
                while (!Thread.currentThread().isInterrupted()) {
                  NotebookEntry next = entry(number.incrementAndGet());
                  try {
                    notebook.append(next);
                    written.add(next);
                  } catch (IOException e) {
                    failures.add(e);
                  }
                }
              });
      writer.start();
      Thread.sleep(i % 4 + 1);
      writer.interrupt();
      writer.join();
    }
    Notebook.Contents contents = notebook.read();
    assertThat(contents.entries()).containsSubsequence(written);
    // An interrupted line is torn, or whole though nobody was told so.
    assertThat(contents.entries().size() - written.size() + contents.setAside().size())
        .isBetween(0, failures.size());
    assertThat(failures).hasSizeLessThanOrEqualTo(interrupts);
    // What is thrown tells of the interrupt, and not of the channel that it closed.
    assertThat(failures).allMatch(e -> !e.getClass().equals(ClosedChannelException.class));
  }

  @Test
  void readsBackWhatWasWritten(@TempDir Path folder) throws IOException {
    Notebook.Contents contents = of(folder.resolve("bench.jsonl"), 3).read();

    assertThat(contents.entries()).isEqualTo(entries(1, 2, 3));
    assertThat(contents.setAside()).isEmpty();
  }

  @Test
  void losesNothingBeforeAWriteThatEndedAtAnyByte(@TempDir Path folder) throws IOException {
    Path whole = folder.resolve("whole.jsonl");
    of(whole, 2);
    int before = (int) Files.size(whole);
    of(whole, 0).append(entry(3));
    byte[] bytes = Files.readAllBytes(whole);
    Path torn = folder.resolve("torn.jsonl");

    for (int length = before; length <= bytes.length; length++) {
      Files.write(torn, Arrays.copyOf(bytes, length));
      boolean complete = length >= bytes.length - 1;
      boolean tornLine = length > before && !complete;

      Notebook.Contents contents = Notebook.at(torn).read();
      assertThat(contents.entries()).isEqualTo(complete ? entries(1, 2, 3) : entries(1, 2));
      assertThat(contents.setAside()).hasSize(tornLine ? 1 : 0);

      Notebook.at(torn).append(entry(4));
      contents = Notebook.at(torn).read();
      assertThat(contents.entries()).isEqualTo(complete ? entries(1, 2, 3, 4) : entries(1, 2, 4));
      assertThat(contents.setAside().stream().map(Notebook.SetAside::line).toList())
          .isEqualTo(tornLine ? List.of(3) : List.of());
    }
  }

  @ParameterizedTest(name = "a line of {0} is set aside")
  @ValueSource(strings = {"\0\0\0\0", "nonsense", "{}", "[1]", "{\"found\":NaN}", "\uFFFD"})
  void setsAsideALineThatIsNoEntry(String line, @TempDir Path folder) throws IOException {
    Path file = folder.resolve("bench.jsonl");
    Notebook notebook = of(file, 1);
    Files.writeString(file, line + "\n", StandardOpenOption.APPEND);
    notebook.append(entry(2));

    assertThat(notebook.read().entries()).isEqualTo(entries(1, 2));
    assertThat(notebook.read().setAside())
        .singleElement()
        .satisfies(
            aside -> {
              assertThat(aside.line()).isEqualTo(2);
              assertThat(aside.reason()).startsWith("line 2: ").doesNotContain("\n");
            });
  }

  @Test
  void threadsLoseNothing(@TempDir Path folder) throws IOException {
    Notebook notebook = Notebook.at(folder.resolve("bench.jsonl"));

    IntStream.rangeClosed(1, 40)
        .parallel()
        .forEach(
            number -> {
              try {
                notebook.append(entry(number));
              } catch (IOException e) {
                throw new IllegalStateException(e);
              }
            });

    assertThat(notebook.read().entries())
        .containsExactlyInAnyOrderElementsOf(entries(IntStream.rangeClosed(1, 40).toArray()));
  }

  @Test
  void growsNoLongerThanItCanBeRead(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("long.jsonl");
    try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
      large.setLength(Notebook.MOST_BYTES - 10);
    }

    assertThatThrownBy(() -> Notebook.at(file).append(entry(1)))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("longer than 50000000 bytes");
    assertThat(Files.size(file)).isEqualTo(Notebook.MOST_BYTES - 10);
  }

  @Test
  void refusesAResultThatIsNoObject() {
    NotebookEntry list =
        new NotebookEntry(Instant.EPOCH, "1", "s", "h", List.of("match"), "[1, 2]");

    assertThatThrownBy(() -> NotebookJson.toLine(list))
        .isInstanceOf(JsonInputException.class)
        .hasMessage("found: $: is a list, must be an object");
  }

  @Test
  void findsTheMixesOfAnEntryWithTodaysPaints() {
    assertThat(Notebook.mixes(entry(7), SHELF))
        .extracting(FoundMix::mix)
        .containsExactly(Mix.parse("White:7", SHELF));

    Shelf other = Shelf.of("Other", List.of(Paint.of("Whit", Medium.ACRYLIC, srgb("#FFFFFF"))));
    assertThatThrownBy(() -> Notebook.mixes(entry(7), other))
        .hasMessageContaining("no paint 'White' on the shelf 'Other'; nearest is 'Whit'");
  }

  @Test
  void theHashOfAShelfIsOfWhatItHoldsAndNotOfItsLayout() {
    String text = ShelfJson.toText(SHELF);

    assertThat(ShelfJson.hash(ShelfJson.parse(text.replace("\n", "\r\n  "), "wide")))
        .isEqualTo(ShelfJson.hash(SHELF))
        .matches("[0-9a-f]{64}");
    assertThat(ShelfJson.hash(Shelf.of("Bench 2", SHELF.paints())))
        .isNotEqualTo(ShelfJson.hash(SHELF));
  }

  // RFC 8259, JSON Lines: a line holds one document, and a line feed ends it.
  @Test
  void anEntryIsOneLineOfUtf8(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("bench.jsonl");
    of(file, 2);

    try (Stream<String> lines = Files.lines(file, StandardCharsets.UTF_8)) {
      assertThat(lines).hasSize(2).allMatch(line -> line.startsWith("{\"format\":\""));
    }
  }

  @Test
  void theLibraryVersionIsThatOfTheBuild() throws IOException {
    String pom = Files.readString(Path.of("..", "pom.xml"));

    assertThat(pom).contains("<version>" + NotebookEntry.LIBRARY_VERSION + "</version>");
  }
}
