package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.match.Reach;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Illuminant;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/**
 * What a shelf can do for a target, as JSON: the {@code target}, the {@code recipes}, whether it is
 * {@code reachable}, and what is {@code missing} when it isn't. The recipes can be read back.
 *
 * <pre>{@code
 * {"light":"D65","target":{"lab":[…],"srgb":"#8A4B2A"},"reachable":true,"nearestDeltaE00":0.3,
 *  "recipes":[{"drops":[{"paint":"Red oxide","drops":3},{"paint":"Yellow oxide","drops":1}],
 *              "predicted":{"lab":[…],"srgb":"#8B4C2A"},
 *              "interval":{"deltaE00":2.4,"probability":0.8},
 *              "deltaE00":0.3,"expectedDeltaE00":1.6,"verdict":"match"}],
 *  "leftOut":["'Bell brass' is metallic, which the model doesn't hold for"]}
 * }</pre>
 */
public final class MatchJson {
  private MatchJson() {}

  /**
   * The result as a JSON object.
   *
   * @param result what was found
   * @param light the light that it was computed for
   */
  public static String toText(MatchResult result, Illuminant light) {
    return JsonOutput.object(
        json -> {
          json.writeStringField("light", light.name());
          ColourJson.write(json, "target", result.target());
          write(json, result.reach());
          json.writeArrayFieldStart("recipes");
          for (RankedRecipe ranked : result.recipes()) {
            write(json, ranked);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("leftOut");
          for (String reason : result.leftOut()) {
            json.writeString(reason);
          }
          json.writeEndArray();
        });
  }

  private static void write(JsonGenerator json, Reach reach) throws IOException {
    json.writeBooleanField("reachable", reach.withinReach());
    Rounded.field(json, "nearestDeltaE00", reach.nearestDeltaE00());
    if (reach.withinReach()) {
      return;
    }
    json.writeObjectFieldStart("missing");
    json.writeArrayFieldStart("directions");
    for (String direction : reach.directions()) {
      json.writeString(direction);
    }
    json.writeEndArray();
    Rounded.field(json, "deltaL", reach.missing().deltaL());
    Rounded.field(json, "deltaC", reach.missing().deltaC());
    Rounded.field(json, "deltaH", reach.missing().deltaH());
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, RankedRecipe ranked) throws IOException {
    json.writeStartObject();
    json.writeArrayFieldStart("drops");
    for (Recipe.Drops drops : ranked.recipe().drops()) {
      json.writeStartObject();
      json.writeStringField("paint", drops.paint().name());
      json.writeNumberField("drops", drops.count());
      json.writeEndObject();
    }
    json.writeEndArray();
    ColourJson.write(json, ranked.prediction());
    Rounded.field(json, "deltaE00", ranked.deltaE00());
    Rounded.field(json, "expectedDeltaE00", ranked.expectedDeltaE00());
    json.writeStringField("verdict", Verdict.of(ranked.deltaE00()).word());
    json.writeEndObject();
  }

  /**
   * Reads the recipes of a result from a file, which messages name by its path.
   *
   * @param shelf the shelf whose paints the recipes name
   * @throws JsonInputException when the file isn't a result, or names a paint that isn't there
   * @throws IOException when it can't be read
   */
  public static List<Recipe> readRecipes(Path file, Shelf shelf) throws IOException {
    return recipes(JsonDocument.read(file), shelf);
  }

  /**
   * Reads the recipes of a result from a stream, and leaves it open.
   *
   * @param in UTF-8
   * @param source what messages call it
   * @param shelf the shelf whose paints the recipes name
   * @throws JsonInputException when the text isn't a result, or names a paint that isn't there
   * @throws IOException when it can't be read
   */
  public static List<Recipe> readRecipes(InputStream in, String source, Shelf shelf)
      throws IOException {
    return recipes(JsonDocument.read(in, source), shelf);
  }

  /**
   * Reads the recipes of a result from a text.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @param shelf the shelf whose paints the recipes name
   * @throws JsonInputException when the text isn't a result, or names a paint that isn't there
   */
  public static List<Recipe> parseRecipes(String text, String source, Shelf shelf) {
    return recipes(JsonDocument.parse(text, source), shelf);
  }

  private static List<Recipe> recipes(JsonElement root, Shelf shelf) {
    JsonFields fields =
        root.fields(
            "light", "target", "reachable", "nearestDeltaE00", "missing", "recipes", "leftOut");
    return fields.required("recipes").items(0, Integer.MAX_VALUE).stream()
        .map(element -> recipe(element, shelf))
        .toList();
  }

  private static Recipe recipe(JsonElement element, Shelf shelf) {
    JsonFields fields =
        element.fields("drops", "predicted", "interval", "deltaE00", "expectedDeltaE00", "verdict");
    JsonElement list = fields.required("drops");
    List<Recipe.Drops> drops =
        list.items(1, Recipe.MOST_PAINTS).stream().map(entry -> drops(entry, shelf)).toList();
    return list.make(() -> new Recipe(drops));
  }

  private static Recipe.Drops drops(JsonElement element, Shelf shelf) {
    JsonFields fields = element.fields("paint", "drops");
    JsonElement paint = fields.required("paint");
    Paint named = paint.make(() -> shelf.paint(paint.text()));
    JsonElement count = fields.required("drops");
    int drops = count.wholeNumber(1, Integer.MAX_VALUE);
    return count.make(() -> new Recipe.Drops(named, drops));
  }
}
