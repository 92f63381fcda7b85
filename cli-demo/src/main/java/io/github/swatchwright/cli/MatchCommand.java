package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.terminal.EarlyEnd;
import io.github.swatchwright.colour.ColourNotation;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.Preference;
import io.github.swatchwright.match.Substitution;
import io.github.swatchwright.match.Wishes;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds recipes for a colour. */
@CommandLine.Command(
    name = "match",
    description = "Finds recipes in whole drops for a colour, the one to trust most first.",
    footer = {
      "",
      "ΔE00 is how different two colours look: below 1 nobody sees it, above 2 it shows at"
          + " a glance. D65 is daylight as the standards have it.",
      "",
      "Examples:",
      "  swatchwright match '#8A4B2A'",
      "  swatchwright match 'lab(45, 5, 12)' --paints 2 --max-drops 8 --without 'Lamp black'",
      "  swatchwright match '#8A4B2A' --use-pot 'Red oxide:6, Yellow oxide:2' --prefer"
          + " fewer-paints",
      "  swatchwright match '#CCC096' --min-hiding 0.8 --ratios 2",
      "  swatchwright match 'Red oxide' --same-hiding",
      "",
      "Recipes are ranked by the difference to be expected (ΔE00); a recipe that uses a left-over",
      "pot counts as 0.5 better, a paint fewer as 0.5, a drop fewer as 0.1, half the price as 0.5.",
      "A paint whose bottle the shelf states (\"bottle\":{\"leftMillilitres\":4,",
      "\"pricePerMillilitre\":0.2}) is used as far as it goes.",
      "",
      "JSON: target, insteadOf, reachable, nearestDeltaE00, missing, recipes[]{drops[]{paint or"
          + " pot,",
      "drops}, predicted, interval, deltaE00, expectedDeltaE00, verdict, contrastRatio,",
      "acrossLights{known, worstDeltaE00, light}, pricePerMillilitre, score}, weighed, complete,",
      "provenGap, leftOut[]."
    })
final class MatchCommand implements Command {
  private static final double SHORTEST = 0.1;
  private static final double LONGEST = 86_400;

  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Mixin CardOption card = new CardOption();

  @Mixin PaintChoiceOptions choice = new PaintChoiceOptions();

  @Parameters(index = "0", paramLabel = "TARGET", description = "The colour you want.")
  String target = "";

  @Option(
      names = "--paints",
      paramLabel = "N",
      defaultValue = "3",
      description = "The most paints in a recipe, 1 to 4 (default 3).")
  int paints;

  @Option(
      names = "--max-drops",
      paramLabel = "N",
      defaultValue = "12",
      description = "The most drops in a recipe, 1 to 40 (default 12).")
  int maxDrops;

  @Option(
      names = "--alternatives",
      paramLabel = "N",
      defaultValue = "5",
      description = "How many recipes to show, 1 to 50 (default 5).")
  int alternatives;

  @Option(
      names = "--use-pot",
      paramLabel = "MIX",
      description =
          "A left-over pot to use as an ingredient, by what went into it, such as"
              + " \"Name:6, Other name:2\"; give the option again for more.")
  List<String> pots = new ArrayList<>();

  @Option(
      names = "--ratios",
      paramLabel = "N",
      defaultValue = "1",
      description = "How many recipes to show of each set of paints, 1 to 3 (default 1).")
  int ratios;

  @Option(
      names = "--prefer",
      paramLabel = "WORDS",
      description =
          "What counts beside the colour: fewer-paints, fewer-drops, cheaper, across-lights;"
              + " separate several by commas, or give the option again.")
  List<String> preferences = new ArrayList<>();

  @Option(
      names = "--min-hiding",
      paramLabel = "RATIO",
      description =
          "Show only mixes of which one coat has at least this contrast ratio, 0 to 1; from 0.98 on"
              + " it hides.")
  @Nullable Double leastHiding;

  @Option(
      names = "--same-hiding",
      description = "The target is a paint: match how well one coat of it hides as well.")
  boolean sameHiding;

  @Option(
      names = "--target-shelf",
      paramLabel = "FILE",
      description = "The target is the name of a paint on this other shelf.")
  @Nullable GivenFile targetShelf;

  @Option(
      names = "--longest",
      paramLabel = "SECONDS",
      description =
          "Stop after this many seconds with the best found so far, 0.1 to 86400 (default:"
              + " search to the end; Ctrl-C stops it too).")
  @Nullable Double longest;

  MatchCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    TristimulusWeights light = shared.weights();
    checkNumbers();
    Shelf shelf = shared.shelf();
    ShelfOptics optics = ShelfOptics.estimate(shelf);
    MatchRequest request = request(shelf, targetRequest(optics, light));
    MatchResult result = search(Matcher.of(optics, light), request);
    card.write(output, shared, () -> Card.of(result));
    shared.give(
        output,
        () -> JsonResult.of(result),
        () -> new MatchText(output, shared.light()).print(result));
  }

  private MatchResult search(Matcher matcher, MatchRequest request) {
    try (EarlyEnd end = EarlyEnd.whenInterrupted()) {
      return output.withProgress(
          control -> matcher.match(request, limited(control).withCancelled(end::isAsked)));
    }
  }

  private void checkNumbers() {
    check("--paints", paints, Recipe.MOST_PAINTS);
    check("--max-drops", maxDrops, MatchRequest.LARGEST_DROPS);
    check("--alternatives", alternatives, MatchRequest.LARGEST_ALTERNATIVES);
    check("--ratios", ratios, MatchRequest.LARGEST_RATIOS);
    if (leastHiding != null && !(leastHiding >= 0 && leastHiding <= 1)) {
      throw new IllegalArgumentException(
          "--min-hiding is " + leastHiding + ", must be within [0.0, 1.0]");
    }
  }

  static void check(String option, int value, int highest) {
    if (value < 1 || value > highest) {
      throw new IllegalArgumentException(
          option + " is " + value + ", must be within [1, " + highest + "]");
    }
  }

  private Control limited(Control control) {
    if (longest == null) {
      return control;
    }
    if (!(longest >= SHORTEST && longest <= LONGEST)) {
      throw new IllegalArgumentException(
          "--longest is " + longest + ", must be within [" + SHORTEST + ", " + LONGEST + "]");
    }
    return control.withLongest(Duration.ofMillis((long) (1000 * longest)));
  }

  /** The target: any colour, or a paint that is to be done without. */
  private MatchRequest targetRequest(ShelfOptics optics, TristimulusWeights light) {
    boolean nameOfCss = ColourNotation.of(target).filter(ColourNotation.NAME::equals).isPresent();
    boolean named =
        ArgumentKind.of(target, optics.shelf()).isName() || (targetShelf != null && nameOfCss);
    if (!named && (sameHiding || targetShelf != null)) {
      throw new IllegalArgumentException(
          (sameHiding ? "--same-hiding" : "--target-shelf")
              + ": the target is '"
              + target
              + "', must be the name of a paint");
    }
    if (!named) {
      return MatchRequest.of(
          ColourArgument.parse(target, optics.shelf(), reference, output).swatch());
    }
    if (targetShelf == null) {
      ColourArgument.parse(target, optics.shelf(), reference, output);
    }
    ShelfOptics itsShelf =
        targetShelf == null
            ? optics
            : ShelfOptics.estimate(targetShelf.read("--target-shelf", ShelfJson::read));
    return MatchRequest.of(Substitution.of(target.trim(), itsShelf, light));
  }

  private MatchRequest request(Shelf shelf, MatchRequest bare) {
    MatchRequest request =
        bare.withMostPaints(paints)
            .withMostDrops(maxDrops)
            .withAlternatives(alternatives)
            .withRatios(ratios)
            .withChoice(choice.of(shelf))
            .withPots(pots.stream().map(text -> pot(text, shelf)).toList())
            .withWishes(wishes(bare));
    return request;
  }

  private static Pot pot(String text, Shelf shelf) {
    try {
      return Pot.parse(text, shelf);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("--use-pot: " + e.getMessage(), e);
    }
  }

  private Wishes wishes(MatchRequest request) {
    Wishes wishes = Wishes.NONE;
    for (String words : preferences) {
      for (String word : words.split(",", -1)) {
        wishes =
            wishes.preferring(
                Words.one("--prefer", word.trim(), Preference.values(), Preference::word));
      }
    }
    if (leastHiding != null) {
      wishes = wishes.hidingAtLeast(leastHiding);
    }
    return sameHiding ? wishes.hidingLike(hidingOf(request.insteadOf().orElseThrow())) : wishes;
  }

  private static double hidingOf(Substitution substitution) {
    return substitution
        .contrastRatio()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "--same-hiding: nothing is known of how '"
                        + substitution.paint().name()
                        + "' hides; give it a 'hiding' on its shelf"));
  }
}
