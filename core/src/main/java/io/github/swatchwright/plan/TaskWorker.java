package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatAdvisor;
import io.github.swatchwright.coat.CoatGoal;
import io.github.swatchwright.coat.CoatOption;
import io.github.swatchwright.coat.HidingCoats;
import io.github.swatchwright.coat.SolventVerdict;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.LadderPlanner;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.PotRule;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.paint.Use;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Turns a task into coats, given what lies below: how many, of which mix, how thin.
 *
 * @param tools what to work with
 * @param area where it is
 * @param overHighlight whether a pre-highlight lies below, which the base mustn't hide
 */
record TaskWorker(Tools tools, ProjectArea area, boolean overHighlight) {
  /** Nobody sprays more coats of a base than this without looking for another paint. */
  private static final int MOST_BASE_COATS = 8;

  /** A primer and a pre-highlight are thin, or details drown. */
  private static final int MOST_THIN_COATS = 2;

  /** More drops make a sturdier recipe; a base takes many anyway. */
  private static final int RECIPE_DROPS = 16;

  private static final double ROOM = 1.25;

  /** A coat that lifts nothing below comes before one that ends nearer. */
  private static final Comparator<CoatOption> HARMLESS_FIRST =
      Comparator.comparing(
              (CoatOption option) ->
                  option.order().stream().anyMatch(note -> note.verdict() == SolventVerdict.CLASH))
          .thenComparingDouble(CoatOption::expectedDeltaE00);

  Painted work(Wish wish, Layers below) {
    Task task = wish.task();
    if (task.kind() == StepKind.CHIPPING_MEDIUM && task.aim() instanceof Aim.Usual) {
      return Painted.of(
          ClearCoats.chippingMedium(),
          List.of("One even coat, and only over what is dry; don't wait until the next day."));
    }
    if (task.aim() instanceof Aim.OfLadder shades) {
      return ladder(shades, below);
    }
    if (task.aim() instanceof Aim.Usual) {
      return varnish(task, below);
    }
    if (task.aim() instanceof Aim.OfColour colour) {
      Painted found = towards(task, colour.swatch(), below);
      return wish.wanted().isPresent() ? found.wanting(wish.wanted()) : found;
    }
    Painted painted = ofMix(task, ((Aim.OfMix) task.aim()).mix());
    return wish.wanted().isPresent() && task.kind().isTranslucent()
        ? new CoatFitting(tools, task).fit(painted, below, wish.wanted().get())
        : painted.wanting(wish.wanted());
  }

  private Painted varnish(Task task, Layers below) {
    Finish finish = task.finish().orElse(Finish.MATT);
    return tools
        .clearCoats()
        .varnish(below, List.of(), finish)
        .map(coat -> Painted.of(coat, List.of()))
        .orElseThrow(() -> new IllegalArgumentException("no varnish holds on what lies below"));
  }

  private Painted ofMix(Task task, Mix mix) {
    double thinner = task.thinner().orElse(usualThinner(task.kind(), mix));
    double coverage = task.coverage().orElse(task.kind().usualCoverage());
    Coat one = new Coat(mix, 1, thinner, coverage);
    List<String> advice = new ArrayList<>();
    one.doubt().ifPresent(question -> advice.add("Sure? " + question));
    int coats = task.coats().orElseGet(() -> usualCoats(task.kind(), one, advice));
    return Painted.of(new Coat(mix, coats, thinner, coverage), advice);
  }

  private static double usualThinner(StepKind kind, Mix mix) {
    return mix.parts().get(0).paint().thinned() ? 0 : kind.usualThinner();
  }

  private int usualCoats(StepKind kind, Coat one, List<String> advice) {
    if (kind.isTranslucent() || one.isVarnish()) {
      return 1;
    }
    OptionalInt hides = HidingCoats.whole(tools.predictor().coatsToHide(one));
    int whole = hides.orElse(Integer.MAX_VALUE);
    if (kind == StepKind.PRIMER || kind == StepKind.PRE_HIGHLIGHT) {
      return Math.min(MOST_THIN_COATS, whole);
    }
    if (overHighlight && kind == StepKind.BASE) {
      advice.add("Half of the coats that would hide: the pre-highlight is to shine through.");
      return Math.max(1, Math.min(MOST_BASE_COATS, whole) / 2);
    }
    if (whole > MOST_BASE_COATS) {
      advice.add(
          "It "
              + (hides.isEmpty() ? "never hides" : "needs " + whole + " coats to hide")
              + "; "
              + MOST_BASE_COATS
              + " thin coats let what is below shine through. Put a coat of a paint that hides"
              + " under it.");
    }
    return Math.min(MOST_BASE_COATS, whole);
  }

