package io.github.swatchwright.plan;

import io.github.swatchwright.coat.OrderNote;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts the tasks of one area into an order that harms no layer. Where a solvent would lift what is
 * below and no varnish holds it off, the step goes below what it would lift; where that can't be
 * either, the plan is refused with the reason.
 *
 * @param tools what to work with
 * @param area the area
 */
record AreaPlanner(Tools tools, ProjectArea area) {
  /**
   * The steps that are still to be done.
   *
   * @param start what is there
   * @param wishes what is wanted, in the order asked for
   * @throws IllegalArgumentException when no order harms nothing, or a task can't be done
   */
  List<PlanStep> plan(AreaStart start, List<Wish> wishes) {
    List<Wish> order = new ArrayList<>(wishes);
    for (int moves = 0; moves <= wishes.size(); moves++) {
      AreaWalk walk = new AreaWalk(tools, area, start);
      Optional<AreaWalk.Harm> harm = walk.all(order);
      if (harm.isEmpty()) {
        return walk.steps();
      }
      order = below(harm.get(), order);
    }
    throw new IllegalStateException("each step is moved once at most");
  }

  /** The order with the harmful step moved below what it harms. */
  private List<Wish> below(AreaWalk.Harm harm, List<Wish> order) {
    Wish harmful = order.get(harm.upper());
    if (!canMove(harm, order)) {
      throw new IllegalArgumentException(refusal(harm, harmful));
    }
    List<Wish> changed = new ArrayList<>(order);
    changed.remove(harm.upper());
    changed.add(
        harm.lower().getAsInt(),
        harmful.movedBecause(
            "Moved below the "
                + order.get(harm.lower().getAsInt()).task().kind().word()
                + ": over it, "
                + harm.note().rule().reason()
                + ", and no varnish holds that off."));
    return changed;
  }

  private static boolean canMove(AreaWalk.Harm harm, List<Wish> order) {
    if (harm.lower().isEmpty() || order.get(harm.upper()).moved().isPresent()) {
      return false;
    }
    int lower = harm.lower().getAsInt();
    Wish harmful = order.get(harm.upper());
    boolean fromGroundUp = order.get(lower).task().kind().isGround();
    boolean ofChips =
        harmful.task().worn() > 0 || harmful.task().kind() == StepKind.CHIPPING_MEDIUM;
    boolean intoChips = lower > 0 && order.get(lower - 1).task().kind() == StepKind.CHIPPING_MEDIUM;
    return !fromGroundUp && !ofChips && !intoChips;
  }

  private String refusal(AreaWalk.Harm harm, Wish harmful) {
    OrderNote note = harm.note();
    return String.format(
        "%s, step %d (%s): %s, which is %s, goes over '%s' (%s): %s, and no varnish holds it off;"
            + " take another medium for one of them",
        area.name(),
        harmful.index() + 1,
        harmful.task().kind().word(),
        "'" + note.upperPaint() + "'",
        note.rule().upper().word(),
        note.lowerPaint(),
        note.rule().lower().word(),
        note.rule().reason());
  }
}
