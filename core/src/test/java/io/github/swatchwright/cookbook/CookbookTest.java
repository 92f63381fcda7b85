package io.github.swatchwright.cookbook;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.ShownCode;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.estimate.ShelfProblem;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.photo.ArgbPhoto;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.testdata.DemoShelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The programs of {@code core/docs/cookbook.md}: what the page shows compiles and runs. */
class CookbookTest {
  private static final Path PAGE = Path.of("docs/cookbook.md");
  private static final Path SOURCES = Path.of("src/test/java/io/github/swatchwright/cookbook");
  private static final Path KOTLIN =
      Path.of("src/it/kotlin-correction/src/main/kotlin/demo/Correction.kt");

  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");

  private static List<Path> programs() throws IOException {
    try (Stream<Path> files = Files.list(SOURCES)) {
      return files.filter(file -> !file.endsWith("CookbookTest.java")).sorted().toList();
    }
  }

  @Test
  void thePageShowsThesePrograms() throws IOException {
    List<List<String>> shown = ShownCode.of(PAGE, "java");
    List<Path> programs = programs();
    assertThat(shown).hasSameSizeAs(programs);
    for (List<String> program : shown) {
      String name = program.get(0).replaceAll(".*class (\\w+).*", "$1");
      assertThat(programs).contains(SOURCES.resolve(name + ".java"));
      ShownCode.assertIsIn(SOURCES.resolve(name + ".java"), program);
      assertThat(program).as(name).hasSizeBetween(10, 30);
    }
    List<List<String>> kotlin = ShownCode.of(PAGE, "kotlin");
    assertThat(kotlin).hasSize(1);
    assertThat(kotlin.get(0)).hasSizeBetween(10, 30);
    ShownCode.assertIsIn(KOTLIN, kotlin.get(0));
  }

  @Test
  void eyedropper() {
    int[] white = new int[40 * 30];
    Arrays.fill(white, 0xFFFFFFFF);
    int[] rust = new int[40 * 30];
    Arrays.fill(rust, 0xFF8A4B2A);
    Photo picture = new ArgbPhoto(40, 30, rust, RgbSpace.SRGB);
    Eyedropper eyedropper = new Eyedropper(SHELF);
    assertThat(eyedropper.moved(picture, 39, 0).orElseThrow().recipe().drops())
        .hasSizeLessThanOrEqualTo(2);
    assertThat(eyedropper.letGo(picture, 20, 15).orElseThrow().deltaE00()).isLessThan(2);
    assertThat(eyedropper.moved(picture, 40, 15)).isEmpty();
    assertThat(eyedropper.moved(new ArgbPhoto(40, 30, white, RgbSpace.SRGB), 20, 15)).isEmpty();
  }

  @Test
  void shelfEditor(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("shelf.json"), DemoShelf.text());
    List<ShelfProblem> problems = ShelfEditor.add(file, "Second grey", "#656A6C");
    assertThat(problems).extracting(ShelfProblem::kind).contains(ShelfProblem.Kind.LOOKS_ALIKE);
    assertThat(ShelfJson.read(file).paints()).hasSize(SHELF.paints().size() + 1);
  }

  @Test
  void batch() {
    List<String> colours = List.of("#8A4B2A", "#656A6C", "#C48A2C");
    List<String> lines = Collections.synchronizedList(new ArrayList<>());
    assertThat(Batch.match(SHELF, colours, Duration.ofMinutes(1), lines::add)).isEqualTo(3);
    assertThat(lines).hasSize(3).noneMatch(line -> line.contains("cut short"));
    assertThat(Batch.match(SHELF, colours, Duration.ZERO, lines::add)).isZero();
  }

  @Test
  void webAnswer() {
    WebAnswer service = new WebAnswer();
    service.open("bench", DemoShelf.text());
    List<WebAnswer.Answer> answers =
        Stream.generate(() -> "#8A4B2A")
            .limit(20)
            .parallel()
            .map(colour -> service.answer("bench", colour))
            .toList();
    assertThat(answers).allMatch(answer -> answer.status() == 200);
    assertThat(answers.stream().map(WebAnswer.Answer::body).collect(Collectors.toSet())).hasSize(1);
    assertThat(service.answer("bench", "rust?"))
        .satisfies(answer -> assertThat(answer.status()).isEqualTo(400))
        .satisfies(answer -> assertThat(answer.body()).contains("rust?").hasLineCount(1));
    assertThat(service.answer("attic", "#8A4B2A").status()).isEqualTo(404);
  }

  @Test
  void rustTexture() {
    int[] pixels = RustTexture.argb(SHELF, 64, 32, 7);
    assertThat(pixels).hasSize(64 * 32).isEqualTo(RustTexture.argb(SHELF, 64, 32, 7));
    assertThat(Arrays.stream(pixels).distinct().count()).isGreaterThan(3);
    assertThat(Arrays.stream(pixels)).allMatch(pixel -> pixel >>> 24 == 0xFF);
  }

  @Test
  void deltaE() {
    // Sharma, Wu, Dalal 2005, table 1, pair 1: ΔE00 2.0425.
    assertThat(DeltaE.compare("lab(50, 2.6772, -79.7751)", "lab(50, 0, -82.7485)"))
        .startsWith("ΔE00 2.04 (visible): lightness +0.00, ");
  }

  @Test
  void learningFromCards(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("shelf.json"), DemoShelf.text());
    NextCards next =
        LearningFromCards.learn(file, "Titanium white:5, Red oxide:1", Lab.ofD65(58, 24, 17));
    assertThat(next.cards()).hasSize(2);
    assertThat(ShelfJson.read(file).paint("Red oxide").optics()).isPresent();
  }
}
