package io.github.swatchwright.calibrate;

import io.github.swatchwright.mix.SyntheticPigments.Pigment;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * An invented shelf of many paints, all let down with one white, and painted cards of them.
 *
 * @param shelf the paints, each with a swatch and a contrast ratio
 * @param cards tints in white, and mixes of two paints
 */
record LargeShelf(Shelf shelf, CardSet cards) {

  static LargeShelf of(int paints, int cards) {
    List<InventedCards> families = new ArrayList<>();
    List<Paint> shelf = new ArrayList<>();
    for (int i = 0; shelf.size() < paints; i++) {
      InventedCards family = new InventedCards(500 + i, 0.05, 0.5);
      families.add(family);
      for (Pigment pigment : family.pigments) {
        if (shelf.size() < paints && (i == 0 || !pigment.name().equals("white"))) {
          shelf.add(renamed(pigment, i));
        }
      }
    }
    Random random = new Random(1);
    List<TestCard> painted = new ArrayList<>();
    for (int i = 0; i < cards; i++) {
      painted.add(card(families, 1 + i % (paints - 1), i, random));
    }
    return new LargeShelf(InventedCards.shelf(shelf), new CardSet(painted));
  }

  private static Paint renamed(Pigment pigment, int family) {
    Paint paint = pigment.withContrastRatio();
    return paint.withName(name(pigment.name(), family));
  }

  private static String name(String pigment, int family) {
    return pigment.equals("white") ? pigment : pigment + " of " + family;
  }

  /** Three tints in white, then mixes of two paints of one family in white. */
  private static TestCard card(List<InventedCards> families, int paint, int turn, Random random) {
    InventedCards family = families.get((paint - 1) / 13);
    String first = family.pigments.get(1 + (paint - 1) % 13).name();
    String second = family.pigments.get((paint - 1) % 13).name();
    int white = 1 + random.nextInt(6);
    TestCard tint =
        family.painted(
            turn % 4 == 3 && !second.equals("white")
                ? InventedCards.parts(first, 1, second, 1)
                : InventedCards.parts("white", white, first, 1));
    int number = (paint - 1) / 13;
    return new TestCard(
        tint.parts().stream()
            .map(part -> new TestCard.Part(name(part.paint(), number), part.amount()))
            .toList(),
        tint.by(),
        new Swatch.OfLab(tint.measured().lab()),
        tint.over(),
        tint.coats());
  }
}
