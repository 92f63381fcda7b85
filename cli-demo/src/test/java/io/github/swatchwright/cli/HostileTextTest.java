package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.photo.PhotoBytes;
import io.github.swatchwright.cli.terminal.Terminal;
import io.github.swatchwright.cli.terminal.TerminalColours;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Text from outside reaches no terminal, picture or page as it is when it could move the cursor,
 * hide or turn what follows: whatever file, name or argument brings it.
 */
class HostileTextTest {
  /** Sets a title, clears the screen, turns the writing, breaks lines; ends in half a character. */
  private static final String HOSTILE =
      "\u001B]0;x\u0007\u001B[2J\u009B31m\u0085\u202E\u2066\u2028\uD800";

  /** The same in JSON, where half a character can be escaped. */
  private static final String IN_JSON =
      "\\u001B]0;x\\u0007\\u001B[2J\\u009B31m\\u0085\\u202E\\u2066\\u2028\\uD800";

  /** The same as a file can hold it. */
  private static final String IN_FILE = HOSTILE.substring(0, HOSTILE.length() - 1);

  private static final Pattern BLOCK = Pattern.compile("\u001B\\[48;2;[0-9;]+m {6}\u001B\\[0m ");

  private Path folder = Path.of("");

  @BeforeEach
  void hostileFiles(@TempDir Path given) throws IOException {
    folder = given;
    String shelf = Files.readString(Path.of(Run.fiveShelf()));
    write(
        "shelf.json",
        shelf.replace("\"White\"", "\"White" + IN_JSON + "\"").replace("Five", "Five" + IN_JSON));
    write(
        "short.json",
        shelf.replace("\"White\"", "\"White\\u202E\"").replace("Five", "Five" + IN_JSON));
    write("broken.json", shelf.replace("\"medium\"", "\"" + IN_JSON + "\""));
    write(
        "cards.json",
        "{\"format\":\"swatchwright-cards\",\"version\":1,\"cards\":[{\"parts\":{\""
            + IN_JSON
            + "\":5,\"Black\":1},\"measured\":{\"srgb\":\"#808080\"}}]}");
    write(
        "batches.json",
        "{\"format\":\"swatchwright-cards\",\"version\":1,\"cards\":[{\"parts\":{\"Rust\":5},\"batches\":{\"Rust\":\""
            + IN_JSON
            + "\"},\"measured\":{\"srgb\":\"#808080\"}},{\"parts\":{\"Rust\":1},\"measured\":{\"srgb\":\"#803020\"}}]}");
    write(
        "notes.jsonl",
        "{\"format\":\"swatchwright-notebook\",\"version\":1,\"date\":\"2031-05-06T07:08:09Z\",\"library\":\""
            + IN_JSON
            + "\",\"shelf\":{\"name\":\""
            + IN_JSON
            + "\",\"sha256\":\""
            + IN_JSON
            + "\"},\"asked\":[\"compare\",\""
            + IN_JSON
            + "\",\"#808080\"],\"found\":{\""
            + IN_JSON
            + "\":\""
            + IN_JSON
            + "\"}}\n{\""
            + IN_JSON
            + "\":1}\n");
    write(
        "chart.json",
        "{\"format\":\"swatchwright-chart\",\"version\":1,\"white\":\""
            + IN_JSON
            + "\",\"patches\":[]}");
    write(
        "colours.json",
        "{\"photo\":\"p\",\"reference\":\""
            + IN_JSON
            + "\",\"colours\":[{\"lab\":[40,20,20],\"srgb\":\""
            + IN_JSON
            + "\",\"share\":1,\"spread\":2}]}");
    write("bench.csv", "name,medium,srgb\n\"" + IN_FILE + "\",\"" + IN_FILE + "\",#808080\n");
    write("good.csv", "name,medium,srgb\n\"" + IN_FILE + "\",oil,#808080\n");
    write(
        "bench.gpl",
        "GIMP Palette\nName: " + IN_FILE.replace("\u0085", "") + "\n1 2 " + IN_FILE + "\n");
    write(
        "bench.cgats",
        "CGATS.17\n"
            + "BEGIN_DATA_FORMAT\n"
            + "SAMPLE_NAME LAB_L LAB_A LAB_B\n"
            + "END_DATA_FORMAT\n"
            + "BEGIN_DATA\n"
            + "\""
            + IN_FILE
            + "\" 50 x"
            + IN_FILE
            + " 0\nEND_DATA\n");
    Files.write(folder.resolve("photo.png"), PhotoBytes.png(grey()));
    Files.write(folder.resolve("photo" + IN_FILE + ".png"), PhotoBytes.png(grey()));
  }

