package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.card.Speckle;
import io.github.swatchwright.cli.file.Endings;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.LadderOrder;
import io.github.swatchwright.ladder.LadderPlanner;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.PotRule;
import io.github.swatchwright.ladder.Subject;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans shades in even steps, out of one pot or each by itself. */
@CommandLine.Command(
    name = "ladder",
    description = "Plans shades in even steps from one end to another, and how much each covers.",
    footer = {
      "",
      "A ladder is a series of shades, a rung one of them. An end is a colour, or a mix such as"
          + " \"Name:3, Other name:1\". With --for, each pass covers less than the one before; rust"
          + " and wood get darker, fading, rubber and metal lighter.",
      "",
      "Examples:",
      "  swatchwright ladder '#C8642A' '#3B2A22' --rungs 4 --for rust",
      "  swatchwright ladder 'Dredger grey' '#B9BCB4' --rungs 5 --for fading --use 0.5",
      "  swatchwright ladder --colours rust.json --rungs 4 --order dark-to-light --separate"
    })
final class LadderCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Mixin CardOption card = new CardOption();

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Mixin CoverageOptions coverage = new CoverageOptions();

  @Mixin AmountOptions amounts = new AmountOptions();

  @Mixin PaintChoiceOptions choice = new PaintChoiceOptions();

  @Parameters(
      arity = "0..2",
      paramLabel = "END",
      description = "The two ends, or none with --colours.")
  List<String> ends = new ArrayList<>();

  @Option(
      names = "--colours",
      paramLabel = "FILE",
      description = "Colours with their shares, as 'sample --json' gives them, instead of ends.")
  @Nullable GivenFile colours;

  @Option(
      names = "--rungs",
      paramLabel = "N",
      defaultValue = "4",
      description = "How many shades, washes among them, 2 to 12 (default 4).")
  int rungs;

  @Option(
      names = "--order",
      paramLabel = "ORDER",
      description = "dark-to-light or light-to-dark (default: as the ends are given).")
  @Nullable String order;

  @Option(
      names = "--for",
      paramLabel = "SUBJECT",
      description = "rust, fading, wood, rubber or metal: sets order and coverage.")
  @Nullable String subject;

  @Option(
      names = "--use",
      paramLabel = "SHARE",
      description =
          "The share of the mixed paint that reaches the model, the rest stays in brush and cup"
              + " (default 0.9).")
  @Nullable Double use;

  @Option(names = "--separate", description = "A recipe for each rung instead of one pot.")
  boolean separate;

  @Option(
      names = "--max-drops",
      paramLabel = "N",
      description = "The most drops in a pot (default 40, or what the area takes).")
  @Nullable Integer maxDrops;

  @Option(
      names = "--min-drops",
      paramLabel = "N",
      description = "The fewest drops in a pot, so that drops can be counted (default 6).")
  @Nullable Integer minDrops;

  @Option(
      names = "--wash",
      paramLabel = "COATS",
      description = "Translucent coats as the last rungs, such as \"Name:1@1:10\".")
  List<String> washes = new ArrayList<>();

  @Option(
      names = "--margin",
      paramLabel = "L",
      defaultValue = "10",
      description =
          "Warn when an end is closer than this, in L*, to pure black or white (0: never).")
  double margin;

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Draw the painted surface into an SVG file.")
  @Endings("svg")
  @Nullable NewFile picture;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Random seed of the picture (default 1).")
  long seed;

  LadderCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    Shelf shelf = shared.shelf();
    LadderRequest request = request(shelf);
    Ladder ladder = LadderPlanner.of(ShelfOptics.estimate(shelf), shared.weights()).plan(request);
    card.write(output, shared, () -> Card.of(ladder, seed));
    if (picture != null) {
      output.files().write("--picture", picture, speckle(ladder).toSvg());
    }
    shared.give(
        output,
        () -> JsonResult.of(ladder),
        () -> {
          new LadderText(output, shared.light()).print(ladder);
          LastTime lastTime = LastTime.of(shared);
          ladder.rungs().stream()
              .flatMap(rung -> lastTime.of(rung.pot(), List.of("ladder")).stream())
              .distinct()
              .forEach(output::line);
        });
  }

  private Speckle speckle(Ladder ladder) {
    return Speckle.of(
        ladder.base().orElse(ladder.rungs().get(0).prediction().lab()),
        ladder.rungs().stream()
            .map(rung -> new Speckle.Pass(rung.prediction().lab(), rung.coverage()))
            .toList(),
        seed);
  }

  private LadderRequest request(Shelf shelf) {
    ShadeArguments arguments = new ShadeArguments(shelf, reference, output);
    ShadeArguments.Shades shades = arguments.shades(ends, colours);
    LadderRequest request =
        LadderRequest.of(shades.shades(), rungs)
            .withPot(pot())
            .withMargin(margin)
            .withChoice(choice.of(shelf));
    if (order != null) {
      request = request.withOrder(order(order));
    }
    if (coverage.base != null) {
      request = request.withBase(arguments.base(coverage.base));
    }
    if (!washes.isEmpty()) {
      request = request.withWashes(Coats.parse(String.join(", ", washes), shelf));
    }
    request = request.withCoverage(coverage.wish(arguments, shades));
    if (subject != null) {
      request = request.withSubject(Words.one("--for", subject, Subject.values(), Subject::word));
    }
    return request;
  }

  private static LadderOrder order(String word) {
    LadderOrder[] known = {LadderOrder.DARK_TO_LIGHT, LadderOrder.LIGHT_TO_DARK};
    return Words.one("--order", word, known, LadderOrder::word);
  }

  private PotRule pot() {
    PotRule rule = separate ? PotRule.recipes() : PotRule.onePot();
    if (use != null) {
      if (!(use > 0 && use <= 1)) {
        throw new IllegalArgumentException("--use is " + use + ", must be above 0 and at most 1");
      }
      rule = rule.withUse(use);
    }
    OptionalDouble area = amounts.squareCentimetres();
    if (area.isPresent()) {
      rule = rule.forArea(area.getAsDouble(), amounts.application());
    }
    if (maxDrops != null) {
      rule = rule.withMostDrops(maxDrops);
    }
    return minDrops == null ? rule : rule.withLeastDrops(minDrops);
  }
}
