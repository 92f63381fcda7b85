package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrateCommandTest {
  private static final String CARD =
      "{\"parts\":{\"White\":5,\"Grün, dunkel\":1},\"measured\":{\"lab\":[66,-9,4]}}";

  @TempDir Path folder = Path.of("");

  private String cards(String... cards) throws IOException {
    Path file = folder.resolve("cards.json");
    Files.writeString(
        file,
        "{\"format\":\"swatchwright-cards\",\"version\":1,\"cards\":["
            + String.join(",", cards)
            + "]}");
    return file.toString();
  }

  private String better() {
    return folder.resolve("better.shelf.json").toString();
  }

  @Test
  void writesABetterShelfThatPredictsWhatWasMeasured() throws Exception {
    Run run =
        Run.of("calibrate", cards(CARD), "--shelf", Run.fiveShelf(), "--out", better(), "--json");

    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    JsonNode result = new ObjectMapper().readTree(run.out());
    assertThat(result.get("paints")).hasSize(2);
    assertThat(result.get("surface").get("k1").asDouble()).isBetween(0.0, 0.04);
    assertThat(result.get("surface").get("k2").asDouble()).isEqualTo(0.4);
    JsonNode residual = result.get("residual");
    assertThat(residual.get("after").asDouble()).isLessThan(residual.get("before").asDouble());
    JsonNode before = prediction(Run.fiveShelf());
    JsonNode after = prediction(better());
    assertThat(after.get("interval").get("deltaE00").asDouble())
        .isLessThan(before.get("interval").get("deltaE00").asDouble());
    // The card's own error is one unit.
    assertThat(Math.abs(after.get("predicted").get("lab").get(0).asDouble() - 66)).isLessThan(1);
  }

  private static JsonNode prediction(String shelf) throws IOException {
    Run run = Run.of("predict", "White:5, Grün, dunkel:1", "--json", "--shelf", shelf);
    return new ObjectMapper().readTree(run.out()).get("predictions").get(0);
  }

  @Test
  void saysInWordsWhatTheCardsDid() throws Exception {
    String out =
        Run.of("calibrate", cards(CARD), "--shelf", Run.fiveShelf(), "--out", better()).out();
    assertThat(out)
        .contains("now  White (1 card)", "now  all cards")
        .endsWith("Written to " + better() + ".\n");
  }

  @Test
  void theExampleInItsHelpWorks() throws Exception {
    assertThat(Run.of("calibrate", "--help").out())
        .contains("swatchwright calibrate cards.json --out better.shelf.json");
    String card =
        "{\"parts\":{\"Titanium white\":5,\"Red oxide\":1},\"measured\":{\"srgb\":\"#C08070\"}}";
    assertThat(Run.of("calibrate", cards(card), "--out", better()).status()).isZero();
  }

  @Test
  void aMeasuredPotIsACardLikeOneInAFile() throws Exception {
    String fromFile = folder.resolve("file.shelf.json").toString();
    String[] shelf = {"--shelf", Run.fiveShelf()};
    assertThat(run(shelf, "calibrate", cards(CARD), "--out", fromFile).status()).isZero();
    Run pot =
        run(
            shelf,
            "calibrate",
            "--pot",
            "White:5, Grün, dunkel:1",
            "--measured",
            "lab(66, -9, 4)",
            "--out",
            better());
    assertThat(pot.err()).isEmpty();
    assertThat(Files.readString(Path.of(better()))).isEqualTo(Files.readString(Path.of(fromFile)));
  }

  private static Run run(String[] last, String... first) {
    String[] all = Arrays.copyOf(first, first.length + last.length);
    System.arraycopy(last, 0, all, first.length, last.length);
    return Run.of(all);
  }

  @Test
  void namesTheCardsToPaintNextAloneAndAfterOthers() throws Exception {
    String[] shelf = {"--shelf", Run.fiveShelf(), "--next", "--for", "#6F8F80", "--json"};
    JsonNode alone = new ObjectMapper().readTree(run(shelf, "calibrate").out()).get("next");
    JsonNode after =
        new ObjectMapper()
            .readTree(run(shelf, "calibrate", cards(CARD), "--out", better()).out())
            .get("next");
    assertThat(alone.get("cards").get(0).get("drops")).isNotEmpty();
    assertThat(alone.get("cards").get(0).get("expectedDeltaE00").asDouble())
        .isLessThan(alone.get("expectedDeltaE00").asDouble());
    assertThat(after.get("expectedDeltaE00").asDouble())
        .isLessThan(alone.get("expectedDeltaE00").asDouble());
    assertThat(Run.of("calibrate", "--next", "--shelf", Run.fiveShelf()).out())
        .contains("Expect ΔE00 ", "the mean of a sample of the shelf's mixes", "  paint ");
  }

  @Test
  void fitsTheSurfaceWhenAskedAndStoresIt() throws Exception {
    Run run =
        run(
            new String[] {"--shelf", Run.fiveShelf(), "--fit-surface"},
            "calibrate",
            cards(CARD),
            "--out",
            better());
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Surface: k1 0.0");
    assertThat(Files.readString(Path.of(better()))).contains("\"surface\"");
    Run again =
        Run.of("calibrate", cards(CARD), "--shelf", better(), "--fit-surface", "--out", other());
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("has learned from cards under a surface already");
  }

  @Test
  void withoutAFileItOnlyTellsWhatTheCardsTeach() throws Exception {
    Run told = run(new String[] {"--shelf", Run.fiveShelf()}, "calibrate", cards(CARD));
    assertThat(told.status()).isZero();
    assertThat(told.out()).endsWith("The better shelf is not kept: --out NEW writes it.\n");
    Run kept =
        run(new String[] {"--shelf", Run.fiveShelf()}, "calibrate", cards(CARD), "--out", better());
    assertThat(lines(kept)).isEqualTo(lines(told));
  }

  /** All but the last line, which tells of the file. */
  private static List<String> lines(Run run) {
    List<String> lines = run.out().lines().toList();
    return lines.subList(0, lines.size() - 1);
  }

  @Test
  void whatDoesNotGoTogetherIsRefused() throws Exception {
    refused("name cards to learn from: CARDS or --pot; or ask --next", "calibrate");
    refused("--for is given without --next, must be with it", "calibrate", "--for", "#808080");
    refused("each --pot needs its --measured: there are 1 and 0", "calibrate", "--pot", "White:1");
    refused("--out is given without cards to learn from", "calibrate", "--next", "--out", better());
  }

  private static void refused(String message, String... args) {
    Run run = run(new String[] {"--shelf", Run.fiveShelf()}, args);
    assertThat(run.err()).isEqualTo("swatchwright: " + message + System.lineSeparator());
    assertThat(run.out()).isEmpty();
    assertThat(run.status()).isEqualTo(2);
  }

  @Test
  void badCardsAreRefusedInOneLineAndTheShelfStaysAsItWas() throws Exception {
    Path shelf = Files.copy(Path.of(Run.fiveShelf()), folder.resolve("mine.shelf.json"));
    String old = Files.readString(shelf);
    refuses(shelf, CARD.replace("White", "Wite"), "card 1: no paint 'Wite' on the shelf");
    refuses(shelf, CARD.replace(":5,", ":0,"), "must be a finite number above 0");
    refuses(shelf, CARD.replace(":5,", ":-1,"), "must be a finite number above 0");
    refuses(shelf, CARD.replace(":5,", ":NaN,"), "must be a finite number");
    refuses(shelf, CARD.replace("White", "Brass"), "card 1: 'Brass' is metallic");
    refuses(shelf, CARD.replace("White", "Rust"), "card 1: the parts are of more than one medium");
    refuses(shelf, CARD.replace("}}", "},\"measured\":{\"srgb\":\"#102030\"}}"), "measured");
    refuses(shelf, CARD.replace("}}", "},\"by\":\"drops\"}"), "must be one of volume, mass");
    refuses(
        shelf, CARD.replace("}}", "},\"by\":\"mass\",\"by\":\"volume\"}"), "by: is given twice");
    assertThat(Files.readString(shelf)).isEqualTo(old);
    assertThat(Path.of(other())).doesNotExist();
    Files.writeString(
        shelf,
        "{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"s\",\"paints\":["
            + "{\"name\":\"White\",\"medium\":\"acrylic\"},"
            + "{\"name\":\"Grün, dunkel\",\"medium\":\"acrylic\"}]}");
    refuses(
        shelf,
        CARD,
        "1 card can't tell 'Grün, dunkel' and 'White' apart: give a masstone, or more cards");
    Run missing = Run.of("calibrate", folder.resolve("none.json").toString(), "--out", better());
    assertThat(missing.status()).isEqualTo(2);
    assertThat(missing.err().lines()).hasSize(1);
  }

  private String other() {
    return folder.resolve("other.shelf.json").toString();
  }

  private void refuses(Path shelf, String card, String message) throws IOException {
    Run run = Run.of("calibrate", cards(card), "--shelf", shelf.toString(), "--out", other());
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains(message);
  }

  @Test
  void aShelfIsOldOrNewWhenTheProgramIsKilledInTheMiddle() throws Exception {
    Path shelf = folder.resolve("mine.shelf.json");
    String[] args = {
      "calibrate", cards(CARD), "--shelf", Run.fiveShelf(), "--out", shelf.toString()
    };
    String old = Files.readString(Path.of(Run.fiveShelf()));
    Files.writeString(shelf, old);
    assertThat(Run.of(args).status()).isZero();
    String better = Files.readString(shelf);
    for (int milliseconds = 100; milliseconds <= 1500; milliseconds += 100) {
      Files.writeString(shelf, old);
      Process process = start(args);
      Thread.sleep(milliseconds);
      process.destroyForcibly().waitFor();
      assertThat(Files.readString(shelf)).isIn(old, better);
    }
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).contains(shelf);
    }
  }

  private static Process start(String... args) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    command.addAll(List.of(args));
    return new ProcessBuilder(command).start();
  }
}
