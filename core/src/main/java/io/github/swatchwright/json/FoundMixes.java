package io.github.swatchwright.json;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The mixes that a result holds: {@code drops}, a list of {@code paint} and {@code drops}, of each
 * of its {@code recipes} or {@code rungs}; or {@code mix}, a text, of each of its {@code
 * predictions}.
 */
final class FoundMixes {
  private FoundMixes() {}

  static List<Mix> of(JsonElement result, Shelf shelf) {
    List<Mix> mixes = new ArrayList<>();
    for (String list : List.of("recipes", "rungs", "predictions")) {
      JsonElement found = result.members().fields().get(list);
      if (found != null) {
        found.items(0, Integer.MAX_VALUE).forEach(item -> add(mixes, item, shelf));
      }
    }
    return mixes;
  }

  private static void add(List<Mix> mixes, JsonElement item, Shelf shelf) {
    Map<String, JsonElement> fields = item.members().fields();
    JsonElement drops = fields.get("drops");
    JsonElement mix = fields.get("mix");
    if (drops != null) {
      mixes.add(
          drops.make(
              () ->
                  new Mix(
                      drops.items(1, Integer.MAX_VALUE).stream()
                          .map(part -> part(part.members().fields(), part, shelf))
                          .toList())));
    } else if (mix != null) {
      mixes.add(mix.make(() -> Mix.parse(mix.text(), shelf)));
    }
  }

  private static Mix.Part part(Map<String, JsonElement> fields, JsonElement element, Shelf shelf) {
    JsonElement name = fields.get("paint");
    JsonElement count = fields.get("drops");
    if (name == null || count == null) {
      throw element.refuse("must have the fields paint and drops");
    }
    Paint paint = name.make(() -> shelf.paint(name.text()));
    double drops = count.number();
    return count.make(() -> new Mix.Part(paint, drops));
  }
}