  private static BufferedImage grey() {
    BufferedImage image = new BufferedImage(20, 20, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 20; x++) {
      for (int y = 0; y < 20; y++) {
        image.setRGB(x, y, 0x808080);
      }
    }
    return image;
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  /** In each line {@code *} stands for the folder, {@code !} for the hostile text. */
  static Stream<String> lines() {
    return Stream.of(
        "compare !|#808080",
        "compare White!|Rust|--shelf|*/shelf.json",
        "predict White!:2,Black:1|--shelf|*/shelf.json",
        "predict !:2|--shelf|*/shelf.json",
        "match #909090|--max-drops|3|--shelf|*/shelf.json",
        "match White|--same-hiding|--max-drops|2|--shelf|*/short.json",
        "match #909090|--only|!|--shelf|*/shelf.json",
        "match #909090|--light|!",
        "match #909090|--!",
        "match #909090|--paints|!",
        "reach #8A4B2A|--catalogue|*/shelf.json|--paints|1|--max-drops|2",
        "correct Rust:6|--measured|#C3907F|--target|!|--shelf|*/shelf.json",
        "ladder Black|White!|--rungs|3|--shelf|*/shelf.json",
        "ladder --colours|*/colours.json",
        "coat --base|#808080|--coats|White:2|--shelf|*/short.json",
        "sample */photo!.png",
        "sample */photo!.png|--region|!",
        "sample */photo.png|--region|!",
        "sample */photo.png|--chart|*/chart.json@1,1,2,2",
        "sample */no!.png",
        "calibrate */cards.json|--out|*/better.json",
        "calibrate */batches.json|--out|*/better!.json|--shelf|*/shelf.json",
        "shelf --shelf|*/shelf.json",
        "shelf --shelf|*/broken.json",
        "shelf --import|*/bench.csv",
        "shelf --import|*/good.csv|--out|*/new!.json",
        "shelf --import|*/bench.gpl|--medium|oil",
        "shelf --import|*/bench.cgats|--medium|oil",
        "notebook */notes.jsonl",
        "notebook */notes.jsonl|--show|1",
        "notebook */notes.jsonl|--repeat|1",
        "notebook */!.jsonl",
        "!");
  }

  private String[] arguments(String line) {
    String hostile = line.contains("/") ? IN_FILE : HOSTILE;
    return Arrays.stream(line.replaceFirst(" ", "|").split("\\|", -1))
        .map(word -> word.replace("*", folder.toString()).replace("!", hostile))
        .toArray(String[]::new);
  }

  @ParameterizedTest
  @MethodSource("lines")
  void isMadePrintable(String line) {
    Terminal terminal = new Terminal(TerminalColours.TRUE, Terminal.USUAL_WIDTH);
    for (String[] args : List.of(arguments(line), Run.with(arguments(line), "--json"))) {
      Run run = Run.of(terminal, args);

      assertPrintable(BLOCK.matcher(run.out()).replaceAll(""));
      assertPrintable(run.err());
      assertThat(run.out() + run.err()).isNotBlank();
    }
  }

  private static void assertPrintable(String text) {
    assertThat(text.codePoints().filter(c -> c != '\n'))
        .as(text)
        .noneMatch(
            c ->
                switch (Character.getType(c)) {
                  case Character.CONTROL,
                      Character.FORMAT,
                      Character.SURROGATE,
                      Character.LINE_SEPARATOR,
                      Character.PARAGRAPH_SEPARATOR ->
                      true;
                  default -> false;
                });
  }

  @ParameterizedTest
  @ValueSource(strings = {"card.html", "card.svg"})
  void noCardHoldsIt(String name) throws IOException {
    Path card = folder.resolve(name);
    String[][] commands = {
      arguments("predict White!:2,Black:1|--shelf|*/shelf.json"),
      arguments("match #909090|--max-drops|3|--shelf|*/shelf.json"),
      arguments("sample */photo!.png"),
      arguments("coat --base|#808080|--coats|White:2|--shelf|*/short.json"),
      arguments("ladder Black|White|--rungs|3|--shelf|*/short.json")
    };
    for (String[] command : commands) {
      Run.of(Run.with(command, "--card", card.toString()));

      if (Files.exists(card)) {
        assertPrintable(Files.readString(card).replace("\t", ""));
      }
      Files.deleteIfExists(card);
    }
  }

  @Test
  void aNameCannotShowABlockOfColour() {
    Terminal terminal = new Terminal(TerminalColours.TRUE, Terminal.USUAL_WIDTH);

    Run run = Run.of(terminal, "compare", "\u001B[48;2;255;0;0m      \u001B[0m ", "#808080");

    assertThat(run.err()).doesNotContain("\u001B");
  }
}
