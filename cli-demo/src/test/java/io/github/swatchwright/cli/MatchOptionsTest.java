package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code match} takes beside the colour, on the shelf of five. */
class MatchOptionsTest {

  private static String done(String... args) {
    Run run = Run.of(args);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return run.out();
  }

  private static JsonNode match(String... args) throws IOException {
    List<String> all = new ArrayList<>(List.of("match"));
    all.addAll(List.of(args));
    if (!all.contains("--shelf")) {
      all.addAll(List.of("--shelf", Run.fiveShelf()));
    }
    all.add("--json");
    return new ObjectMapper().readTree(done(all.toArray(String[]::new)));
  }

  private static Set<String> ingredients(JsonNode recipe) {
    Set<String> names = new HashSet<>();
    recipe
        .get("drops")
        .forEach(some -> names.add(some.path("paint").asText(some.path("pot").asText())));
    return names;
  }

  @Test
  void aLeftOverPotIsAnIngredient() throws IOException {
    JsonNode recipes = match("#A0A0A0", "--use-pot", "White:6, Black:1").get("recipes");
    List<JsonNode> pots = new ArrayList<>();
    recipes.forEach(recipe -> recipe.get("drops").forEach(some -> pots.add(some.path("pot"))));
    assertThat(pots).extracting(JsonNode::asText).contains("White:6, Black:1");
    assertThat(
            done(
                "match",
                "#A0A0A0",
                "--use-pot",
                "White:6, Black:1",
                "--use-pot",
                "Rust:3",
                "--shelf",
                Run.fiveShelf()))
        .containsPattern("[0-9]+ drops?  +pot of White:6, Black:1");
  }

  @Test
  void aPaintThatIsTheTargetIsDoneWithout() throws IOException {
    JsonNode result = match("Black", "--same-hiding");
    assertThat(result.get("insteadOf").get("paint").asText()).isEqualTo("Black");
    assertThat(result.get("insteadOf").get("contrastRatio").asDouble()).isBetween(0.9, 1.0);
    result
        .get("recipes")
        .forEach(recipe -> assertThat(ingredients(recipe)).doesNotContain("Black"));
    assertThat(result.get("leftOut").toString()).contains("'Black' is what is to be matched");
    assertThat(ingredients(match("Black", "--only", "Black").get("recipes").get(0)))
        .containsExactly("Black");
    assertThat(done("match", "Black", "--same-hiding", "--shelf", Run.fiveShelf()))
        .contains("Instead of 'Black'; one coat of it has a contrast ratio of ")
        .contains("One coat has a contrast ratio of ");
  }

  @Test
  void aPaintOfAnotherShelfIsMatchedFromThisOne(@TempDir Path folder) throws IOException {
    Path other =
        Files.writeString(
            folder.resolve("other.json"),
            """
            {"format":"swatchwright-shelf","version":1,"name":"other","paints":[
              {"name":"Harbour grey","medium":"acrylic","masstone":{"lab":[60,0,0]},
               "hiding":{"contrastRatio":0.9}}]}
            """);
    JsonNode result = match("Harbour grey", "--target-shelf", other.toString(), "--same-hiding");
    assertThat(result.get("insteadOf").get("contrastRatio").asDouble()).isEqualTo(0.9);
    assertThat(result.get("target").get("lab").get(0).asDouble()).isEqualTo(60);
    assertThat(result.get("recipes")).isNotEmpty();
  }

  @Test
  void hidingAndPreferencesAreObeyedAndShown() throws IOException {
    for (JsonNode recipe : match("#909090", "--min-hiding", "0.9").get("recipes")) {
      assertThat(recipe.get("contrastRatio").asDouble()).isGreaterThanOrEqualTo(0.9);
    }
    JsonNode few = match("#909090", "--prefer", "fewer-paints, fewer-drops").get("recipes").get(0);
    double score = few.get("expectedDeltaE00").asDouble();
    int total = 0;
    for (JsonNode drops : few.get("drops")) {
      total += drops.get("drops").asInt();
    }
    score += 0.5 * (few.get("drops").size() - 1) + 0.1 * (total - 1);
    // Both are rounded to four decimals.
    assertThat(few.get("score").asDouble()).isBetween(score - 1.01e-4, score + 1.01e-4);
    assertThat(
            done(
                "match",
                "#909090",
                "--prefer",
                "cheaper,across-lights",
                "--shelf",
                Run.fiveShelf()))
        .contains("Other lights: unknown, since no reflectances were measured.")
        .contains("Price by the millilitre: not known.");
    assertThat(
            done(
                "match",
                "#909090",
                "--only",
                "White",
                "--min-hiding",
                "1",
                "--shelf",
                Run.fiveShelf()))
        .contains("None of the 1 nearest mixes hides as well as wanted.");
  }

