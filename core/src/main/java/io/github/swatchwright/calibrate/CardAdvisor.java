package io.github.swatchwright.calibrate;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.estimate.PlannedPatch;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Names the test cards whose painting would shrink the expected error most, one after the other.
 * What a card will show needn't be known: in a Gaussian estimate the error that is left depends on
 * what is measured and how well, not on the result.
 */
public final class CardAdvisor {
  /** The most cards that are named at once. */
  public static final int MOST_CARDS = 10;

  /** A card that takes off less than this share of the error isn't worth the paint. */
  private static final double WORTHWHILE = 0.002;

  /** How many of the cards that seem best are weighed exactly. */
  private static final int SHORTLIST = 40;

  private final ShelfOptics optics;
  private final CardErrors errors;
  private final PaintChoice choice;
  private final MixPredictor predictor;

  private CardAdvisor(ShelfOptics optics, CardErrors errors, PaintChoice choice) {
    this.optics = optics;
    this.errors = errors;
    this.choice = choice;
    predictor = MixPredictor.of(optics, TristimulusWeights.D65);
  }

  /**
   * An adviser for one shelf.
   *
   * @param errors how well the cards will be made and measured; their colour by a meter unless
   *     stated
   */
  public static CardAdvisor of(ShelfOptics optics, CardErrors errors) {
    return new CardAdvisor(optics, errors, PaintChoice.ALL);
  }

  /**
   * This adviser with other paints to mix.
   *
   * @throws IllegalArgumentException when a named paint isn't on the shelf
   */
  public CardAdvisor withChoice(PaintChoice paints) {
    return new CardAdvisor(optics, errors, paints.on(optics.shelf()));
  }

  /**
   * Cards for the recipes that would be used for some colours.
   *
   * @param targets at least one
   * @param cards how many cards to name, 1 to {@value #MOST_CARDS}
   */
  public NextCards forTargets(List<Swatch> targets, int cards) {
    return forTargets(targets, cards, Control.PLAIN);
  }

  /**
   * The same, stopped and watched by a control.
   *
   * @throws java.util.concurrent.CancellationException when it was stopped
   */
  public NextCards forTargets(List<Swatch> targets, int cards, Control control) {
    return control.onOwnThreads(own -> namedFor(targets, cards, own));
  }

  private NextCards namedFor(List<Swatch> targets, int cards, Control control) {
    Require.within("number of targets", targets.size(), 1, 1000);
    Matcher matcher = Matcher.of(optics, TristimulusWeights.D65);
    List<WantedMix> wanted =
        targets.stream()
            .map(
                target ->
                    WantedMix.of(
                        best(matcher, target, control),
                        target.labUnder(TristimulusWeights.D65),
                        predictor))
            .toList();
    List<Recipe> possible = new ArrayList<>(PossibleCards.of(optics, choice, wanted));
    wanted.forEach(mix -> possible.add(mix.recipe()));
    return choose(wanted, possible, cards, control);
  }

  private Recipe best(Matcher matcher, Swatch target, Control control) {
    control.requireGoingOn();
    return matcher
        .match(MatchRequest.of(target).withChoice(choice).withAlternatives(1))
        .recipes()
        .get(0)
        .recipe();
  }

  /**
   * Cards for whatever may be mixed from the shelf: a sample of its mixes.
   *
   * @param seed of the sample
   * @param cards how many cards to name, 1 to {@value #MOST_CARDS}
   */
  public NextCards forShelf(long seed, int cards) {
    return forShelf(seed, cards, Control.PLAIN);
  }

  /**
   * The same, stopped and watched by a control.
   *
   * @throws java.util.concurrent.CancellationException when it was stopped
   */
  public NextCards forShelf(long seed, int cards, Control control) {
    return control.onOwnThreads(own -> namedForShelf(seed, cards, own));
  }

  private NextCards namedForShelf(long seed, int cards, Control control) {
    List<WantedMix> wanted =
        ShelfSample.of(optics, choice, seed).stream()
            .map(recipe -> WantedMix.of(recipe, predictor))
            .toList();
    return choose(wanted, PossibleCards.of(optics, choice, wanted), cards, control);
  }

  /**
   * A card that might be painted.
   *
   * @param recipe what would go into it
   * @param patch what it would tell
   */
  private record Possible(Recipe recipe, PlannedPatch patch) {
    Weighed weighed(List<WantedMix> wanted) {
      return new Weighed(
          this,
          wanted.stream().mapToDouble(mix -> mix.expectedAfter(patch)).average().orElseThrow());
    }

    Weighed roughly(List<WantedMix> wanted) {
      return new Weighed(
          this, wanted.stream().mapToDouble(mix -> mix.roughlyExpectedAfter(patch)).sum());
    }

    Possible given(PlannedPatch painted) {
      return new Possible(recipe, painted.given(patch));
    }
  }

  /**
   * A card with the error that it would leave.
   *
   * @param card the card
   * @param left the error
   */
  private record Weighed(Possible card, double left) {}

  private NextCards choose(
      List<WantedMix> atFirst, List<Recipe> recipes, int cards, Control control) {
    Require.within("cards", cards, 1, MOST_CARDS);
    List<WantedMix> wanted = atFirst;
    List<Possible> possible =
        recipes.stream()
            .map(recipe -> new Possible(recipe, optics.planned(patch(recipe))))
            .toList();
    double before = mean(wanted);
    List<NextCard> chosen = new ArrayList<>();
    while (chosen.size() < cards && !possible.isEmpty()) {
      Weighed best = best(possible, wanted, control);
      if (best.left() > before * (1 - WORTHWHILE)) {
        break;
      }
      chosen.add(new NextCard(best.card().recipe(), best.left()));
      before = best.left();
      PlannedPatch painted = best.card().patch();
      wanted = wanted.stream().map(mix -> mix.given(painted)).toList();
      Possible done = best.card();
      possible =
          possible.stream()
              .filter(card -> !card.recipe().equals(done.recipe()))
              .map(card -> card.given(painted))
              .toList();
      control.progress().reached((double) chosen.size() / (cards + 1));
    }
    control.progress().reached(1);
    return new NextCards(atFirst.stream().map(WantedMix::recipe).toList(), mean(atFirst), chosen);
  }

  private static Weighed best(List<Possible> possible, List<WantedMix> wanted, Control control) {
    return possible.stream()
        .peek(card -> control.requireGoingOn())
        .map(card -> card.roughly(wanted))
        .sorted(Comparator.comparingDouble(Weighed::left))
        .limit(SHORTLIST)
        .map(rough -> rough.card().weighed(wanted))
        .min(Comparator.comparingDouble(Weighed::left))
        .orElseThrow();
  }

  private static double mean(List<WantedMix> wanted) {
    return wanted.stream().mapToDouble(WantedMix::expectedDeltaE00).average().orElseThrow();
  }

  private PaintedPatch patch(Recipe recipe) {
    Map<String, Double> volumes = new LinkedHashMap<>();
    Mix mix = recipe.toMix();
    for (Mix.Part part : mix.parts()) {
      volumes.put(part.paint().name(), part.millilitres());
    }
    Swatch expected = new Swatch.OfLab(predictor.predict(mix).lab());
    return new PaintedPatch(
        volumes,
        errors.amount(),
        expected,
        errors.colour().orElse(expected.usualError()),
        Optional.empty(),
        OptionalDouble.empty());
  }
}
