package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.OrderNote;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.mix.Prediction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Goes through the tasks of an area in one order, coat on coat. For one use. */
final class AreaWalk {
  private final Tools tools;
  private final ProjectArea area;
  private final List<PlanStep> steps = new ArrayList<>();

  /**
   * For each coat that lies on the area, the place in the order that it comes from; −1 for none.
   */
  private final List<Integer> origins = new ArrayList<>();

  private Layers layers;
  private Optional<PlanStep> last;
  private boolean overHighlight;

  AreaWalk(Tools tools, ProjectArea area, AreaStart start) {
    this.tools = tools;
    this.area = area;
    layers = start.layers();
    last = start.last();
    layers.all().forEach(coat -> origins.add(-1));
    overHighlight = last.filter(step -> step.kind() == StepKind.PRE_HIGHLIGHT).isPresent();
  }

  /**
   * A coat that would lift what is below, where no varnish holds it off.
   *
   * @param upper its place in the order
   * @param lower the place of what it would lift; empty when that is done already
   * @param note what would happen
   */
  record Harm(int upper, OptionalInt lower, OrderNote note) {}

  List<PlanStep> steps() {
    return steps;
  }

  /** Takes all steps; stops at the first that would harm. */
  Optional<Harm> all(List<Wish> order) {
    for (int place = 0; place < order.size(); place++) {
      Optional<Harm> harm = step(place, order.get(place));
      if (harm.isPresent()) {
        return harm;
      }
    }
    if (chips().areOpen()) {
      seal(List.of(), "Seal the chips: damp fingers would go on lifting paint.");
    }
    return Optional.empty();
  }

  private Optional<Harm> step(int place, Wish wish) {
    Task task = wish.task();
    if (chips().areOpen() && task.kind() != StepKind.VARNISH) {
      seal(painted(wish).coats(), "Seal the chips: below them lies medium that water still lifts.");
    }
    Painted painted = painted(wish);
    List<Coat> coats = painted.coats();
    if (!chips().areNext() && at(wish, () -> Chips.needMedium(coats, task.worn()))) {
      addClear(
          ClearCoats.chippingMedium(),
          StepKind.CHIPPING_MEDIUM,
          "Put in so that the next coat can be worn off in chips.");
    }
    if (chips().areNext()) {
      at(wish, () -> Chips.checkOverMedium(coats, task.worn()));
    } else {
      List<OrderNote> clashes = layers.clashes(coats);
      if (!clashes.isEmpty() && !seal(coats, StepAdvice.whySealed(clashes.get(0)))) {
        return Optional.of(harm(place, clashes.get(0)));
      }
      if (!clashes.isEmpty()) {
        painted = painted(wish);
      }
    }
    add(place, wish, painted);
    return Optional.empty();
  }

  private Chips chips() {
    return new Chips(layers, last);
  }

  private Painted painted(Wish wish) {
    return at(wish, () -> new TaskWorker(tools, area, overHighlight).work(wish, layers));
  }

  /** Does a part of a step; a refusal names the step. */
  private <T> T at(Wish wish, Supplier<T> part) {
    try {
      return part.get();
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(place(wish) + e.getMessage(), e);
    }
  }

  private String place(Wish wish) {
    return String.format(
        "%s, step %d (%s): ", area.name(), wish.index() + 1, wish.task().kind().word());
  }

  private boolean seal(List<Coat> next, String why) {
    Optional<Coat> varnish = tools.clearCoats().varnish(layers, next, layers.finish());
    varnish.ifPresent(coat -> addClear(coat, StepKind.SEAL, why));
    return varnish.isPresent();
  }

  private Harm harm(int place, OrderNote clash) {
    int lower = clash.coat() - 2;
    while (lower >= layers.all().size()) {
      lower--;
    }
    while (lower >= 0 && layers.all().get(lower).medium() != clash.rule().lower()) {
      lower--;
    }
    int origin = lower < 0 ? -1 : origins.get(lower);
    return new Harm(place, origin < 0 ? OptionalInt.empty() : OptionalInt.of(origin), clash);
  }

  private void addClear(Coat coat, StepKind kind, String why) {
    List<String> advice = StepAdvice.ofClear(why, coat, layers);
    Layers then = layers.with(List.of(coat));
    Work work =
        new Work(
            List.of(coat),
            Optional.of(whole(coat.mix(), amount(coat))),
            Optional.empty(),
            amount(coat),
            0);
    put(-1, OptionalInt.empty(), kind, work, then, Optional.empty(), advice);
  }

  private void add(int place, Wish wish, Painted painted) {
    Task task = wish.task();
    List<Coat> worn =
        painted.coats().stream()
            .map(coat -> task.worn() > 0 ? coat.chipped(task.worn()) : coat)
            .toList();
    List<String> advice = StepAdvice.of(wish, painted, worn, layers);
    PaintAmount amount = amount(painted.ladder(), painted.coats());
    Optional<Mix> pot =
        painted.ladder().isPresent() || worn.isEmpty()
            ? Optional.empty()
            : Optional.of(whole(worn.get(0).mix(), amount));
    put(
        place,
        OptionalInt.of(wish.index()),
        task.kind(),
        new Work(worn, pot, painted.ladder(), amount, task.worn()),
        layers.with(worn),
        painted.wanted(),
        advice);
    overHighlight = task.kind() == StepKind.PRE_HIGHLIGHT;
  }

  private void put(
      int place,
      OptionalInt task,
      StepKind kind,
      Work work,
      Layers then,
      Optional<Lab> wanted,
      List<String> advice) {
    Prediction prediction = tools.predict(then);
    List<String> said = new ArrayList<>(advice);
    double moved = Ciede2000.deltaE(tools.predict(layers).lab(), prediction.lab());
    StepAdvice.strongFilter(kind, moved).ifPresent(said::add);
    PlanStep step =
        new PlanStep(
            0,
            area.name(),
            task,
            kind,
            work,
            new Look(prediction, wanted, Optional.empty()),
            false,
            said);
    steps.add(step);
    work.coats().forEach(coat -> origins.add(place));
    layers = then;
    last = Optional.of(step);
  }

  /** What it takes in all: the rungs of a ladder know, else the coats are counted. */
  private PaintAmount amount(Optional<Ladder> ladder, List<Coat> coats) {
    return ladder
        .map(shades -> shades.rungs().stream().map(Rung::amount))
        .orElseGet(() -> coats.stream().map(this::amount))
        .reduce(PaintAmount.NONE, PaintAmount::plus);
  }

  private PaintAmount amount(Coat coat) {
    return PaintAmount.of(
        area.squareCentimetres() * coat.coverage(),
        coat.coats(),
        coat.thinner(),
        tools.application());
  }

  /** Enough of the mix in whole drops; what can't be counted is a drop at least. */
  static Mix whole(Mix ratio, PaintAmount amount) {
    double least = ratio.parts().get(0).paint().dropMillilitres();
    return ratio.enoughFor(Math.max(least, amount.paintMillilitres()));
  }
}
