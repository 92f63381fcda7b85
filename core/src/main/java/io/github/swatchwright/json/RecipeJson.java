package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A recipe as a list of whole {@code drops}: each of a {@code paint} by its name, or of a {@code
 * pot} by the mix that went into it.
 *
 * <pre>{@code
 * "drops":[{"paint":"Yellow oxide","drops":3},{"pot":"Red oxide:6, Titanium white:2","drops":4}]
 * }</pre>
 */
final class RecipeJson {
  private RecipeJson() {}

  static void write(JsonGenerator json, Recipe recipe) throws IOException {
    json.writeArrayFieldStart("drops");
    writePaints(json, recipe.drops());
    for (Recipe.PotDrops some : recipe.pots()) {
      json.writeStartObject();
      JsonOutput.text(json, "pot", some.pot().contents().toText());
      json.writeNumberField("drops", some.count());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** A list of paints by their names, with the whole drops of each. */
  static void writePaints(JsonGenerator json, String field, List<Recipe.Drops> drops)
      throws IOException {
    json.writeArrayFieldStart(field);
    writePaints(json, drops);
    json.writeEndArray();
  }

  /** The items of a list that is open: a {@code paint} and its {@code drops} each. */
  private static void writePaints(JsonGenerator json, List<Recipe.Drops> drops) throws IOException {
    for (Recipe.Drops some : drops) {
      json.writeStartObject();
      JsonOutput.text(json, "paint", some.paint().name());
      json.writeNumberField("drops", some.count());
      json.writeEndObject();
    }
  }

  static Recipe read(JsonElement list, Shelf shelf) {
    List<Recipe.Drops> drops = new ArrayList<>();
    List<Recipe.PotDrops> pots = new ArrayList<>();
    for (JsonElement element : list.items(1, Recipe.MOST_PAINTS)) {
      JsonFields fields = element.fields("paint", "pot", "drops");
      JsonElement count = fields.required("drops");
      int some = count.wholeNumber(1, Integer.MAX_VALUE);
      if (fields.optional("pot").isPresent()) {
        if (fields.optional("paint").isPresent()) {
          throw element.refuse("has both 'paint' and 'pot', must have one of them");
        }
        JsonElement pot = fields.required("pot");
        Pot held = pot.make(() -> Pot.parse(pot.text(), shelf));
        pots.add(count.make(() -> new Recipe.PotDrops(held, some)));
      } else {
        JsonElement paint = fields.required("paint");
        Paint named = paint.make(() -> shelf.paint(paint.text()));
        drops.add(count.make(() -> new Recipe.Drops(named, some)));
      }
    }
    return list.make(() -> new Recipe(drops, pots));
  }
}