  @Test
  void priceAndWhatIsLeftAreReadFromTheShelf(@TempDir Path folder) throws IOException {
    Path shelf =
        Files.writeString(
            folder.resolve("stock.json"),
            """
            {"format":"swatchwright-shelf","version":1,"name":"stock","paints":[
              {"name":"White","medium":"acrylic","masstone":{"lab":[96,0,2]},
               "bottle":{"pricePerMillilitre":0.2}},
              {"name":"Black","medium":"acrylic","masstone":{"lab":[22,0,0]},
               "bottle":{"leftMillilitres":0.1,"pricePerMillilitre":0.4}},
              {"name":"Blue","medium":"acrylic","masstone":{"lab":[30,0,-40]},
               "bottle":{"leftMillilitres":0}}]}
            """);
    JsonNode result = match("#808080", "--shelf", shelf.toString(), "--prefer", "cheaper");
    assertThat(result.get("leftOut").toString()).contains("'Blue' is used up");
    for (JsonNode recipe : result.get("recipes")) {
      assertThat(recipe.get("pricePerMillilitre").asDouble()).isBetween(0.2, 0.4);
      for (JsonNode some : recipe.get("drops")) {
        // 0.1 ml of drops of 0.04 ml.
        assertThat(some.get("drops").asInt())
            .isLessThanOrEqualTo(some.get("paint").asText().equals("Black") ? 2 : 12);
      }
    }
    String listed = Files.readString(shelf).replace("\"leftMillilitres\":0}", "\"left\":0}");
    Path wrong = Files.writeString(folder.resolve("wrong.json"), listed);
    assertThat(Run.of("match", "#808080", "--shelf", wrong.toString()).err())
        .startsWith(
            "swatchwright: "
                + wrong
                + ": $.paints[2].bottle.left: is an unknown field; known here: leftMillilitres,"
                + " pricePerMillilitre")
        .hasLineCount(1);
  }

  @Test
  void aSearchWithADeadlineSaysWhetherItWasComplete() throws IOException {
    JsonNode result = match("#909090", "--longest", "60");
    assertThat(result.get("complete").asBoolean()).isTrue();
    assertThat(result.get("provenGap").asDouble()).isZero();
  }

  @Test
  void furtherRatiosOfTheSamePaintsAreShown() throws IOException {
    JsonNode recipes = match("#909090", "--ratios", "3", "--alternatives", "2").get("recipes");
    Set<Set<String>> sets = new HashSet<>();
    recipes.forEach(recipe -> sets.add(ingredients(recipe)));
    assertThat(sets).hasSize(2);
    assertThat(recipes.size()).isGreaterThan(2);
  }

  @ParameterizedTest(name = "match {0} {1} {2} is refused: {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          `#808080`|--use-pot|White:0.2|--use-pot: drops in the pot is 0.2, must be within [1.0, 1000000.0]
          `#808080`|--use-pot|White:3d|--use-pot: '3d' in the mix 'White:3d' is not a number of parts
          `#808080`|--use-pot|White, Black|--use-pot: 'White' in the mix 'White, Black' has no number of parts, must be 'White:3' or the like
          `#808080`|--use-pot|White:1, Rust:1|--use-pot: a pot holds one medium, but 'White' is acrylic and 'Rust' is enamel
          `#808080`|--use-pot|Brass:3|'Brass' is metallic, which the model doesn't hold for, so it can't be computed with
          `#808080`|--longest|0|--longest is 0.0, must be within [0.1, 86400.0]
          `#808080`|--longest|soon|--longest is 'soon', must be a number, with a point before decimals
          `#808080`|--ratios|4|--ratios is 4, must be within [1, 3]
          `#808080`|--min-hiding|1.2|--min-hiding is 1.2, must be within [0.0, 1.0]
          `#808080`|--min-hiding|NaN|--min-hiding is NaN, must be within [0.0, 1.0]
          `#808080`|--prefer|nicer|--prefer is 'nicer', must be one of fewer-paints, fewer-drops, cheaper, across-lights
          `#808080`|--same-hiding|--json|--same-hiding: the target is '#808080', must be the name of a paint
          `#808080`|--target-shelf|none.json|--target-shelf: the target is '#808080', must be the name of a paint
          White|--target-shelf|none.json|--target-shelf: there is no file none.json
          Grün, dunkel|--same-hiding|--json|--same-hiding: nothing is known of how 'Grün, dunkel' hides; give it a 'hiding' on its shelf
          """)
  void refuses(String target, String option, String value, String message) {
    Run run = Run.of("match", target, option, value, "--shelf", Run.fiveShelf());
    assertThat(run.err()).isEqualTo("swatchwright: " + message + System.lineSeparator());
    assertThat(run.out()).isEmpty();
    assertThat(run.status()).isEqualTo(2);
  }
}
