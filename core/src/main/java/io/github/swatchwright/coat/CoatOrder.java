package io.github.swatchwright.coat;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

  /**
   * The varnish to put under a coat that clashes with something below, chosen so that it clashes
   * with nothing it lies on; empty when the coat doesn't clash, and when no varnish helps.
   *
   * @param notes of the stack, as {@link #check} gives them
   * @param coat which coat, counted from 1 at the bottom
   * @param wash whether that coat is a wash
   */
  public static Optional<Medium> seal(List<OrderNote> notes, int coat, boolean wash) {
    List<SolventRule> rules =
        notes.stream().filter(note -> note.coat() == coat).map(OrderNote::rule).toList();
    if (rules.stream().noneMatch(rule -> rule.verdict() == SolventVerdict.CLASH)) {
      return Optional.empty();
    }
    return SolventRules.seal(
        rules.stream().map(SolventRule::lower).toList(), rules.get(0).upper(), wash);
  }

  private static boolean isClosed(Coat coat) {
    return coat.coverage() == 1 && !coat.isWash();
  }

  private static OrderNote note(int index, Coat upper, Mix lower) {
    SolventRule rule =
        SolventRules.of(lower.parts().get(0).paint().medium(), upper.medium(), upper.isWash());
    return new OrderNote(index + 1, name(upper.mix()), name(lower), rule);
  }

  private static String name(Mix mix) {
    return mix.parts().size() == 1 ? mix.parts().get(0).paint().name() : mix.toText();
  }
}
