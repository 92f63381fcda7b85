package io.github.swatchwright.calibrate;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintChoice;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Mixes that stand for whatever may be mixed from a shelf: two or three paints of one medium in one
 * to six drops each, every paint about equally often.
 */
final class ShelfSample {
  private static final int FEWEST = 60;
  private static final int MOST = 240;
  private static final int PER_PAINT = 3;
  private static final int MOST_DROPS = 6;

  private ShelfSample() {}

  static List<Recipe> of(ShelfOptics optics, PaintChoice choice, long seed) {
    List<PaintOptics> mixed =
        optics.paints().stream().filter(one -> choice.admits(one.paint())).toList();
    Map<Medium, List<PaintOptics>> byMedium =
        mixed.stream()
            .collect(
                Collectors.groupingBy(
                    paint -> paint.paint().medium(), TreeMap::new, Collectors.toList()));
    int paints = mixed.size();
    if (paints == 0) {
      throw new IllegalArgumentException(
          "the shelf "
              + Printable.quoted(optics.shelf().name())
              + " has no paint that can be computed with");
    }
    int size = Math.max(FEWEST, Math.min(MOST, PER_PAINT * paints));
    Random random = new Random(seed);
    List<Recipe> mixes = new ArrayList<>();
    for (List<PaintOptics> ofMedium : byMedium.values()) {
      int count = (int) Math.ceil((double) size * ofMedium.size() / paints);
      mixes.addAll(of(ofMedium, count, random));
    }
    return mixes;
  }

  /** Deals the paints out like cards, and shuffles them again when they run out. */
  private static List<Recipe> of(List<PaintOptics> paints, int count, Random random) {
    List<Recipe> mixes = new ArrayList<>();
    List<PaintOptics> deck = new ArrayList<>();
    while (mixes.size() < count) {
      int size = Math.min(paints.size(), 2 + random.nextInt(2));
      if (deck.size() < size) {
        deck = new ArrayList<>(paints);
        Collections.shuffle(deck, random);
      }
      List<Recipe.Drops> drops = new ArrayList<>();
      for (PaintOptics paint : deck.subList(0, size)) {
        drops.add(new Recipe.Drops(paint.paint(), 1 + random.nextInt(MOST_DROPS)));
      }
      deck = deck.subList(size, deck.size());
      mixes.add(new Recipe(drops));
    }
    return mixes;
  }
}
