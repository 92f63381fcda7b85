package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.ColourDifference;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import org.junit.jupiter.api.Test;

class ResultJsonTest {
  private static final Shelf SHELF =
      Shelf.of("three", List.of(paint("White", 95, 0), paint("Grey", 50, 0), paint("Red", 40, 45)));

  private static Paint paint(String name, double l, double a) {
    return Paint.of(name, Medium.ACRYLIC, new Swatch.OfLab(Lab.ofD65(l, a, a / 2)));
  }

  private static MatchResult match(Lab target) {
    return Matcher.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65)
        .match(MatchRequest.of(new Swatch.OfLab(target)).withMostDrops(6));
  }

  @Test
  void aComparisonIsRoundedToFourDecimalsAndHasNoMinusZero() {
    assertThat(
            JsonResult.of(
                    Lab.ofD65(50, 0, 0),
                    Lab.ofD65(51.00004, 0, 0),
                    new ColourDifference(0.98765432, 1.00004, -1e-9, 0),
                    Illuminant.D65)
                .toText())
        .isEqualTo(
            """
            {
              "light" : "D65",
              "reference" : {
                "lab" : [ 50.0, 0.0, 0.0 ],
                "srgb" : "#777777"
              },
              "sample" : {
                "lab" : [ 51.0, 0.0, 0.0 ],
                "srgb" : "#797979"
              },
              "deltaE00" : 0.9877,
              "deltaL" : 1.0,
              "deltaC" : 0.0,
              "deltaH" : 0.0,
              "verdict" : "match"
            }
            """);
  }

  @Test
  void aPredictionThatNoDisplayShowsSaysSo() {
    Prediction beyond =
        new Prediction(
            Reflectance.constant(0.5),
            ColourSpread.of(
                Lab.ofD65(50, -90, 20), new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}));

    String text =
        JsonResult.ofPredictions(
                List.of(new PredictedMix(Mix.parse("White:1.50, Red", SHELF), beyond)),
                Illuminant.LED_B3)
            .toText();

    assertThat(text)
        .contains("\"light\" : \"LED-B3\"", "\"mix\" : \"White:1.5, Red:1\"")
        .contains("\"lab\" : [ 50.0, -90.0, 20.0 ]", "\"displayable\" : false")
        .containsPattern("\"srgb\" : \"#00[0-9A-F]{4}\"")
        .containsPattern("\"interval\" : \\{\\s+\"deltaE00\" : [0-9.]+,\\s+\"probability\" : 0.8");
  }

  @Test
  void recipesOfAMatchReadBack() {
    MatchResult result = match(Lab.ofD65(60, 5, 2));

    List<Recipe> read = JsonResult.parseRecipes(JsonResult.of(result).toText(), "match", SHELF);

    assertThat(read)
        .isNotEmpty()
        .isEqualTo(result.recipes().stream().map(RankedRecipe::recipe).toList());
  }

  @Test
  void aTargetOutOfReachSaysWhatIsMissing() {
    String far = JsonResult.of(match(Lab.ofD65(50, -50, 0))).toText();
    String near = JsonResult.of(match(Lab.ofD65(95, 0, 0))).toText();

    assertThat(far).contains("\"reachable\" : false", "\"missing\" : {", "\"directions\" : [ \"");
    assertThat(near).contains("\"reachable\" : true").doesNotContain("missing");
  }

  @Test
  void aRecipeOfAnUnknownPaintIsRefusedAtItsPlace() {
    String recipes = "{\"recipes\":[{\"drops\":[{\"paint\":\"Whit\",\"drops\":1}]}]}";
    String noDrops = "{\"recipes\":[{\"drops\":[{\"paint\":\"White\",\"drops\":0.5}]}]}";

    assertThatThrownBy(() -> JsonResult.parseRecipes(recipes, "match.json", SHELF))
        .isInstanceOf(JsonInputException.class)
        .hasMessage(
            "match.json: $.recipes[0].drops[0].paint: "
                + "no paint 'Whit' on the shelf 'three'; nearest is 'White'");
    assertThatThrownBy(() -> JsonResult.parseRecipes(noDrops, "match.json", SHELF))
        .hasMessageStartingWith(
            "match.json: $.recipes[0].drops[0].drops: is 0.5, must be a whole number within [1, ");
  }

  @Test
  void whatIsNotANumberIsAFaultAndNotWritten() {
    assertThatIllegalStateException()
        .isThrownBy(() -> JsonOutput.object(json -> Rounded.field(json, "deltaE00", Double.NaN)))
        .withMessage("the result deltaE00 came out as NaN");
  }
}