  private Painted towards(Task task, Swatch colour, Layers below) {
    if (task.kind().isTranslucent()) {
      return translucent(task, colour, below);
    }
    RankedRecipe best =
        tools
            .matcher()
            .match(MatchRequest.of(colour).withMostDrops(RECIPE_DROPS).withAlternatives(1))
            .recipes()
            .get(0);
    Painted painted = ofMix(task, best.recipe().toMix());
    List<String> advice = new ArrayList<>(painted.advice());
    advice.add(
        String.format(
            Locale.ROOT,
            "Expect this mix about ΔE00 %.1f from the colour you want.",
            best.expectedDeltaE00()));
    Lab wanted = colour.labUnder(tools.light());
    return new Painted(painted.coats(), Optional.empty(), Optional.of(wanted), advice);
  }

  private Painted translucent(Task task, Swatch colour, Layers below) {
    Use use = useFor(task.kind());
    List<String> names =
        tools.optics().paints().stream()
            .map(optics -> optics.paint())
            .filter(paint -> paint.use() == use)
            .map(Paint::name)
            .toList();
    if (names.isEmpty()) {
      throw new IllegalArgumentException(
          "there is no " + use.word() + " on the shelf; name a paint in place of the target");
    }
    Lab wanted = colour.labUnder(tools.light());
    CoatOption best =
        CoatAdvisor.of(tools.predictor())
            .withOnly(names)
            .advise(below.known(), below.since(), CoatGoal.ofColour(colour, 1))
            .options()
            .stream()
            .min(HARMLESS_FIRST)
            .orElseThrow(() -> noneNearer(use, wanted));
    return new Painted(
        List.of(best.coat()),
        Optional.empty(),
        Optional.of(wanted),
        List.of("Of your bottles, this one comes nearest to what you want."));
  }

  private static Use useFor(StepKind kind) {
    return switch (kind) {
      case FILTER -> Use.FILTER;
      case WASH -> Use.WASH;
      default -> Use.PAINT;
    };
  }

  private static IllegalArgumentException noneNearer(Use use, Lab wanted) {
    return new IllegalArgumentException(
        "no "
            + use.word()
            + " on the shelf brings it nearer to "
            + wanted.toSrgb().toHex()
            + "; leave the step out or name a paint");
  }

  private Painted ladder(Aim.OfLadder shades, Layers below) {
    Base base = Tools.asBase(tools.predict(below));
    PotRule usual = PotRule.onePot().forArea(area.squareCentimetres(), tools.application());
    double drops = usual.millilitresForAll() / Paint.USUAL_DROP_MILLILITRES / usual.use();
    PotRule pot =
        usual.withMostDrops(
            (int)
                Math.min(
                    PotRule.LARGEST_POT, Math.max(usual.mostDrops(), Math.ceil(ROOM * drops))));
    LadderRequest request =
        LadderRequest.between(shades.from(), shades.to(), shades.rungs())
            .withBase(base)
            .withPot(pot);
    Ladder ladder =
        LadderPlanner.of(tools.optics(), tools.light())
            .plan(shades.subject().map(request::withSubject).orElse(request));
    List<Coat> coats = new ArrayList<>();
    for (Rung rung : ladder.rungs()) {
      Coat one = Coat.of(rung.pot());
      int hides = HidingCoats.whole(tools.predictor().coatsToHide(one)).orElse(HidingCoats.MOST);
      coats.add(new Coat(rung.pot(), hides, 0, rung.coverage()));
    }
    return new Painted(
        coats,
        Optional.of(ladder),
        Optional.empty(),
        ladder.warnings().stream().map(warning -> warning.text()).toList());
  }
}
