package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.CardAdvisor;
import io.github.swatchwright.calibrate.CardErrors;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.NextCard;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.card.Card;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a better shelf from test cards. */
@CommandLine.Command(
    name = "calibrate",
    description = "Learns from test cards what your paints do in mixes, and writes a better shelf.",
    footer = {
      "",
      "Examples:",
      "  swatchwright calibrate cards.json --out better.shelf.json",
      "  swatchwright calibrate --pot 'Titanium white:6, Red oxide:2' --measured '#C3907F'"
          + " --out better.json",
      "  swatchwright calibrate --next --for '#8A4B2A'"
    })
final class CalibrateCommand implements Command {
  /** Of the sample of a shelf's mixes: any would do, but the answer should stay the same. */
  private static final long SEED = 1;

  private static final int NAMED_CARDS = 2;

  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Mixin CardOption card = new CardOption();

  @Mixin PaintChoiceOptions choice = new PaintChoiceOptions();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "CARDS",
      description = "The test cards, as JSON: what went into each, and its measured colour.")
  @Nullable GivenFile cardsFile;

  @Option(
      names = "--pot",
      paramLabel = "MIX",
      description = "A measured pot as one more card; its colour follows with --measured.")
  List<String> pots = new ArrayList<>();

  @Option(
      names = "--measured",
      paramLabel = "COLOUR",
      description = "The pot's colour, painted and dry.")
  List<String> measured = new ArrayList<>();

  @Option(
      names = "--painted",
      paramLabel = "DAY",
      description =
          "The day, such as 2026-11-20, on which pots and cards that don't say theirs were painted:"
              + " a paint's strength differs from day to day, and the latest counts.")
  @Nullable LocalDate painted;

  @Option(
      names = "--out",
      paramLabel = "NEW",
      description = "The file to write the better shelf to; without it, only see what it learns.")
  @Nullable NewFile newFile;

  @Option(
      names = "--fit-surface",
      description = "Also fit how much light the surface reflects; needs cards of dark paint.")
  boolean fitSurface;

  @Option(
      names = "--next",
      description = "Name the two test cards that would help most if you painted them next.")
  boolean next;

  @Option(
      names = "--for",
      paramLabel = "COLOUR",
      description =
          "With --next: a colour that you want to mix (default: anything that the shelf can"
              + " mix).")
  List<String> targets = new ArrayList<>();

  @Option(
      names = "--amount-error",
      paramLabel = "SHARE",
      defaultValue = "0.05",
      description = "How exactly the parts were measured out, as a share of each (default 0.05).")
  double amountError;

  @Option(
      names = "--colour-error",
      paramLabel = "E",
      description =
          "How exactly the colours were measured, in units of L* (default: what is usual for the"
              + " way a colour is given).")
  @Nullable Double colourError;

  CalibrateCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    CardErrors errors =
        new CardErrors(
            amountError,
            colourError == null ? OptionalDouble.empty() : OptionalDouble.of(colourError));
    Shelf shelf = shared.shelf();
    List<TestCard> cards = cards(shelf);
    if (!next && !targets.isEmpty()) {
      throw new IllegalArgumentException("--for is given without --next, must be with it");
    }
    if (cards.isEmpty()) {
      if (newFile != null) {
        throw new IllegalArgumentException("--out is given without cards to learn from");
      }
      name(nextCards(shelf, errors));
      return;
    }
    Calibration calibration = calibration(shelf, cards, errors);
    NewFile out = newFile;
    if (out != null) {
      output.files().write("--out", out, ShelfJson.toText(calibration.shelf()));
    }
    if (!next) {
      give(shelf, calibration);
      return;
    }
    NextCards named = nextCards(calibration.shelf(), errors);
    write(shelf, calibration, Optional.of(named));
    shared.give(
        output,
        () -> JsonResult.of(calibration, named),
        () -> {
          print(calibration);
          print(named);
        });
  }

  private void give(Shelf shelf, Calibration calibration) {
    write(shelf, calibration, Optional.empty());
    shared.give(output, () -> JsonResult.of(calibration), () -> print(calibration));
  }

  private void write(Shelf shelf, Calibration calibration, Optional<NextCards> named) {
    card.write(output, shared, () -> Card.of(shelf, calibration, named, shared.light()));
  }

  private Calibration calibration(Shelf shelf, List<TestCard> cards, CardErrors errors) {
    CardSet set = new CardSet(cards.stream().map(this::dated).toList());
    return output.withProgress(
        control ->
            fitSurface
                ? Calibration.withFittedSurface(shelf, set, errors, control)
                : Calibration.of(shelf, set, errors, control));
  }

  private void print(Calibration calibration) {
    new CalibrationText(output).print(calibration, fitSurface);
    if (newFile == null) {
      output.line("The better shelf is not kept: --out NEW writes it.");
    } else {
      output.line("Written to %s.", newFile);
    }
  }

  private TestCard dated(TestCard card) {
    return painted == null || card.painted().isPresent() ? card : card.withPainted(painted);
  }

  private List<TestCard> cards(Shelf shelf) {
    List<TestCard> cards = new ArrayList<>();
    if (cardsFile != null) {
      cards.addAll(cardsFile.read("CARDS", CardsJson::read).cards());
    }
    if (pots.size() != measured.size()) {
      throw new IllegalArgumentException(
          "each --pot needs its --measured: there are " + pots.size() + " and " + measured.size());
    }
    for (int i = 0; i < pots.size(); i++) {
      Mix pot = Mix.parse(pots.get(i), shelf);
      GivenColour colour = ColourArgument.parse(measured.get(i), shelf, reference, output);
      TestCard card = TestCard.ofMix(pot, colour.swatch());
      cards.add(colourError == null ? card.withMeasuredError(colour.error()) : card);
    }
    return cards;
  }

  private Swatch colour(String text, Shelf shelf) {
    return ColourArgument.parse(text, shelf, reference, output).swatch();
  }

  private void name(NextCards named) {
    card.write(output, shared, () -> Card.of(named, shared.light()));
    shared.give(output, () -> JsonResult.of(named), () -> print(named));
  }

  private NextCards nextCards(Shelf shelf, CardErrors errors) {
    if (!next) {
      throw new IllegalArgumentException("name cards to learn from: CARDS or --pot; or ask --next");
    }
    CardAdvisor advisor =
        CardAdvisor.of(ShelfOptics.estimate(shelf), errors).withChoice(choice.of(shelf));
    List<Swatch> wanted = targets.stream().map(target -> colour(target, shelf)).toList();
    return output.withProgress(
        control ->
            wanted.isEmpty()
                ? advisor.forShelf(SEED, NAMED_CARDS, control)
                : advisor.forTargets(wanted, NAMED_CARDS, control));
  }

  private void print(NextCards named) {
    output.line(
        "Expect ΔE00 %.1f, the mean of %s.",
        named.expectedDeltaE00(),
        targets.isEmpty() ? "a sample of the shelf's mixes" : "the best recipe for each colour");
    if (named.cards().isEmpty()) {
      output.line("No card would make that much better.");
    }
    for (NextCard card : named.cards()) {
      output.line(
          "  paint %s, then expect %.1f", card.recipe().toMix().toText(), card.expectedDeltaE00());
    }
  }
}
