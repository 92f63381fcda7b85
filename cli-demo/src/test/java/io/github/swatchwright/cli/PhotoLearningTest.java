package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.json.CardsJson;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a dried test is, read from a photo: correction and test card in one command. */
class PhotoLearningTest {
  private static final String POT = "Red oxide:3, Burnt umber:2";
  private static final String PHOTO = "../testdata/photos/hull-plate.jpg";
  private static final String RUST = PHOTO + "@100,170,30,30";
  private static final String PLATE = PHOTO + "@240,100,160,160";
  private static final String GREY = "510,56,76,76@18%";

  @TempDir Path folder = Path.of("");

  @Test
  void correctTellsWhatToAddAndWritesTheCard() throws IOException {
    Path cards = folder.resolve("cards.json");
    Run run =
        Run.of(
            "correct",
            POT,
            "--photo",
            RUST,
            "--target",
            PLATE,
            "--grey",
            GREY,
            "--out",
            "" + cards);
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out())
        .containsPattern(
            "In one photo, pot and target are ΔE00 [0-9.]+ apart, which is off by less")
        .contains("  add ")
        .contains("Card 1 written to " + cards);
    TestCard card = read(cards).get(0);
    assertThat(card.parts()).extracting(TestCard.Part::paint).contains("Red oxide", "Burnt umber");
    // A grey card leaves sd 2 on each axis, more on a strong colour.
    assertThat(card.measuredError().orElseThrow()).isBetween(2.0, 6.0);
  }

  @Test
  void aKnownPatchOfLikeColourMakesTheTestSurer() {
    Run alone = Run.of("sample", PHOTO, "--region", "240,100,80,80", "--grey", GREY);
    Run beside =
        Run.of(
            "sample",
            PHOTO,
            "--region",
            "240,100,80,80",
            "--grey",
            GREY,
            "--beside",
            "330,180,60,60@lab(50.5, -3.5, -9)");
    assertThat(beside.status()).as(beside.err()).isZero();
    assertThat(beside.out()).contains("Reference: grey patch, and a known patch");
    assertThat(error(beside)).isLessThan(error(alone) / 2);
  }

  private static double error(Run run) {
    return Double.parseDouble(run.out().replaceAll("(?s).*error +ΔE00 ([0-9.]+).*", "$1"));
  }

  @Test
  void notebookLearnsFromThePhotoOfAnEntrysTest() throws IOException {
    String book = folder.resolve("bench.jsonl").toString();
    Path cards = folder.resolve("cards.json");
    assertThat(Run.of("match", "#8A4B2A", "--alternatives", "1", "--notebook", book).status())
        .isZero();
    Run run =
        Run.of(
            "notebook",
            book,
            "--test-card",
            "1",
            "--measured-in",
            RUST,
            "--grey",
            GREY,
            "--out",
            cards.toString());
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("Card 1: ").contains("from the target.");
    assertThat(read(cards)).hasSize(1);
    assertThat(read(cards).get(0).measuredError()).isPresent();
  }

  private static List<TestCard> read(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return CardsJson.read(in, file.toString()).cards();
    }
  }

  @ParameterizedTest(name = "{0} is refused: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "--target;#8A4B2A|give the pot's colour once, with --measured COLOUR or --photo PHOTO@AREA",
        "--target;#8A4B2A;--measured;#804020;--photo;x.jpg@1,1,5,5|give the pot's colour once",
        "--target;#8A4B2A;--photo;x.jpg|'x.jpg' is not of the form photo.jpg@x,y,w,h",
        "--target;#8A4B2A;--photo;RUST;--beside;1,1,5,5|--beside: '1,1,5,5' is not of the form"
            + " x,y,w,h@COLOUR",
        "--target;#8A4B2A;--photo;RUST;--beside;1,1,5,5@rust|--beside: no paint 'rust' on the"
            + " shelf",
        "--target;#8A4B2A;--photo;RUST;--grey;GREY;--beside;240,100,99,99@#FF0000|should be"
            + " lab(53.24, 80.09, 67.20): is it the right place?"
      })
  void whatDoesNotFitIsRefused(String arguments, String message) {
    String[] typed = arguments.replace("RUST", RUST).replace("GREY", GREY).split(";", -1);
    Run run = Run.of(Run.with(new String[] {"correct", POT}, typed));
    assertThat(run.status()).isEqualTo(Main.REFUSED);
    assertThat(run.err()).contains(message);
  }
}
