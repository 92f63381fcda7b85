package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoatCommandTest {

  private static Run coat(String... options) {
    List<String> args = new ArrayList<>(List.of("coat"));
    args.addAll(List.of(options));
    return Run.of(args.toArray(String[]::new));
  }

  private static JsonNode json(String... options) throws Exception {
    List<String> all = new ArrayList<>(List.of(options));
    all.add("--json");
    Run run = coat(all.toArray(String[]::new));
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void stepsHaveTheKeysOfTheContract() throws Exception {
    JsonNode result =
        json("--base", "Dredger grey", "--coats", "Whitewash wash:2@1:4, Blue filter:3@1:15");

    assertThat(result.get("steps")).hasSize(2);
    for (JsonNode step : result.get("steps")) {
      assertThat(step.get("predicted").get("lab")).hasSize(3);
      assertThat(step.get("predicted").get("srgb").asText()).matches("#[0-9A-F]{6}");
      assertThat(step.get("interval").get("deltaE00").asDouble()).isPositive();
      assertThat(step.get("contrastRatio").asDouble()).isBetween(0.0, 1.0);
      double dark = step.get("overDarkest").get("lab").get(0).asDouble();
      assertThat(step.get("overLightest").get("lab").get(0).asDouble()).isGreaterThan(dark);
    }
    assertThat(result.get("coatsToHide")).isEqualTo(result.get("steps").get(1).get("coatsToHide"));
    assertThat(result.get("order").get(1).get("verdict").asText()).isEqualTo("clash");
    assertThat(result.get("order").get(1).get("remedy").asText()).contains("varnish");
    assertThat(result.get("waits").get(0).get("medium").asText()).isEqualTo("enamel");
    assertThat(result.get("cautions").toString()).contains("fresh-air", "flames", "data-sheet");
  }

  // 500 cm² · 15 µm ÷ 30 % ÷ 50 % = 5 ml, worked by hand; half of it is thinner.
  @Test
  void amountsAreTheWorkedFigure() throws Exception {
    String[] common = {
      "--base", "#808080", "--film", "15", "--solids", "30", "--transfer", "50", "--coats"
    };
    JsonNode byArea =
        json(with(common, "Red oxide:1@1:1", "--area", "500")).get("amounts").get("coats");
    JsonNode sponged =
        json(with(common, "Red oxide:1@1:1 over 40%", "--area", "0.05m2"))
            .get("amounts")
            .get("coats");

    assertThat(byArea.get(0).get("paintMillilitres").asDouble()).isEqualTo(2.5);
    assertThat(byArea.get(0).get("thinnerMillilitres").asDouble()).isEqualTo(2.5);
    assertThat(byArea.get(0).get("paintDrops").asDouble()).isCloseTo(2.5 / 0.045, within(1e-4));
    assertThat(sponged.get(0).get("paintMillilitres").asDouble()).isEqualTo(1);
    for (String[] length : new String[][] {{"25cm", "1:72"}, {"18m", "1:72"}, {"250mm", "1/72"}}) {
      JsonNode amounts =
          json(with(common, "Red oxide:1", "--length", length[0], "--scale", length[1]))
              .get("amounts");
      assertThat(amounts.get("squareCentimetres").asDouble()).isEqualTo(625);
    }
  }

  private static String[] with(String[] common, String... more) {
    List<String> all = new ArrayList<>(List.of(common));
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  @Test
  void aBlueFilterCoolsAGrey() throws Exception {
    JsonNode advice = json("--base", "Dredger grey", "--shift", "b=-4").get("advice");

    assertThat(advice.get("options").get(0).get("mix").asText()).isEqualTo("Blue filter:1");
    assertThat(advice.get("options").get(0).get("shift").get("b").asDouble()).isNegative();
    assertThat(advice.get("nowDeltaE00").asDouble())
        .isGreaterThan(advice.get("options").get(0).get("deltaE00").asDouble());
  }

  @Test
  void backwardsItFindsPaintForTheBaseAndItsPreHighlight() throws Exception {
    String[] args = {"--end", "#7C8188", "--coats", "Whitewash wash:2, Blue filter:2"};
    JsonNode below = json(args).get("below");

    assertThat(below.has("obstacle")).isFalse();
    assertThat(below.get("deltaE00").asDouble()).isLessThan(0.01);
    JsonNode best = below.get("recipes").get(0);
    assertThat(best.get("drops")).isNotEmpty();
    // Whole drops of the demo shelf's greys come within what is a match; below 1 by convention.
    assertThat(best.get("deltaE00").asDouble()).isLessThan(1);
    double l = below.get("end").get("lab").get(0).asDouble();
    assertThat(below.get("darkest").get("end").get("lab").get(0).asDouble())
        .isCloseTo(l - 5, within(1e-3));
    assertThat(below.get("lightest").get("base").get("lab").get(0).asDouble())
        .isGreaterThan(below.get("base").get("lab").get(0).asDouble());
    assertThat(coat(args).out())
        .contains("Wanted in the end  #7C8188", "Base for it", " 1.  In the end expect ")
        .contains("Pre-highlight, darkest part", "Whitewash wash, 2 coats, as it comes");
  }

  @Test
  void backwardsItSaysWhyNoBaseDoesIt() {
    assertThat(coat("--end", "#FFFFFF", "--coats", "Harbour-dirt wash:3").out())
        .contains("No base does it: even over white, these coats end darker than that.");
    assertThat(coat("--end", "#101010", "--coats", "Whitewash wash:10").out())
        .contains("No base does it: even over black, these coats end lighter than that.");
    assertThat(coat("--end", "#7C8188", "--coats", "Red oxide:4").out())
        .contains("No base does it: these coats hide what is below them");
    assertThat(coat("--end", "Red oxide", "--coats", "Red oxide:6").out())
        .contains("Any base does: these coats hide what is below them");
  }

  // 60 % · (1 − 15 %) = 51 %; the lower coat shows in the other 49 %. By hand.
  @Test
  void aChippedCoatSaysItsSharesAndHowItIsDone() throws Exception {
    String[] args = {
      "--base",
      "Dredger grey",
      "--coats",
      "Red oxide:2, Deckhouse cream:2@1:1 over 60%",
      "--chipped",
      "15%"
    };
    JsonNode result = json(args);

    assertThat(result.get("sharesOnTop").get(0).asDouble()).isZero();
    assertThat(result.get("sharesOnTop").get(1).asDouble()).isCloseTo(0.49, within(1e-9));
    assertThat(result.get("sharesOnTop").get(2).asDouble()).isCloseTo(0.51, within(1e-9));
    assertThat(result.get("chipped").get("coat").asInt()).isEqualTo(2);
    assertThat(result.get("chipped").get("worn").asDouble()).isEqualTo(0.15);
    assertThat(result.get("chipped").get("steps")).hasSize(5);
    assertThat(result.get("steps").get(1).get("patches")).hasSize(2);
    assertThat(result.get("steps").get(0).has("patches")).isFalse();
    assertThat(coat(args).out())
        .contains("51.0 %  Deckhouse cream", "49.0 %  Red oxide")
        .containsSubsequence(
            "1. Let the coat below dry: 4 hours",
            "2. Spray or brush on chipping medium",
            "3. Paint this coat thinly; wait about half an hour",
            "4. Wet a small area",
            "5. Let it dry and seal it with varnish");
  }

  @Test
  void baseIsAColourAPaintOrAMix() throws Exception {
    for (String base : List.of("#656A6C", "lab(45, -1, -2)", "Dredger grey", "Dredger grey:3")) {
      JsonNode result = json("--base", base, "--coats", "Red oxide:1");
      assertThat(result.get("base").get("lab").get(0).asDouble()).isCloseTo(45, within(1.0));
    }
    assertThat(json("--base", "Dredger grey:3", "--coats", "Red oxide:1").get("order")).hasSize(1);
    assertThat(json("--base", "#656A6C", "--coats", "Red oxide:1").get("order")).isEmpty();
  }

  @Test
  void scaleLighteningIsOffAndCalledDisputed() throws Exception {
    String[] common = {"--base", "Dredger grey", "--coats", "Red oxide:1@1:4"};
    JsonNode plain = json(common);
    JsonNode lighter = json(with(common, "--scale-lightening", "0.1"));

    assertThat(plain.has("scaleLightening")).isFalse();
    assertThat(lighter.get("scaleLighteningNote").asText()).contains("disputed");
    assertThat(lighter.get("base").get("lab").get(0).asDouble())
        .isGreaterThan(plain.get("base").get("lab").get(0).asDouble() + 5);
  }

  @Test
  void preHighlightAndFinishCanBeChosen() throws Exception {
    String[] common = {"--base", "Dredger grey", "--coats", "Red oxide:1@1:4"};
    JsonNode usual = json(common);
    JsonNode grey = json(with(common, "--pre-highlight", "#808080", "#808080"));
    JsonNode gloss = json(with(common, "--finish", "gloss"));

    JsonNode step = grey.get("steps").get(0);
    assertThat(step.get("overDarkest")).isEqualTo(step.get("overLightest"));
    assertThat(lightness(gloss)).isLessThan(lightness(usual));
  }

  private static double lightness(JsonNode result) {
    return result.get("steps").get(0).get("predicted").get("lab").get(0).asDouble();
  }

  @Test
  void saysInWordsWhatToExpectAndWhatToMind() {
    String words =
        coat("--base", "#656A6C", "--coats", "Blue filter:3@1:15", "--area", "200cm2").out();

    assertThat(words)
        .contains(" 1.  Blue filter, 3 coats, 1 part paint : 15 white spirit")
        .containsPattern("In 80 of 100 tries, your paint will be within ΔE00 [0-9.]+ of this")
        .containsPattern(
            "Contrast ratio so far 0\\.[0-9]+ \\(hides from 0\\.98 on\\)\\. What lies below shows"
                + " through this coat")
        .contains("What the base is bound with isn't known")
        .contains("Before anything else goes on: 1 to 2 days.")
        .contains("Amounts for 200 cm², 10 µm dry a coat, 30 % solids, 35 % transfer:")
        .contains("safety data sheet and local rules come first");
  }

  @ParameterizedTest(name = "{0} {1} is refused: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          --coats|Red oxide:1@1:-2|thinner in 'Red oxide' is -2.0, must be within [0.0, 1000.0]
          --coats|Red oxide:1 over 130%|coverage of 'Red oxide' is 1.3, must be within [0.0, 1.0]
          --coats|Bell brass:1|'Bell brass' is metallic, which the model doesn't hold for, so it can't be computed with
          --coats|Red oxide|'Red oxide' is not of the form Name:coats, Name:coats@paint:thinner or Name:coats@paint:thinner over 60%
          --shift|b=0|the shift is 0, must move L*, a* or b*
          --share|0.5|give --coats, --shift or --towards
          """)
  void refusesWhatCannotBe(String option, String value, String message) {
    assertRefused(coat("--base", "Dredger grey", option, value), message);
  }

  @ParameterizedTest(name = "{0} {1} beside coats is refused: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          --area|-5cm2|--area in cm² is -5.0, must be within [0.01, 1000000.0]
          --area|5ft|--area is '5ft', must be a number with one of the units cm2, m2, mm2
          --length|18m|--length is 18m: in metres it is the original's and needs --scale 1:N
          --solids|130|--solids is 130.0, must be within [1.0, 100.0]
          --finish|shiny|--finish is 'shiny', must be one of matt, satin, gloss
          --scale-lightening|1.5|scaleLightening is 1.5, must be within [0.0, 1.0]
          --share|0.5|--share needs --towards
          """)
  void refusesOptions(String option, String value, String message) {
    String[] args = {"--base", "Dredger grey", "--coats", "Red oxide:1", option, value};
    Run run = option.equals("--solids") ? coat(with(args, "--area", "5cm2")) : coat(args);
    assertRefused(run, message);
  }

  @Test
  void refusesAShelfWithAMediumThatIsNotKnown(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("milk.shelf.json");
    Files.writeString(
        file,
        "{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"s\","
            + "\"paints\":[{\"name\":\"Grey\",\"medium\":\"milk\"}]}");

    assertRefused(
        coat("--base", "Grey", "--coats", "Grey:1", "--shelf", file.toString()),
        file
            + ": $.paints[0].medium: is \"milk\","
            + " must be one of acrylic, lacquer, enamel, oil, water");
  }

  @ParameterizedTest(name = "{0} is refused: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          --coats;Red oxide:1|give --base, or --end to find one
          --base;#808080;--end;#808080;--coats;Red oxide:1|--base and --end exclude each other: --end finds the base
          --end;#808080|--end needs --coats: what is to go over the base
          --end;#808080;--coats;Red oxide:1;--shift;b=1|--end finds a base; --shift and --towards find coats: give one
          --end;#808080;--coats;Red oxide:1;--scale-lightening;0.1|--end finds base and pre-highlight: leave out --scale-lightening and --pre-highlight
          --end;#808080;--coats;Red oxide:1;--end-spread;60|spread is 60.0, must be within [0.0, 50.0]
          --base;#808080;--coats;Red oxide:1;--end-spread;5|--end-spread needs --end
          --base;#808080;--coats;Wet-hull varnish:1;--chipped;15|there is no coat of paint to wear off
          """)
  void refusesWhatDoesNotBelongTogether(String args, String message) {
    assertRefused(coat(args.split(";")), message);
  }

  private static void assertRefused(Run run, String message) {
    assertThat(run.err()).isEqualTo("swatchwright: " + message + System.lineSeparator());
    assertThat(run.out()).isEmpty();
    assertThat(run.status()).isEqualTo(2);
  }
}
