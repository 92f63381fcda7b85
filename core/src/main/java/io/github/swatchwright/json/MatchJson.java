package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.match.LeftOutPaint;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.match.Reach;
import io.github.swatchwright.match.Substitution;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Shelf;
import java.io.IOException;
import java.util.List;

/**
 * What a shelf can do for a target, as JSON: the {@code target}, the {@code recipes}, whether it is
 * {@code reachable}, and what is {@code missing} when it isn't. The recipes can be read back.
 *
 * <p>A recipe's {@code drops} are of a {@code paint} or of a left-over {@code pot}, which is
 * written as the mix that went into it: {@code {"pot":"Red oxide:6, Titanium white:2","drops":4}}.
 * {@code contrastRatio} is that of one coat; {@code acrossLights} is {@code {"known":false}} unless
 * target and paints were measured as reflectances; {@code pricePerMillilitre} is left out when a
 * paint's price isn't known; recipes are in the order of the {@code score} of each set of paints. A
 * target that is a paint is named in {@code insteadOf}.
 *
 * <pre>{@code
 * {"light":"D65","target":{"lab":[…],"srgb":"#8A4B2A"},"reachable":true,"nearestDeltaE00":0.3,
 *  "recipes":[{"drops":[{"paint":"Red oxide","drops":3},{"paint":"Yellow oxide","drops":1}],
 *              "predicted":{"lab":[…],"srgb":"#8B4C2A"},
 *              "interval":{"deltaE00":2.4,"probability":0.8},
 *              "deltaE00":0.3,"expectedDeltaE00":1.6,"verdict":"match","contrastRatio":0.87,"coatsToHide":1.7,
 *              "acrossLights":{"known":true,"worstDeltaE00":0.9,"light":"A"},
 *              "pricePerMillilitre":0.21,"score":1.6}],
 *  "nearestBottle":{…as a recipe…},"weighed":740,"bestOfAll":true,"complete":true,"provenGap":0,
 *  "leftOut":["'Bell brass' is metallic, which the model doesn't hold for"]}
 * }</pre>
 */
final class MatchJson {
  private MatchJson() {}

  /**
   * The result as JSON.
   *
   * @param result what was found
   */
  static JsonResult of(MatchResult result) {
    return new JsonResult(
        json -> {
          json.writeStringField("light", result.light().name());
          ColourJson.write(json, "target", result.target());
          if (result.request().insteadOf().isPresent()) {
            write(json, result.request().insteadOf().get());
          }
          write(json, result.reach());
          JsonOutput.list(json, "recipes", result.recipes(), ranked -> write(json, ranked));
          if (result.nearestBottle().isPresent()) {
            json.writeFieldName("nearestBottle");
            write(json, result.nearestBottle().get());
          }
          json.writeNumberField("weighed", result.weighed());
          json.writeBooleanField("bestOfAll", result.bestOfAll());
          json.writeBooleanField("complete", result.complete());
          Rounded.field(json, "provenGap", result.provenGap());
          JsonOutput.words(
              json, "leftOut", result.leftOut().stream().map(LeftOutPaint::text).toList());
        });
  }

  private static void write(JsonGenerator json, Substitution substitution) throws IOException {
    json.writeObjectFieldStart("insteadOf");
    JsonOutput.text(json, "paint", substitution.paint().name());
    if (substitution.contrastRatio().isPresent()) {
      Rounded.field(json, "contrastRatio", substitution.contrastRatio().getAsDouble());
    }
    json.writeEndObject();
  }

  static void write(JsonGenerator json, Reach reach) throws IOException {
    json.writeBooleanField("reachable", reach.withinReach());
    Rounded.field(json, "nearestDeltaE00", reach.nearestDeltaE00());
    if (reach.withinReach()) {
      return;
    }
    json.writeObjectFieldStart("missing");
    JsonOutput.words(json, "directions", reach.words());
    Rounded.field(json, "deltaL", reach.missing().deltaL());
    Rounded.field(json, "deltaC", reach.missing().deltaC());
    Rounded.field(json, "deltaH", reach.missing().deltaH());
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, RankedRecipe ranked) throws IOException {
    json.writeStartObject();
    RecipeJson.write(json, ranked.recipe());
    ColourJson.write(json, ranked.prediction());
    Rounded.field(json, "deltaE00", ranked.deltaE00());
    Rounded.field(json, "expectedDeltaE00", ranked.expectedDeltaE00());
    json.writeStringField("verdict", Verdict.of(ranked.deltaE00()).word());
    Rounded.field(json, "contrastRatio", ranked.contrastRatio());
    Rounded.field(json, "coatsToHide", ranked.coatsToHide());
    json.writeObjectFieldStart("acrossLights");
    json.writeBooleanField("known", ranked.acrossLights().isPresent());
    if (ranked.acrossLights().isPresent()) {
      Rounded.field(json, "worstDeltaE00", ranked.acrossLights().get().worstDeltaE00());
      json.writeStringField("light", ranked.acrossLights().get().light().name());
    }
    json.writeEndObject();
    if (ranked.pricePerMillilitre().isPresent()) {
      Rounded.field(json, "pricePerMillilitre", ranked.pricePerMillilitre().getAsDouble());
    }
    Rounded.field(json, "score", ranked.score());
    json.writeEndObject();
  }

  /**
   * Reads the recipes of a result from a text.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @param shelf the shelf whose paints the recipes name
   * @throws JsonInputException when the text isn't a result, or names a paint that isn't there
   */
  static List<Recipe> parseRecipes(String text, String source, Shelf shelf) {
    return recipes(JsonDocument.parse(text, source), shelf);
  }

  private static List<Recipe> recipes(JsonElement root, Shelf shelf) {
    JsonFields fields =
        root.fields(
            "light",
            "target",
            "insteadOf",
            "reachable",
            "nearestDeltaE00",
            "missing",
            "recipes",
            "nearestBottle",
            "weighed",
            "bestOfAll",
            "complete",
            "provenGap",
            "leftOut");
    return fields.required("recipes").items(0, Integer.MAX_VALUE).stream()
        .map(element -> recipe(element, shelf))
        .toList();
  }

  private static Recipe recipe(JsonElement element, Shelf shelf) {
    JsonFields fields =
        element.fields(
            "drops",
            "predicted",
            "interval",
            "deltaE00",
            "expectedDeltaE00",
            "verdict",
            "contrastRatio",
            "coatsToHide",
            "acrossLights",
            "pricePerMillilitre",
            "score");
    return RecipeJson.read(fields.required("drops"), shelf);
  }
}
