package io.github.swatchwright.json;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The mixes that a result holds: {@code drops}, a list of {@code paint} or {@code pot} and {@code
 * drops}, of each of its {@code recipes} or {@code rungs}; or {@code mix}, a text, of each of its
 * {@code predictions}.
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
      Map<Paint, Double> sums = new LinkedHashMap<>();
      drops.items(1, Integer.MAX_VALUE).forEach(part -> add(sums, part, shelf));
      List<Mix.Part> parts = new ArrayList<>();
      sums.forEach((paint, sum) -> parts.add(drops.make(() -> new Mix.Part(paint, sum))));
      mixes.add(drops.make(() -> new Mix(parts)));
    } else if (mix != null) {
      mixes.add(mix.make(() -> Mix.parse(mix.text(), shelf)));
    }
  }

  /** Drops of a pot stand for what is in them. */
  private static void add(Map<Paint, Double> sums, JsonElement element, Shelf shelf) {
    Map<String, JsonElement> fields = element.members().fields();
    JsonElement count = fields.get("drops");
    JsonElement paint = fields.get("paint");
    JsonElement pot = fields.get("pot");
    if (count == null || (paint == null) == (pot == null)) {
      throw element.refuse("must have the fields drops and either paint or pot");
    }
    if (paint != null) {
      sums.merge(paint.make(() -> shelf.paint(paint.text())), count.number(), Double::sum);
    } else if (pot != null) {
      Pot contents = pot.make(() -> new Pot(Mix.parse(pot.text(), shelf)));
      for (Mix.Part part : contents.contents().parts()) {
        sums.merge(part.paint(), part.drops() * count.number() / contents.drops(), Double::sum);
      }
    }
  }
}
