package io.github.swatchwright.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.paint.Bottle;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What counts beside the colour, on the demo shelf. */
class WishesTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final Matcher MATCHER = Matcher.of(OPTICS, TristimulusWeights.D65);
  private static final MatchRequest RUST =
      MatchRequest.of(new Swatch.OfSrgb(Srgb.parse("#8A4B2A"))).withMedium(Medium.ACRYLIC);

  private static List<RankedRecipe> recipes(MatchRequest request) {
    return MATCHER.match(request).recipes();
  }

  private static Shelf with(Paint changed) {
    return Shelf.of(
        "changed",
        SHELF.paints().stream().map(p -> p.name().equals(changed.name()) ? changed : p).toList());
  }

  @Test
  void aPotIsOfferedAndReadsBack() {
    Pot pot = Pot.parse("Red oxide:5, Yellow oxide:3", SHELF);
    MatchResult result = MATCHER.match(RUST.withPots(List.of(pot)));
    List<RankedRecipe> withPot =
        result.recipes().stream().filter(r -> !r.recipe().pots().isEmpty()).toList();
    assertThat(withPot).isNotEmpty();
    for (RankedRecipe ranked : result.recipes()) {
      double bonus = ranked.recipe().pots().isEmpty() ? 0 : Ranking.POT;
      assertThat(ranked.score()).isCloseTo(ranked.expectedDeltaE00() - bonus, within(1e-12));
    }
    assertThat(result.recipes().stream().map(RankedRecipe::score).toList()).isSorted();
    String text = JsonResult.of(result).toText();
    assertThat(text).contains("\"pot\" : \"Red oxide:5, Yellow oxide:3\"");
    assertThat(JsonResult.parseRecipes(text, "match", SHELF))
        .isEqualTo(result.recipes().stream().map(RankedRecipe::recipe).toList());
  }

  @Test
  void theBestRecipeOfAPotIsOfferedEvenWhenOthersAreMuchBetter() {
    Pot pot = Pot.parse("Ultramarine blue:6, Titanium white:2", SHELF);
    List<RankedRecipe> found = recipes(RUST.withPots(List.of(pot)).withAlternatives(3));
    assertThat(found).hasSize(3);
    assertThat(found.get(0).recipe().pots()).isEmpty();
    assertThat(found.get(2).recipe().pots()).hasSize(1);
  }

  @Test
  void aPotThatIsTheTargetComesFirstEvenFromAPoorShelf() {
    Pot pot = Pot.parse("Ultramarine blue:3, Titanium white:7", SHELF);
    Swatch target =
        new Swatch.OfLab(
            MixPredictor.of(OPTICS, TristimulusWeights.D65).predict(pot.contents()).lab());
    MatchRequest request =
        MatchRequest.of(target).withOnly(Set.of("Lamp black")).withPots(List.of(pot));
    RankedRecipe best = recipes(request).get(0);
    assertThat(best.recipe().drops()).isEmpty();
    assertThat(best.recipe().pots()).containsExactly(new Recipe.PotDrops(pot, 1));
    assertThat(best.deltaE00()).isCloseTo(0, within(1e-9));
  }

  @Test
  void noRecipeTakesMoreThanAPotOrABottleHolds() {
    Pot pot = Pot.parse("Red oxide:2, Yellow oxide:1", SHELF);
    Paint scarce =
        SHELF
            .paint("Burnt umber")
            .withBottle(new Bottle(OptionalDouble.of(0.1), OptionalDouble.empty()));
    // 0.1 ml at 0.045 ml a drop: two drops.
    Matcher matcher = Matcher.of(ShelfOptics.estimate(with(scarce)), TristimulusWeights.D65);
    List<RankedRecipe> found =
        matcher.match(RUST.withPots(List.of(pot)).withAlternatives(50).withRatios(3)).recipes();
    List<Integer> ofUmber = new ArrayList<>();
    for (RankedRecipe ranked : found) {
      ranked.recipe().pots().forEach(p -> assertThat(p.count()).isLessThanOrEqualTo(3));
      ranked.recipe().drops().stream()
          .filter(some -> some.paint().name().equals("Burnt umber"))
          .forEach(some -> ofUmber.add(some.count()));
    }
    assertThat(ofUmber).isNotEmpty().allMatch(count -> count <= 2);

    Paint empty = scarce.withBottle(new Bottle(OptionalDouble.of(0.01), OptionalDouble.empty()));
    MatchResult without =
        Matcher.of(ShelfOptics.estimate(with(empty)), TristimulusWeights.D65).match(RUST);
    assertThat(without.leftOut())
        .extracting(LeftOutPaint::text)
        .contains("'Burnt umber' is used up");
  }

  @Test
  void preferencesMoveTheRankingTheirWay() {
    double plainPaints = 0;
    double fewPaints = 0;
    for (String target : List.of("#8A4B2A", "#7A8471", "#B99A6B", "#4A5560", "#9C8E86")) {
      MatchRequest request =
          MatchRequest.of(new Swatch.OfSrgb(Srgb.parse(target))).withMedium(Medium.ACRYLIC);
      List<RankedRecipe> plain = recipes(request);
      List<RankedRecipe> few =
          recipes(
              request.withWishes(
                  Wishes.NONE
                      .preferring(Preference.FEWER_PAINTS)
                      .preferring(Preference.FEWER_DROPS)));
      // Of one colour none may do with fewer: a paint less may cost more than the wish is worth.
      assertThat(meanSize(few)).as(target).isLessThanOrEqualTo(meanSize(plain));
      plainPaints += meanSize(plain);
      fewPaints += meanSize(few);
      assertThat(drops(few)).as(target).isLessThan(drops(plain));
      assertThat(few.stream().map(RankedRecipe::score).toList()).isSorted();
    }
    assertThat(fewPaints).isLessThan(plainPaints);
  }

  private static int drops(List<RankedRecipe> recipes) {
    return recipes.stream().mapToInt(r -> r.recipe().total()).sum();
  }

  private static double meanSize(List<RankedRecipe> recipes) {
    return recipes.stream().mapToInt(r -> r.recipe().names().size()).average().orElseThrow();
  }

  @Test
  void aLowPriceCountsWhereItIsKnown() {
    List<Paint> priced = new ArrayList<>();
    for (Paint paint : SHELF.paints()) {
      double price = paint.name().equals("Red oxide") ? 100 : 0.1;
      boolean unknown = paint.name().equals("Burnt umber");
      OptionalDouble known = unknown ? OptionalDouble.empty() : OptionalDouble.of(price);
      priced.add(paint.withBottle(new Bottle(OptionalDouble.empty(), known)));
    }
    Matcher matcher =
        Matcher.of(ShelfOptics.estimate(Shelf.of("priced", priced)), TristimulusWeights.D65);
    List<RankedRecipe> cheap =
        matcher
            .match(RUST.withWishes(Wishes.NONE.preferring(Preference.CHEAPER)).withAlternatives(20))
            .recipes();
    assertThat(cheap.get(0).recipe().names()).doesNotContain("Red oxide", "Burnt umber");
    for (RankedRecipe ranked : cheap) {
      boolean umber = ranked.recipe().names().contains("Burnt umber");
      assertThat(ranked.pricePerMillilitre().isEmpty()).isEqualTo(umber);
      if (!umber && !ranked.recipe().names().contains("Red oxide")) {
        assertThat(ranked.pricePerMillilitre().getAsDouble()).isCloseTo(0.1, within(1e-12));
      }
    }
  }

  @Test
  void hidingIsAskedForAndReported() {
    double least = 0.75;
    MatchResult result = MATCHER.match(RUST.withWishes(Wishes.NONE.hidingAtLeast(least)));
    MixPredictor predictor = MixPredictor.of(OPTICS, TristimulusWeights.D65);
    assertThat(result.recipes()).isNotEmpty();
    for (RankedRecipe ranked : result.recipes()) {
      double ratio =
          new HidingPower(predictor.viewing())
              .contrastRatio(predictor.constants(ranked.recipe().toMix()), Film.COAT);
      assertThat(ranked.contrastRatio()).isEqualTo(ratio).isGreaterThanOrEqualTo(least);
    }
    // Its one coat has a contrast ratio of 0.314.
    MatchRequest yellow = RUST.withOnly(Set.of("Arylide yellow"));
    MatchResult none = MATCHER.match(yellow.withWishes(Wishes.NONE.hidingAtLeast(0.9)));
    assertThat(none.recipes()).isEmpty();
    assertThat(none.weighed()).isEqualTo(1);
  }

  @Test
  void otherLightsAreKnownOnlyWhereSpectraAreMeasured() {
    MatchRequest green = MatchRequest.of(substitution("Chrome oxide green"));
    boolean known = false;
    for (RankedRecipe ranked : recipes(green.withAlternatives(50))) {
      boolean measured =
          ranked.recipe().drops().stream()
              .allMatch(d -> d.paint().masstone().orElseThrow() instanceof Swatch.OfReflectance);
      assertThat(ranked.acrossLights().isPresent()).isEqualTo(measured);
      known |= measured;
      ranked.acrossLights().ifPresent(lights -> assertWorst(lights, ranked, green.target()));
    }
    assertThat(known).isTrue();
    assertThat(recipes(RUST)).allMatch(ranked -> ranked.acrossLights().isEmpty());
    List<RankedRecipe> constant =
        recipes(green.withWishes(Wishes.NONE.preferring(Preference.ACROSS_LIGHTS)));
    assertThat(constant.get(0).acrossLights()).isPresent();
  }

  private static void assertWorst(AcrossLights lights, RankedRecipe ranked, Swatch target) {
    double worst = 0;
    for (Illuminant light : List.of(Illuminant.D65, Illuminant.A, Illuminant.LED_B3)) {
      TristimulusWeights weights = TristimulusWeights.of(light, Observer.CIE_1931);
      MixPredictor predictor = MixPredictor.of(OPTICS, weights);
      worst =
          Math.max(
              worst,
              Ciede2000.deltaE(target.labUnder(weights), predictor.predict(ranked.recipe()).lab()));
    }
    // The same reflectance by another way to it: rounding.
    assertThat(lights.worstDeltaE00()).isCloseTo(worst, within(1e-6));
  }

  private static Substitution substitution(String name) {
    return Substitution.of(name, OPTICS, TristimulusWeights.D65);
  }

  @Test
  void aSubstituteHasTheHidingOfThePaintAndNotThePaintItself() {
    Substitution cream = substitution("Boot-topping red");
    MatchRequest bare = MatchRequest.of(cream);
    double wanted = cream.contrastRatio().orElseThrow();
    List<RankedRecipe> byColour = recipes(bare);
    MatchResult both = MATCHER.match(bare.withWishes(Wishes.NONE.hidingLike(wanted)));
    assertThat(both.leftOut())
        .extracting(LeftOutPaint::text)
        .contains("'Boot-topping red' is what is to be matched");
    assertThat(both.recipes())
        .allMatch(ranked -> !ranked.recipe().names().contains("Boot-topping red"));
    assertThat(meanMiss(both.recipes(), wanted)).isLessThan(meanMiss(byColour, wanted));
    assertThat(recipes(bare.withOnly(Set.of("Boot-topping red"))).get(0).recipe().names())
        .containsExactly("Boot-topping red");
    // A stated contrast ratio is taken as it is; of nothing stated nothing is known.
    assertThat(substitution("Red oxide").contrastRatio()).hasValue(0.664);
    assertThat(substitution("Quay-mud brown").contrastRatio()).isEmpty();
  }

  private static double meanMiss(List<RankedRecipe> recipes, double wanted) {
    return recipes.stream()
        .mapToDouble(r -> Math.abs(r.contrastRatio() - wanted))
        .average()
        .orElseThrow();
  }

  @Test
  void furtherRatiosOfASetAreShownTogetherOnRequest() {
    List<RankedRecipe> found = recipes(RUST.withRatios(3).withAlternatives(6));
    List<Set<String>> sets = found.stream().map(r -> r.recipe().names()).toList();
    assertThat(new HashSet<>(sets)).hasSize(6);
    assertThat(found.size()).isGreaterThan(6);
    Set<Set<String>> seen = new HashSet<>();
    for (int i = 0; i < sets.size(); i++) {
      assertThat(Collections.frequency(sets, sets.get(i))).isLessThanOrEqualTo(3);
      if (i > 0 && sets.get(i).equals(sets.get(i - 1))) {
        assertThat(found.get(i).score()).isGreaterThanOrEqualTo(found.get(i - 1).score());
      } else {
        assertThat(seen.add(sets.get(i))).isTrue();
      }
    }
  }

  @Test
  void manyTargetsAreMatchedInTheirOrder() {
    List<Double> heard = new ArrayList<>();
    List<MatchRequest> requests = List.of(RUST, RUST.withMostPaints(1), RUST.withMostDrops(3));
    List<MatchResult> results =
        MATCHER.matchAll(requests, Control.PLAIN.withThreads(2).withProgress(heard::add));
    for (int i = 0; i < 3; i++) {
      assertThat(results.get(i).recipes())
          .extracting(RankedRecipe::recipe)
          .isEqualTo(recipes(requests.get(i)).stream().map(RankedRecipe::recipe).toList());
    }
    assertThat(heard).isSorted().last().isEqualTo(1.0);
    assertThat(MATCHER.matchAll(List.of(), Control.PLAIN)).isEmpty();
  }

  @Test
  void manyTargetsStopAtOnceAndHandOutWhatIsThere() {
    List<MatchRequest> requests = Collections.nCopies(500, RUST);
    List<MatchResult> heard = new ArrayList<>();
    List<MatchResult> results =
        MATCHER.matchAll(
            requests,
            Control.PLAIN.withThreads(2).withCancelled(() -> heard.size() >= 3),
            heard::add);
    assertThat(results).hasSizeBetween(3, 5).hasSameSizeAs(heard);
    assertThat(results.get(0).complete()).isTrue();
  }

  @Test
  void aStoppedMatchSaysWhatItMayHaveMissed() {
    MatchResult whole = MATCHER.match(RUST);
    assertThat(whole.complete()).isTrue();
    assertThat(whole.provenGap()).isZero();
    Wishes few = Wishes.NONE.preferring(Preference.FEWER_PAINTS);
    for (Control stopped :
        List.of(
            Control.PLAIN.withLongest(Duration.ZERO), Control.PLAIN.withCancelled(() -> true))) {
      MatchResult result = MATCHER.match(RUST.withWishes(few), stopped);
      assertThat(result.complete()).isFalse();
      assertThat(result.recipes()).isNotEmpty();
      assertThat(result.reach().nearestDeltaE00() - result.provenGap())
          .isLessThanOrEqualTo(whole.reach().nearestDeltaE00() + 1e-9);
    }
  }

  @Test
  void impossibleWishesAreRefused() {
    Pot enamel = Pot.parse("Bucket-chain rust:6", SHELF);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MATCHER.match(RUST.withPots(List.of(enamel))))
        .withMessage("the pot of Bucket-chain rust:6 is enamel, must be acrylic");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RUST.withPots(List.of(enamel, enamel)))
        .withMessage("the 'pot of Bucket-chain rust:6' is given twice");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Wishes.NONE.hidingAtLeast(1.2))
        .withMessage("leastContrastRatio is 1.2, must be within [0.0, 1.0]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RUST.withRatios(4))
        .withMessage("ratios is 4, must be within [1, 3]");
  }
}
