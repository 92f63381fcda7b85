package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.coat.BaseColour.Obstacle;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BaseFinderTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final CoatPredictor PREDICTOR =
      CoatPredictor.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
  private static final BaseFinder FINDER = BaseFinder.of(PREDICTOR);
  private static final List<String> WASHES =
      List.of("Whitewash wash", "Rust-brown wash", "Harbour-dirt wash", "Enamel off-white");

  private static final int CASES = 300;

  /** A mix of one to three acrylics, one to five drops of each. */
  private static Mix mix(Random random) {
    List<Paint> paints =
        SHELF.paints().stream()
            .filter(p -> p.medium() == Medium.ACRYLIC && p.whyNotComputable().isEmpty())
            .toList();
    List<Mix.Part> parts = new ArrayList<>();
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      Paint paint = paints.get(random.nextInt(paints.size()));
      if (parts.stream().noneMatch(part -> part.paint().equals(paint))) {
        parts.add(new Mix.Part(paint, 1 + random.nextInt(5)));
      }
    }
    return new Mix(parts);
  }

  /** One or two washes, then a filter; now and then so many coats that they hide. */
  private static List<Coat> coats(Random random) {
    List<Coat> coats = new ArrayList<>();
    for (int i = 1 + random.nextInt(2); i > 0; i--) {
      Paint wash = SHELF.paint(WASHES.get(random.nextInt(WASHES.size())));
      double thinner = wash.thinned() ? 0 : 4 + random.nextInt(12);
      int count = random.nextInt(8) == 0 ? 80 : 1 + random.nextInt(6);
      coats.add(new Coat(Mix.of(wash), count, thinner, 1));
    }
    coats.add(new Coat(Mix.of(SHELF.paint("Blue filter")), 1 + random.nextInt(4), 0, 1));
    return coats;
  }

  private static Lab end(Base base, List<Coat> coats) {
    return PREDICTOR.last(base, coats).lab();
  }

  // Where less than a hundredth of a difference shows, bases unlike each other end alike: there the
  // end counts. ΔE00 1 is a match (ISO/TR 28642, from memory); the search itself is far nearer.
  @Test
  void ofThreeHundredEndsTheBaseIsFoundAgainOrRefusedBecauseItIsHidden() {
    Random random = new Random(300);
    int hidden = 0;
    int hardly = 0;
    double worst = 0;
    for (int i = 0; i < CASES; i++) {
      Lab base = PREDICTOR.predict(new Base.OfMix(mix(random))).lab();
      List<Coat> coats = coats(random);
      Lab end = end(new Base.OfSwatch(new Swatch.OfLab(base)), coats);

      BaseColour found = FINDER.colour(new Swatch.OfLab(end), coats);

      if (found.contrastRatio() >= HidingPower.HIDES) {
        hidden++;
        assertThat(found.obstacle()).contains(Obstacle.HIDDEN);
        assertThat(FINDER.recipes(found, coats, PaintChoice.ALL)).isEmpty();
      } else {
        assertThat(found.isFound()).as("case %d: %s", i, found).isTrue();
        double missed = Ciede2000.deltaE(found.base(), base);
        if (found.shown() < BaseColour.HARDLY_SHOWN) {
          hardly++;
          assertThat(found.deltaE00()).isLessThan(0.01);
        } else {
          assertThat(missed).as("case %d: %s", i, found).isLessThanOrEqualTo(1);
          worst = Math.max(worst, missed);
        }
      }
    }
    assertThat(hidden).isPositive();
    System.out.printf(
        "%d ends: %d bases found again within ΔE00 %.4f, %d hidden, %d hardly shown%n",
        CASES, CASES - hidden - hardly, worst, hidden, hardly);
  }

  // The mix itself is among those looked for, so that nothing has to be missed but what the aim at
  // a smooth reflectance costs.
  @Test
  void paintForTheBaseEndsWhereTheMixThatWasPaintedEnded() {
    Random random = new Random(12);
    double worst = 0;
    double sum = 0;
    int cases = Integer.getInteger("base.cases", 4);
    for (int i = 0; i < cases; i++) {
      Mix mix = mix(random);
      List<Coat> coats = Coats.parse("Harbour-dirt wash:2, Blue filter:3", SHELF);
      Lab end = end(new Base.OfMix(mix), coats);

      BaseColour colour = FINDER.colour(new Swatch.OfLab(end), coats);
      List<BaseRecipe> recipes = FINDER.recipes(colour, coats, PaintChoice.ALL);

      assertThat(recipes).isNotEmpty();
      double nearest = recipes.stream().mapToDouble(BaseRecipe::deltaE00).min().orElseThrow();
      assertThat(nearest).as("%s ends at %s", mix.toText(), end).isLessThanOrEqualTo(1);
      worst = Math.max(worst, nearest);
      sum += nearest;
    }
    System.out.printf(
        "%d mixes: paint found ends ΔE00 %.2f away on average, %.2f at worst%n",
        cases, sum / cases, worst);
  }

  private static BaseColour colour(Lab end, String coats) {
    return BaseFinder.of(PREDICTOR).colour(new Swatch.OfLab(end), Coats.parse(coats, SHELF));
  }

  private static Lab over(double reflectance, String coats) {
    double[] values = new double[8];
    Arrays.fill(values, reflectance);
    Swatch grey = new Swatch.OfReflectance(400, 40, values);
    return end(new Base.OfSwatch(grey), Coats.parse(coats, SHELF));
  }

  // The coats over a perfect white and over a black are looked at forwards, by the predictor.
  @Test
  void whatEvenWhiteOrBlackBelowCannotDoIsRefusedWithTheReason() {
    double lightest = over(1, "Harbour-dirt wash:3").l();
    double darkest = over(1e-6, "Whitewash wash:6").l();

    BaseColour tooLight = colour(Lab.ofD65(lightest + 1, 0, 5), "Harbour-dirt wash:3");
    assertThat(tooLight.obstacle()).contains(Obstacle.TOO_LIGHT);
    assertThat(tooLight.isFound()).isFalse();
    assertThat(Obstacle.TOO_LIGHT.word()).isEqualTo("too-light");
    assertThat(Obstacle.TOO_LIGHT.reason()).startsWith("even over white");
    BaseColour tooDark = colour(Lab.ofD65(darkest - 1, 0, 0), "Whitewash wash:6");
    assertThat(tooDark.obstacle()).contains(Obstacle.TOO_DARK);
    assertThat(tooDark.base().l()).isLessThan(15);
  }

  // A saturated yellow under a blue filter is neither too light nor too dark for it.
  @Test
  void aHueThatNoBaseCanBalanceIsTooTintedAndTheNearestBaseIsOneThatASurfaceCanHave() {
    String coats = "Blue filter:12";
    Lab yellow = Lab.ofD65(45, -5, 60);
    assertThat(yellow.l()).isBetween(over(1e-6, coats).l() + 5, over(1, coats).l() - 5);

    BaseColour found = colour(yellow, coats);

    assertThat(found.obstacle()).contains(Obstacle.TOO_TINTED);
    Lab seen = PREDICTOR.predict(new Base.OfSwatch(new Swatch.OfLab(found.base()))).lab();
    // Recovered once more, a colour at the edge moves a little; one beyond it moves by units.
    assertThat(Ciede2000.deltaE(seen, found.base())).isLessThan(0.1);
  }

  // A hundredth of a wash leaves what is below as it is, and 0.98 of contrast leaves next to
  // nothing of it.
  @Test
  void whatIsLeftOfADifferenceIsAllUnderNextToNothingAndNothingUnderPaintThatHides() {
    Lab end = Lab.ofD65(50, 5, 5);

    assertThat(colour(end, "Blue filter:0.01").shown()).isCloseTo(1, within(0.01));
    assertThat(colour(end, "Red oxide:8").shown()).isBetween(0.0, 0.02);
  }

  // Under a wash of white spirit an enamel base is lifted and an acrylic one isn't.
  @Test
  void aBaseThatTheCoatsDoNotLiftComesFirst() {
    List<Coat> coats = Coats.parse("Rust-brown wash:2", SHELF);
    Swatch rust = SHELF.paint("Bucket-chain rust").masstone().orElseThrow();
    Lab end = end(new Base.OfSwatch(rust), coats);
    PaintChoice choice =
        PaintChoice.ALL.withOnly(Set.of("Bucket-chain rust", "Boot-topping red", "Yellow oxide"));

    BaseFinder finder = BaseFinder.of(PREDICTOR);
    List<BaseRecipe> recipes =
        finder.recipes(finder.colour(new Swatch.OfLab(end), coats), coats, choice);

    assertThat(recipes).extracting(BaseRecipe::clashes).contains(0, 1).isSorted();
    for (BaseRecipe recipe : recipes) {
      boolean isEnamel = recipe.base().recipe().names().contains("Bucket-chain rust");
      assertThat(recipe.clashes()).isEqualTo(isEnamel ? 1 : 0);
      assertThat(end(recipe.toBase(), coats)).isEqualTo(recipe.end().lab());
    }
  }

  /**
   * By hand: paint matched to the base's colour alone, then looked at under the coats. Few paints
   * of strong hues are far from the smoothest reflectance that a base's colour is taken for.
   */
  @Test
  void aimingAgainEndsNearerThanPaintOfTheBasesColour() {
    PaintChoice choice =
        PaintChoice.ALL.withOnly(
            Set.of("Titanium white", "Ultramarine blue", "Arylide yellow", "Signal red"));
    List<Coat> coats = Coats.parse("Blue filter:12", SHELF);
    Lab wanted = Lab.ofD65(45, -10, -15);
    BaseFinder finder = BaseFinder.of(PREDICTOR);
    BaseColour colour = finder.colour(new Swatch.OfLab(wanted), coats);
    MatchRequest once =
        MatchRequest.of(new Swatch.OfLab(colour.base())).withAlternatives(10).withChoice(choice);
    double expectedByHand =
        Matcher.of(PREDICTOR.optics(), PREDICTOR.light()).match(once).recipes().stream()
            .map(ranked -> PREDICTOR.last(new Base.OfMix(ranked.recipe().toMix()), coats))
            .mapToDouble(last -> last.spread().expectedDeltaE00(wanted))
            .min()
            .orElseThrow();

    List<BaseRecipe> recipes = finder.recipes(colour, coats, choice);

    assertThat(colour.isFound()).isTrue();
    double expected =
        recipes.stream().mapToDouble(BaseRecipe::expectedDeltaE00).min().orElseThrow();
    assertThat(expected).isLessThan(expectedByHand);
    assertThat(recipes)
        .extracting(recipe -> recipe.base().recipe().names())
        .doesNotHaveDuplicates();
  }
}
