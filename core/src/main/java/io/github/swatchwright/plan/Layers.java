package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatOrder;
import io.github.swatchwright.coat.OrderNote;
import io.github.swatchwright.coat.SolventVerdict;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Medium;
import java.util.ArrayList;
import java.util.List;

/**
 * What lies on an area: all coats, for what their solvents do to each other; and the coats since
 * its colour was last known, for how it looks.
 *
 * @param bare what was there before the first coat
 * @param all every coat, lowest first
 * @param known the colour that was measured last, or what was there at first
 * @param since the coats on top of that
 */
record Layers(Base bare, List<Coat> all, Base known, List<Coat> since) {
  Layers {
    all = List.copyOf(all);
    since = List.copyOf(since);
  }

  static Layers on(Base bare) {
    return new Layers(bare, List.of(), bare, List.of());
  }

  Layers with(List<Coat> coats) {
    return new Layers(bare, joined(all, coats), known, joined(since, coats));
  }

  /** The same layers, once their colour was measured. */
  Layers seenAs(Base colour) {
    return new Layers(bare, all, colour, List.of());
  }

  /** How the topmost coat shines. */
  Finish finish() {
    return all.isEmpty() ? bare.finish() : all.get(all.size() - 1).finish();
  }

  /** What further coats would do to what is there, and to each other. */
  List<OrderNote> notes(List<Coat> more) {
    return CoatOrder.check(bare, joined(all, more)).stream()
        .filter(note -> note.coat() > all.size())
        .toList();
  }

  /** What they would lift. */
  List<OrderNote> clashes(List<Coat> more) {
    return notes(more).stream().filter(note -> note.verdict() == SolventVerdict.CLASH).toList();
  }

  /** The varnishes that hold further coats off what is there, the safest first. */
  List<Medium> seals(List<Coat> next) {
    return CoatOrder.seals(bare, all, next);
  }

  static <T> List<T> joined(List<T> first, List<T> second) {
    List<T> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }
}
