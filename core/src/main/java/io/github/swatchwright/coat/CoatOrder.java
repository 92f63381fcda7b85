package io.github.swatchwright.coat;

import io.github.swatchwright.mix.Mix;
import java.util.ArrayList;
import java.util.List;

/**
 * Checks a stack of coats for solvent clashes, by {@link SolventRules}.
 *
 * <p>A thinner reaches what lies open below it: the coat just below and, through coats that are
 * washes or don't cover all, what is under those, down to the first closed film.
 */
public final class CoatOrder {
  private CoatOrder() {}

  /**
   * One note for each coat and each paint that its thinner reaches. A base of unknown medium has
   * none.
   */
  public static List<OrderNote> check(Base base, List<Coat> coats) {
    List<OrderNote> notes = new ArrayList<>();
    for (int upper = 0; upper < coats.size(); upper++) {
      int lower = upper - 1;
      while (lower >= 0) {
        notes.add(note(upper, coats.get(upper), coats.get(lower).mix()));
        if (isClosed(coats.get(lower))) {
          break;
        }
        lower--;
      }
      if (lower < 0 && base instanceof Base.OfMix painted) {
        notes.add(note(upper, coats.get(upper), painted.mix()));
      }
    }
    return notes;
  }

  private static boolean isClosed(Coat coat) {
    return coat.coverage() == 1 && coat.thinner() < SolventRules.WASH_FROM;
  }

  private static OrderNote note(int index, Coat upper, Mix lower) {
    SolventRule rule =
        SolventRules.of(lower.parts().get(0).paint().medium(), upper.medium(), upper.thinner());
    return new OrderNote(index + 1, name(upper.mix()), name(lower), rule);
  }

  private static String name(Mix mix) {
    return mix.parts().size() == 1 ? mix.parts().get(0).paint().name() : mix.toText();
  }
}
