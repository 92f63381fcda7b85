package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.OrderNote;
import io.github.swatchwright.coat.SolventVerdict;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Medium;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** One way through the tasks of an area, coat on coat. Used once. */
final class AreaWalk {
  /** Common practice of the trade, without a source. */
  private static final String WIPING =
      "Into lines and recesses; wipe it off the faces with a clean damp brush, downwards.";

  /** A filter that moves a colour further than this, in ΔE00, has become a coat of paint. */
  private static final double STRONG_FILTER = 10;

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
    if (hasOpenChips()) {
      seal(List.of(), "Seal the chips: damp fingers would go on lifting paint.");
    }
    return Optional.empty();
  }

  private Optional<Harm> step(int place, Wish wish) {
    Task task = wish.task();
    if (hasOpenChips() && task.kind() != StepKind.VARNISH) {
      Painted next = painted(wish);
      seal(next.coats(), "Seal the chips: below them lies medium that water still lifts.");
    }
    Painted painted = painted(wish);
    if (task.worn() > 0 && !overChippingMedium() && wantsChippingMedium(painted, wish)) {
      addClear(
          ClearCoats.chippingMedium(),
          StepKind.CHIPPING_MEDIUM,
          "Put in so that the next coat can be worn off in chips.");
    }
    if (overChippingMedium()) {
      checkChips(painted, wish);
    } else {
      List<OrderNote> clashes = layers.clashes(painted.coats());
      if (!clashes.isEmpty() && !seal(painted.coats(), why(clashes.get(0)))) {
        return Optional.of(harm(place, clashes.get(0)));
      }
      if (!clashes.isEmpty()) {
        painted = painted(wish);
      }
    }
    add(place, wish, painted);
    return Optional.empty();
  }

  private Painted painted(Wish wish) {
    try {
      return new TaskWorker(tools, area, overHighlight).work(wish, layers);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(place(wish) + e.getMessage(), e);
    }
  }

  private IllegalArgumentException refusal(Wish wish, String why) {
    return new IllegalArgumentException(place(wish) + why);
  }

  private String place(Wish wish) {
    return String.format(
        "%s, step %d (%s): ", area.name(), wish.index() + 1, wish.task().kind().word());
  }

  /** Whether the topmost coat has chips in it that water would go on making. */
  private boolean hasOpenChips() {
    int below = layers.all().size() - 2;
    return below >= 0
        && last.filter(step -> step.work().worn() > 0).isPresent()
        && ClearCoats.isChippingMedium(layers.all().get(below));
  }

  private boolean overChippingMedium() {
    return last.filter(step -> step.kind() == StepKind.CHIPPING_MEDIUM).isPresent();
  }

  private boolean wantsChippingMedium(Painted painted, Wish wish) {
    if (painted.coats().isEmpty()) {
      return false;
    }
    Medium medium = painted.coats().get(0).medium();
    if (medium == Medium.LACQUER) {
      throw refusal(wish, "water doesn't get through lacquer to wear it off; take an acrylic");
    }
    return medium == Medium.ACRYLIC || medium == Medium.WATER;
  }

  private void checkChips(Painted painted, Wish wish) {
    if (painted.coats().isEmpty()) {
      return;
    }
    Coat coat = painted.coats().get(0);
    if (wish.task().worn() == 0) {
      throw refusal(
          wish, "it goes over chipping medium: say how much is worn off, such as worn 0.15");
    }
    if (coat.medium() != Medium.ACRYLIC && coat.medium() != Medium.WATER) {
      throw refusal(
          wish,
          "water doesn't get through "
              + coat.medium().word()
              + " to the chipping medium; take an"
              + " acrylic");
    }
    if (coat.isWash()) {
      throw refusal(
          wish,
          "thinned so far it floods the chipping medium and lifts it at once; thin less than 1:3");
    }
  }

  private static String why(OrderNote clash) {
    String reason = clash.rule().reason();
    return "Put in because "
        + clash.upperPaint()
        + " ("
        + clash.rule().upper().word()
        + ") goes over "
        + clash.lowerPaint()
        + " ("
        + clash.rule().lower().word()
        + "): "
        + reason
        + ".";
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
    List<String> advice = new ArrayList<>(List.of(why));
    advice.addAll(care(List.of(coat)));
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
    List<String> advice = new ArrayList<>();
    wish.moved().ifPresent(advice::add);
    advice.addAll(painted.advice());
    advice.addAll(care(worn));
    if (task.kind() == StepKind.WASH && !worn.isEmpty() && worn.get(0).coverage() < 1) {
      advice.add(WIPING);
    }
    if (task.worn() > 0 && !worn.isEmpty()) {
      advice.add(wearing(worn.get(0).medium(), task.worn()));
    }
    PaintAmount amount =
        painted.ladder().isPresent()
            ? painted.ladder().get().rungs().stream()
                .map(rung -> rung.amount())
                .reduce(PaintAmount.NONE, PaintAmount::plus)
            : painted.coats().stream()
                .map(this::amount)
                .reduce(PaintAmount.NONE, PaintAmount::plus);
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
    if (kind == StepKind.FILTER && moved > STRONG_FILTER) {
      said.add(
          String.format(
              Locale.ROOT,
              "This moves the colour by ΔE00 %.0f; a filter usually stays below %.0f: thin it more,"
                  + " or give it fewer coats.",
              moved,
              STRONG_FILTER));
    }
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

  /** What the coats need care for, each once. */
  private List<String> care(List<Coat> coats) {
    return layers.notes(coats).stream()
        .filter(note -> note.verdict() == SolventVerdict.CAREFUL)
        .filter(note -> !note.lowerPaint().equals(ClearCoats.CHIPPING_MEDIUM))
        .map(note -> "Care: " + note.rule().reason() + ". " + note.rule().remedy())
        .distinct()
        .toList();
  }

  /** Common practice of the trade, without a source. */
  private static String wearing(Medium medium, double worn) {
    String share = Math.round(100 * worn) + " %";
    return medium == Medium.ACRYLIC || medium == Medium.WATER
        ? "About half an hour after the last coat, not the next day: wet a small patch, wait a"
            + " moment, and lift about "
            + share
            + " of it with a damp stiff brush, most where hands and boots go."
        : "Once it is touch-dry, rub about "
            + share
            + " of it off with a brush that is just damp with "
            + Thinner.of(medium)
            + ".";
  }
}
