package io.github.swatchwright.plan;

import io.github.swatchwright.colour.Lab;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A task with its place in the area's list, and the colour that it is to lead to.
 *
 * @param index its place, from 0
 * @param task what is to be done
 * @param wanted the colour afterwards, when the plan before has promised one
 * @param moved why it stands elsewhere than it was asked for; empty when it doesn't
 */
record Wish(int index, Task task, Optional<Lab> wanted, Optional<String> moved) {
  private static final String FIRST =
      "Moved to the front: a primer has to hold on to the bare surface, below everything else.";

  /** An area's tasks in the order asked for, but with primer and pre-highlight at the bottom. */
  static List<Wish> of(ProjectArea area) {
    List<Wish> wishes = new ArrayList<>();
    for (Task task : area.tasks()) {
      wishes.add(new Wish(wishes.size(), task, Optional.empty(), Optional.empty()));
    }
    List<Wish> sorted = new ArrayList<>(wishes);
    sorted.sort(Comparator.comparingInt(wish -> layer(wish.task.kind())));
    sorted.replaceAll(
        wish ->
            wish.task.kind() == StepKind.PRIMER && wishes.indexOf(wish) > sorted.indexOf(wish)
                ? wish.movedBecause(FIRST)
                : wish);
    return sorted;
  }

  private static int layer(StepKind kind) {
    return kind == StepKind.PRIMER ? 0 : kind == StepKind.PRE_HIGHLIGHT ? 1 : 2;
  }

  Wish movedBecause(String why) {
    return new Wish(index, task, wanted, Optional.of(why));
  }

  Wish wanting(Optional<Lab> colour) {
    return new Wish(index, task, colour, moved);
  }
}
