package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.Corrector;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.card.Card;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.photo.PatchDifference;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what to add to a pot that came out wrong. */
@CommandLine.Command(
    name = "correct",
    description = "Tells which drops to add to a pot that came out wrong.",
    footer = {
      "",
      "Examples:",
      "  swatchwright correct 'Titanium white:6, Red oxide:2' --measured '#C3907F'"
          + " --target '#B47A68'",
      "  swatchwright correct 'Titanium white:6, Red oxide:2' --photo test.jpg@100,170,30,30"
          + " --target test.jpg@240,100,160,160 --grey 510,56,76,76@18%% --out cards.json"
    })
final class CorrectCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Mixin CardOption card = new CardOption();

  @Mixin PaintChoiceOptions choice = new PaintChoiceOptions();

  @Parameters(
      index = "0",
      paramLabel = "MIX",
      description = "What is in the pot, such as \"Name:3, Other name:1\"; the numbers are drops.")
  String mix = "";

  @Option(
      names = "--measured",
      paramLabel = "COLOUR",
      description = "The colour that the pot has, painted and dry.")
  @Nullable String measured;

  @Option(
      names = "--photo",
      paramLabel = "PHOTO@AREA",
      description =
          "In place of --measured: where the dried test is in a photo. With the target in the same"
              + " photo, or a known colour (--beside), the light's error cancels.")
  @Nullable String photo;

  @Option(
      names = "--target",
      paramLabel = "COLOUR",
      required = true,
      description = "The colour that it should have.")
  String target = "";

  @Option(
      names = "--out",
      paramLabel = "CARDS",
      description = "Also add the pot as a test card to this file, for calibrate to learn from.")
  @Nullable NewFile cardsFile;

  CorrectCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    Shelf shelf = shared.shelf();
    Mix pot = Mix.parse(mix, shelf);
    String of = measured();
    GivenColour seen = ColourArgument.parse(of, shelf, reference, output);
    GivenColour wanted = ColourArgument.parse(target, shelf, reference, output);
    Optional<PatchDifference> apart = apart(of, shelf);
    Correction correction =
        Corrector.of(ShelfOptics.estimate(shelf), shared.weights())
            .withChoice(choice.of(shelf))
            .correct(pot, seen.swatch(), seen.error(), wanted.swatch());
    card.write(output, shared, () -> Card.of(pot, seen.swatch(), wanted.swatch(), correction));
    Optional<CardSet> cards = Optional.ofNullable(cardsFile).map(file -> learn(pot, seen, file));
    shared.give(
        output,
        () -> JsonResult.of(pot, correction),
        () -> {
          apart.ifPresent(this::print);
          new CorrectionText(output).print(correction);
          cards.ifPresent(this::print);
        });
  }

  private String measured() {
    String colour = measured;
    String place = photo;
    if ((colour == null) == (place == null)) {
      throw new IllegalArgumentException(
          "give the pot's colour once, with --measured COLOUR or --photo PHOTO@AREA");
    }
    if (place != null) {
      PhotoPatch.parse(place);
      return place;
    }
    return Objects.requireNonNull(colour);
  }

  /** How pot and target differ, when both are in one photo. */
  private Optional<PatchDifference> apart(String pot, Shelf shelf) {
    boolean both =
        ArgumentKind.of(pot, shelf) == ArgumentKind.PHOTO
            && ArgumentKind.of(target, shelf) == ArgumentKind.PHOTO;
    if (!both) {
      return Optional.empty();
    }
    PhotoPatch one = PhotoPatch.parse(pot);
    PhotoPatch other = PhotoPatch.parse(target);
    return one.file().equals(other.file())
        ? Optional.of(one.from(other, reference, shelf))
        : Optional.empty();
  }

  private CardSet learn(Mix pot, GivenColour seen, NewFile file) {
    TestCard painted =
        TestCard.ofMix(pot, seen.swatch())
            .withMeasuredError(seen.error())
            .withPainted(LocalDate.ofInstant(output.clock().instant(), ZoneOffset.UTC));
    return new CardsFile("--out", file).add(painted, output);
  }

  private void print(PatchDifference apart) {
    output.line(
        "In one photo, pot and target are ΔE00 %.1f apart, which is off by less than %.1f in 80"
            + " %%.",
        apart.deltaE00(), apart.intervalDeltaE00());
  }

  private void print(CardSet cards) {
    output.line(
        "Card %d written to %s; 'swatchwright calibrate' learns from it.",
        cards.cards().size(), String.valueOf(cardsFile));
  }
}
