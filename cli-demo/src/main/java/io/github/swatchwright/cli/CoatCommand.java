package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.card.Card;
import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.BaseFinder;
import io.github.swatchwright.coat.BasePlan;
import io.github.swatchwright.coat.Chipping;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatAmounts;
import io.github.swatchwright.coat.CoatGoal;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.coat.PreHighlight;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Predicts coats over a base, and finds the coat that does what is wanted. */
@CommandLine.Command(
    name = "coat",
    description =
        "Tells what coats, washes and filters over a base will look like, whether their media go"
            + " together, and which coat does what you want.",
    footer = {
      "",
      "Examples:",
      "  swatchwright coat --base 'Dredger grey' --coats 'Whitewash wash:2, Blue filter:3'",
      "  swatchwright coat --base 'Dredger grey' --shift b=-4",
      "  swatchwright coat --end '#7C8188' --coats 'Whitewash wash:2, Blue filter:2'",
      "  swatchwright coat --base 'Dredger grey' --coats 'Red oxide:2, Deckhouse cream:2@1:1"
          + " over 60%%' --chipped 15%%",
      "  swatchwright coat --base 'Boot-topping red' --towards 'Enamel off-white' --share 0.5",
      "  swatchwright coat --base '#656A6C' --coats 'Red oxide:2@1:1 over 40%%' --area 500cm2"
    })
final class CoatCommand implements Command {
  /** The same coats give the same picture. */
  private static final long SEED = 1;

  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Mixin CardOption card = new CardOption();

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Mixin AmountOptions amounts = new AmountOptions();

  @Option(
      names = "--base",
      paramLabel = "BASE",
      description = "What lies below: a colour, a paint or a mix.")
  @Nullable String base;

  @Option(
      names = "--end",
      paramLabel = "COLOUR",
      description =
          "Backwards, instead of --base: find the base that ends in this colour under the coats,"
              + " and paint for it.")
  @Nullable String end;

  @Option(
      names = "--end-spread",
      paramLabel = "L",
      description =
          "With --end: how much darker and lighter, in L*, the pre-highlight's darkest and lightest"
              + " parts are to end, 0 to 50 (default 5).")
  @Nullable Double endSpread;

  @Mixin PaintChoiceOptions choice = new PaintChoiceOptions();

  @Option(
      names = "--coats",
      paramLabel = "COATS",
      description =
          "The coats, lowest first: \"Name:coats@paint:thinner\", such as \"Red oxide:2@1:1\","
              + " or \"Name:1@1:2 over 60%%\" for one that covers a share; separate coats by"
              + " commas.")
  @Nullable String coats;

  @Option(
      names = "--chipped",
      paramLabel = "PERCENT",
      description =
          "Wear the topmost coat of paint off this share of what it covers, such as 15%%.")
  @Nullable String chipped;

  @Mixin CoatGoalOptions goal = new CoatGoalOptions();

  @Option(
      names = "--pre-highlight",
      arity = "2",
      paramLabel = "COLOUR",
      description =
          "Darkest and lightest colour of the pre-highlight (default: greys of Y = 5 %% and"
              + " 80 %%).")
  List<String> preHighlight = new ArrayList<>();

  @Option(
      names = "--finish",
      paramLabel = "FINISH",
      description = "See all of it under a varnish: matt, satin or gloss.")
  @Nullable String finish;

  @Option(
      names = "--scale-lightening",
      paramLabel = "SHARE",
      defaultValue = "0",
      description =
          "Lighten the base for scale by this share of white, 0 to 1 (default 0, since it is"
              + " disputed).")
  double scaleLightening;

  CoatCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    checkOptionsBelongTogether();
    Shelf shelf = shared.shelf();
    CoatPredictor predictor = predictor(shelf);
    List<Coat> whole = coats == null ? List.of() : Coats.parse(coats, shelf);
    Optional<Chipping> chipping =
        Optional.ofNullable(chipped).map(share -> Chipping.ofTopmost(whole, percent(share) / 100));
    List<Coat> stack = chipping.map(some -> some.of(whole)).orElse(whole);
    CoatPlan plan =
        end == null
            ? overBase(predictor, shelf, stack)
            : toEnd(predictor, shelf, stack, colour(end, shelf));
    OptionalDouble area = amounts.squareCentimetres();
    if (area.isPresent()) {
      plan = plan.withAmounts(CoatAmounts.of(area.getAsDouble(), amounts.application(), stack));
    }
    CoatPlan all = chipping.map(plan::withChipping).orElse(plan);
    card.write(output, shared, () -> Card.of(all, SEED));
    shared.give(
        output,
        () -> JsonResult.of(all),
        () -> {
          new CoatText(output, shared.light()).print(all);
          LastTime lastTime = LastTime.of(shared);
          stack.stream()
              .flatMap(coat -> lastTime.of(coat.mix(), lastTimeWords(coat)).stream())
              .distinct()
              .forEach(output::line);
        });
  }

  private static List<String> lastTimeWords(Coat coat) {
    return List.of("coat", coat.use().word());
  }

  private CoatPlan overBase(CoatPredictor predictor, Shelf shelf, List<Coat> stack) {
    Base below = BaseArgument.parse(Objects.requireNonNull(base), shelf, reference, output);
    Optional<CoatGoal> wanted = goal.goal(text -> colour(text, shelf));
    CoatPlan plan = CoatPlan.of(predictor, below, stack);
    return wanted
        .map(some -> plan.withAdvice(goal.advisor(predictor, shelf).advise(below, stack, some)))
        .orElse(plan);
  }

  private CoatPlan toEnd(CoatPredictor predictor, Shelf shelf, List<Coat> stack, Swatch wanted) {
    double spread = endSpread == null ? BasePlan.USUAL_SPREAD : endSpread;
    BasePlan below = BasePlan.of(BaseFinder.of(predictor), wanted, stack, choice.of(shelf), spread);
    return CoatPlan.of(
            below.preHighlight().map(predictor::withPreHighlight).orElse(predictor),
            below.base(),
            stack)
        .withBelow(below);
  }

  private static double percent(String text) {
    String digits = text.strip().replaceFirst("\\s*%$", "");
    try {
      return Require.within("--chipped", Double.parseDouble(digits), 0, 100);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "--chipped is '" + text + "', must be a share of the area such as 15%", e);
    }
  }

  private void checkOptionsBelongTogether() {
    if ((base == null) == (end == null)) {
      throw new IllegalArgumentException(
          base == null
              ? "give --base, or --end to find one"
              : "--base and --end exclude each other: --end finds the base");
    }
    if (end != null) {
      checkEnd();
    } else if (endSpread != null) {
      throw new IllegalArgumentException("--end-spread needs --end");
    }
    if (chipped != null && coats == null) {
      throw new IllegalArgumentException("--chipped wears off a coat: give --coats as well");
    }
    if (coats == null && !goal.isGiven()) {
      throw new IllegalArgumentException("give --coats, --shift or --towards");
    }
    goal.check();
    if (preHighlight.size() > 2) {
      throw new IllegalArgumentException("--pre-highlight takes two colours; give it once");
    }
    if (coats == null && amounts.areGiven()) {
      throw new IllegalArgumentException("--area and --length need --coats");
    }
  }

  private void checkEnd() {
    if (coats == null) {
      throw new IllegalArgumentException("--end needs --coats: what is to go over the base");
    }
    if (goal.isGiven()) {
      throw new IllegalArgumentException(
          "--end finds a base; --shift and --towards find coats: give one");
    }
    if (scaleLightening != 0 || !preHighlight.isEmpty()) {
      throw new IllegalArgumentException(
          "--end finds base and pre-highlight: leave out --scale-lightening and --pre-highlight");
    }
  }

  private CoatPredictor predictor(Shelf shelf) {
    CoatPredictor predictor =
        CoatPredictor.of(ShelfOptics.estimate(shelf), shared.weights())
            .withScaleLightening(scaleLightening);
    if (!preHighlight.isEmpty()) {
      List<Swatch> ends = preHighlight.stream().map(text -> colour(text, shelf)).toList();
      predictor = predictor.withPreHighlight(new PreHighlight(ends.get(0), ends.get(1)));
    }
    return finish == null
        ? predictor
        : predictor.withFinish(Words.one("--finish", finish, Finish.values(), Finish::word));
  }

  private Swatch colour(String text, Shelf shelf) {
    return ColourArgument.parse(text, shelf, reference, output).swatch();
  }
}
