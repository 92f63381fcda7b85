package io.github.swatchwright.coat;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Use;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Checks a stack of coats for solvent clashes, by {@link SolventRules}.
 *
 * <p>A thinner reaches what lies open below it: the coat just below and, through coats that are
 * washes or don't cover all, what is under those, down to the first closed film.
 */
public final class CoatOrder {
  /** Media that varnishes come in; enamel varnish wouldn't hold white spirit off. */
  private static final List<Medium> SEALS = List.of(Medium.ACRYLIC, Medium.LACQUER);

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
   * The media of varnish that hold the solvents of some coats off what lies below: such a varnish
   * clashes with nothing that it goes over, and nothing that comes after clashes. The varnish whose
   * worst step is the safest comes first, and acrylic where two are as safe; empty when none holds.
   *
   * @param base what lies at the bottom
   * @param below the coats under the varnish, lowest first
   * @param next the coats that go over it, lowest first; none for a varnish that is the last coat
   */
  public static List<Medium> seals(Base base, List<Coat> below, List<Coat> next) {
    return SEALS.stream()
        .filter(varnish -> worst(base, below, varnish, next) != SolventVerdict.CLASH)
        .sorted(Comparator.comparing(varnish -> worst(base, below, varnish, next)))
        .toList();
  }

  private static SolventVerdict worst(
      Base base, List<Coat> below, Medium varnish, List<Coat> next) {
    List<Coat> stack = new ArrayList<>(below);
    stack.add(Coat.of(Mix.of(Paint.of("varnish", varnish).withUse(Use.VARNISH))));
    stack.addAll(next);
    return check(base, stack).stream()
        .filter(note -> note.coat() > below.size())
        .map(OrderNote::verdict)
        .max(Comparator.naturalOrder())
        .orElse(SolventVerdict.SAFE);
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
