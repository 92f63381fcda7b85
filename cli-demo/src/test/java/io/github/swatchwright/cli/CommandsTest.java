package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {
  private static final ObjectMapper ONE_OBJECT =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private static String done(String... args) {
    Run run = Run.of(args);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return run.out();
  }

  private static JsonNode json(String... args) throws JsonProcessingException {
    JsonNode node = ONE_OBJECT.readTree(done(args));
    assertThat(node.isObject()).isTrue();
    return node;
  }

  private static List<String> names(JsonNode list, String field) {
    List<String> names = new ArrayList<>();
    list.forEach(item -> names.add(item.get(field).asText()));
    return names;
  }

  // Of two greys, ΔE00 is ΔL over 1 + 0.015(L−50)²/√(20+(L−50)²) at their mean L: 0.8 / 1.04.
  @Test
  void comparesTwoColours() {
    assertThat(done("compare", "lab(53.6, 0, 0)", "lab(54.4, 0, 0)").lines())
        .containsExactly(
            "A     #808080  lab(53.60, 0.00, 0.00)",
            "B     #828282  lab(54.40, 0.00, 0.00)",
            "Light D65",
            "",
            "ΔE00    0.77  match: Most people see no difference.",
            "ΔL′    +0.80  B is lighter",
            "ΔC′    +0.00  the same",
            "ΔH′    +0.00  the same");
  }

  // Sharma, Wu, Dalal 2005, table 1, pair 7.
  @Test
  void comparesAsThePublishedTableDoes() throws Exception {
    JsonNode result =
        json("compare", "lab(50.0000, 0.0000, 0.0000)", "lab(50.0000, -1.0000, 2.0000)", "--json");

    assertThat(result.get("deltaE00").asDouble()).isEqualTo(2.3669);
    assertThat(result.get("deltaL").asDouble()).isZero();
    assertThat(result.get("deltaC").asDouble()).isPositive();
    assertThat(result.get("deltaH").asDouble()).isZero();
    assertThat(result.get("verdict").asText()).isEqualTo("visible");
  }

  @Test
  void saysThatLargeDifferencesAreNotMeasured() {
    assertThat(done("compare", "#000000", "White", "--shelf", Run.fiveShelf()))
        .contains("different:", "not reliably by how much");
  }

  @Test
  void predictsMixes() throws Exception {
    JsonNode predictions =
        json("predict", "White:6, Black:1", "grün, dunkel", "--json", "--shelf", Run.fiveShelf())
            .get("predictions");

    assertThat(names(predictions, "mix")).containsExactly("White:6, Black:1", "Grün, dunkel:1");
    JsonNode masstone = predictions.get(1).get("predicted");
    // One paint alone is its own masstone; the estimate may move it by part of the swatch's error.
    assertThat(masstone.get("lab").get(0).asDouble()).isCloseTo(36.3, within(1.0));
    assertThat(masstone.get("srgb").asText()).matches("#[0-9A-F]{6}");
    predictions.forEach(
        prediction ->
            assertThat(prediction.get("interval").get("deltaE00").asDouble()).isPositive());
  }

  @Test
  void predictsInWords() {
    assertThat(done("predict", "White:1", "--shelf", Run.fiveShelf()))
        .startsWith("White:1\n  #")
        .contains("In 80 of 100 tries, your paint will be within ΔE00 ")
        .endsWith("Light: D65\n");
    // Measured by an instrument, and unmixed: known almost exactly.
    assertThat(done("predict", "Red oxide:1")).contains("within ΔE00 0.1 of this");
  }

  @Test
  void matchesAColourWithTheKeysOfTheContract() throws Exception {
    String[] shelf = {"--json", "--shelf", Run.fiveShelf()};
    JsonNode lab =
        json(with(shelf, "predict", "White:8, Grün, dunkel:3"))
            .get("predictions")
            .get(0)
            .get("predicted")
            .get("lab");
    String target =
        "lab(" + lab.get(0).asText() + "," + lab.get(1).asText() + "," + lab.get(2).asText() + ")";

    JsonNode result = json(with(shelf, "match", target, "--alternatives", "2"));

    assertThat(result.get("reachable").asBoolean()).isTrue();
    // The target is a mix of this shelf, rounded to four decimals.
    assertThat(result.get("nearestDeltaE00").asDouble()).isCloseTo(0, within(0.001));
    assertThat(result.get("target").get("lab")).isEqualTo(lab);
    assertThat(result.get("recipes")).hasSize(2);
    JsonNode best = result.get("recipes").get(0);
    assertThat(best.fieldNames())
        .toIterable()
        .contains("drops", "predicted", "deltaE00", "expectedDeltaE00", "interval");
    assertThat(names(best.get("drops"), "paint")).contains("White").doesNotContain("Brass");
    assertThat(best.get("expectedDeltaE00").asDouble())
        .isGreaterThanOrEqualTo(best.get("deltaE00").asDouble());
    assertThat(result.get("leftOut").get(0).asText()).contains("'Brass' is metallic");
  }

  @Test
  void matchesWithinTheOptions() throws Exception {
    String[] common = {"--json", "--shelf", Run.fiveShelf()};

    assertThat(paintsOf(json(with(common, "match", "#909090", "--without", "White,Black"))))
        .doesNotContain("White", "Black");
    assertThat(
            paintsOf(json(with(common, "match", "#909090", "--only", "White", "--only", "Rust"))))
        .isSubsetOf("White", "Rust");
    assertThat(paintsOf(json(with(common, "match", "#909090", "--only", "Grün, dunkel"))))
        .containsOnly("Grün, dunkel");
    assertThat(paintsOf(json(with(common, "match", "#909090", "--medium", "enamel"))))
        .containsOnly("Rust");
    for (JsonNode recipe :
        json(with(common, "match", "#909090", "--paints", "2", "--max-drops", "3"))
            .get("recipes")) {
      assertThat(recipe.get("drops").size()).isLessThanOrEqualTo(2);
      int total = 0;
      for (JsonNode drops : recipe.get("drops")) {
        total += drops.get("drops").asInt();
      }
      assertThat(total).isLessThanOrEqualTo(3);
    }
  }

  private static String[] with(String[] common, String... args) {
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of(common));
    return all.toArray(String[]::new);
  }

  private static List<String> paintsOf(JsonNode result) {
    List<String> paints = new ArrayList<>();
    result.get("recipes").forEach(recipe -> paints.addAll(names(recipe.get("drops"), "paint")));
    assertThat(paints).isNotEmpty();
    return paints;
  }

  @Test
  void saysInWordsWhatIsMissing() {
    assertThat(done("match", "#00FF00", "--shelf", Run.fiveShelf()))
        .containsPattern("These paints don't reach this colour: the nearest mix is ΔE00 [0-9.]+ ")
        .contains("The target is ", "more chromatic", " than it (ΔL′ ")
        .containsPattern(
            "(?m)^ 1\\.  Expect another colour, ΔE00 [0-9.]+; ΔE00 [0-9.]+ if all goes well$")
        .containsPattern("(?m)^ +[0-9]+ drops?  ");
  }

  @Test
  void listsAShelfWithItsProblems() throws Exception {
    JsonNode report = json("shelf", "--json", "--shelf", Run.fiveShelf());

    assertThat(names(report.get("paints"), "name"))
        .containsExactly("White", "Black", "Grün, dunkel", "Rust", "Brass");
    assertThat(report.get("paints").get(0).get("coatsToHide").asDouble()).isPositive();
    assertThat(report.get("paints").get(4).has("coatsToHide")).isFalse();
    assertThat(report.get("problems")).hasSize(1);
    assertThat(report.get("problems").get(0).asText()).startsWith("'Brass' is metallic");
    assertThat(done("shelf", "--shelf", Run.fiveShelf()))
        .startsWith("Five invented paints: 5 paints, light D65\n")
        .contains("Grün, dunkel  acrylic  ", "Note: 'Brass' is metallic");
  }

  @ParameterizedTest
  @ValueSource(strings = {"D65", "D50", "A", "F11", "LED-B3"})
  void looksUnderEveryLight(String light) throws Exception {
    assertThat(json("shelf", "--json", "--light", light).get("light").asText()).isEqualTo(light);
    assertThat(json("match", "#6F7375", "--json", "--paints", "1", "--light", light).get("recipes"))
        .isNotEmpty();
    assertThat(json("compare", "#808080", "Red oxide", "--json", "--light", light).get("deltaE00"))
        .isNotNull();
  }

  @Test
  void usesTheDemoShelfUnlessToldOtherwise() throws Exception {
    assertThat(json("shelf", "--json").get("name").asText()).contains("invented demo paints");
  }

  @Test
  void showsColoursOnATerminalAlone() {
    String[] args = {"match", "#6F7375", "--paints", "1", "--alternatives", "1"};

    assertThat(Run.onTerminal(args).out()).contains("\u001B[48;2;111;115;117m      \u001B[0m ");
    assertThat(Run.of(args).out()).doesNotContain("\u001B");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "compare", "predict", "match", "correct", "coat", "shelf", "notebook"})
  void helpHasAnExampleThatWorks(String command, @TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("bottles.csv"), "name,medium,srgb\nQuay green,oil,#405040\n");
    Files.copy(Path.of("../testdata/photos/hull-plate.jpg"), folder.resolve("test.jpg"));
    Files.copy(Path.of("../testdata/photos/hull-plate.jpg"), folder.resolve("new.jpg"));
    Files.writeString(
        folder.resolve("new.regions.csv"), "name,region\nQuay-side red,\"240,100,160,160\"\n");
    String help = command.isEmpty() ? done("--help") : done(command, "--help");

    List<String> examples =
        help.replaceAll(" \\\\\\R *", " ")
            .lines()
            .map(String::strip)
            .filter(line -> line.startsWith("swatchwright "))
            .toList();

    assertThat(help.lines()).allMatch(line -> line.length() <= 80);
    assertThat(examples).isNotEmpty();
    for (String example : examples) {
      Run run = Run.of(in(folder, words(example)));
      assertThat(run.status()).as(run.err()).isZero();
      assertThat(run.out()).isNotEmpty();
    }
  }

  /**
   * The arguments with files, which examples call {@code bench.}, {@code bottles.}, {@code cards.},
   * {@code new.} or {@code test.}, in a folder.
   */
  private static String[] in(Path folder, String[] words) {
    return Arrays.stream(words)
        .map(
            word ->
                word.matches("(bench|bottles|cards|new|test)\\.[a-z.]+(@.*)?")
                    ? folder.resolve(word)
                    : word)
        .map(Object::toString)
        .toArray(String[]::new);
  }

  /** The arguments after the program's name, as a shell parts them: in quotes or by spaces. */
  private static String[] words(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = Pattern.compile("'([^']*)'|(\\S+)").matcher(line);
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return words.subList(1, words.size()).toArray(String[]::new);
  }
}
