package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Drops;
import io.github.swatchwright.card.CardPart.Row;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Recipes and mixes as drops to count. */
final class RecipeDrops {
  private RecipeDrops() {}

  /** The drops of a recipe; pots come first. */
  static Drops of(Recipe recipe, PaintColour colours) {
    List<Row> rows = new ArrayList<>();
    for (Recipe.PotDrops some : recipe.pots()) {
      double millilitres = some.count() * some.pot().dropMillilitres();
      rows.add(Row.of(some.count(), some.pot().name(), Optional.empty(), millilitres));
    }
    rows.addAll(of(recipe.drops(), colours).rows());
    return new Drops(rows);
  }

  /** Drops of paints. */
  static Drops of(List<Recipe.Drops> drops, PaintColour colours) {
    return new Drops(
        drops.stream()
            .map(some -> row(new Mix.Part(some.paint(), some.count()), colours))
            .toList());
  }

  /** The parts of a mix. */
  static Drops of(Mix mix, PaintColour colours) {
    return new Drops(mix.parts().stream().map(part -> row(part, colours)).toList());
  }

  private static Row row(Mix.Part part, PaintColour colours) {
    return Row.of(part.drops(), part.paint().name(), colours.of(part.paint()), part.millilitres());
  }
}
