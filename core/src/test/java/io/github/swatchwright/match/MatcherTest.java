package io.github.swatchwright.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.search.ExhaustiveSearch;
import io.github.swatchwright.search.SearchSpace;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class MatcherTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final Matcher MATCHER = Matcher.of(OPTICS, TristimulusWeights.D65);
  private static final Swatch RUST = new Swatch.OfSrgb(Srgb.parse("#8A4B2A"));

  private static Set<String> names(Recipe recipe) {
    return recipe.drops().stream().map(some -> some.paint().name()).collect(Collectors.toSet());
  }

  @Test
  void aRustToneHasSeveralUsableRecipes() {
    MatchResult result = MATCHER.match(MatchRequest.of(RUST));
    assertThat(result.recipes()).hasSize(5);
    assertThat(result.recipes().get(0).deltaE00()).isLessThan(2);
    assertThat(result.reach().withinReach()).isTrue();
    assertThat(result.recipes())
        .allSatisfy(ranked -> assertThat(ranked.recipe().total()).isLessThanOrEqualTo(12));
  }

  @Test
  void recipesDifferInPaintsAndComeSturdiestFirst() {
    List<RankedRecipe> recipes =
        MATCHER.match(MatchRequest.of(RUST).withAlternatives(20)).recipes();
    assertThat(new HashSet<>(recipes.stream().map(r -> names(r.recipe())).toList())).hasSize(20);
    assertThat(recipes.stream().map(RankedRecipe::expectedDeltaE00).toList()).isSorted();
  }

  @Test
  void everyPotHoldsOneMedium() {
    for (RankedRecipe ranked :
        MATCHER.match(MatchRequest.of(RUST).withAlternatives(50)).recipes()) {
      assertThat(ranked.recipe().drops().stream().map(some -> some.paint().medium()).distinct())
          .hasSize(1);
    }
  }

  @Test
  void constraintsAreKept() {
    MatchRequest request =
        MatchRequest.of(RUST).withMostPaints(2).withMostDrops(6).withMedium(Medium.ACRYLIC);
    assertThat(MATCHER.match(request).recipes())
        .allSatisfy(
            ranked -> {
              assertThat(ranked.recipe().drops()).hasSizeLessThanOrEqualTo(2);
              assertThat(ranked.recipe().total()).isLessThanOrEqualTo(6);
              assertThat(ranked.recipe().drops().get(0).paint().medium()).isEqualTo(Medium.ACRYLIC);
            });
    Set<String> only = Set.of("Red oxide", "Yellow oxide", "Lamp black");
    assertThat(MATCHER.match(MatchRequest.of(RUST).withOnly(only)).recipes())
        .allSatisfy(ranked -> assertThat(only).containsAll(names(ranked.recipe())));
    assertThat(MATCHER.match(MatchRequest.of(RUST).withWithout(Set.of("Red oxide"))).recipes())
        .allSatisfy(ranked -> assertThat(names(ranked.recipe())).doesNotContain("Red oxide"));
  }

  @Test
  void effectPaintsAreLeftOutAndSaidSo() {
    assertThat(MATCHER.match(MatchRequest.of(RUST)).leftOut())
        .extracting(LeftOutPaint::text)
        .containsExactly("'Bell brass' is metallic, which the model doesn't hold for");
  }

  @Test
  void aTargetOutOfReachSaysWhatIsMissing() {
    Swatch neon = new Swatch.OfSrgb(Srgb.parse("#00FF40"));
    Reach reach = MATCHER.match(MatchRequest.of(neon)).reach();
    assertThat(reach.withinReach()).isFalse();
    assertThat(reach.nearestDeltaE00()).isGreaterThan(10);
    assertThat(reach.words()).contains("more chromatic");
    assertThat(reach.missing().deltaC()).isPositive();
  }

  @Test
  void aWarmedMatcherAnswersLikeAColdOne() {
    List<Double> heard = new ArrayList<>();
    Control control = Control.PLAIN.withThreads(2).withProgress(heard::add);
    Matcher warmed =
        Matcher.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65).warmed(control);
    assertThat(heard).last().isEqualTo(1.0);
    for (MatchRequest request : List.of(MatchRequest.of(RUST), MatchRequest.ofMoving(RUST))) {
      assertThat(warmed.match(request)).isEqualTo(MATCHER.match(request));
    }
  }

  @Test
  void aMatcherWithoutMemoryAnswersTheSame() {
    Matcher forgetful = MATCHER.withMemory(0);
    for (MatchRequest request :
        List.of(MatchRequest.of(RUST), MatchRequest.ofMoving(RUST), MatchRequest.of(RUST))) {
      assertThat(forgetful.match(request)).isEqualTo(MATCHER.match(request));
    }
    assertThatIllegalArgumentException().isThrownBy(() -> MATCHER.withMemory(-1));
  }

  @Test
  void aMovingColourGetsOneRecipeOfTwoPaintsAtMost() {
    MatchResult result = MATCHER.match(MatchRequest.ofMoving(RUST));
    assertThat(result.recipes()).hasSize(1);
    assertThat(result.recipes().get(0).recipe().drops()).hasSizeLessThanOrEqualTo(2);
  }

  @Test
  void unknownNamesAndEmptyChoicesAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MATCHER.match(MatchRequest.of(RUST).withOnly(Set.of("Red oxid"))))
        .withMessageContaining("no paint 'Red oxid' on the shelf")
        .withMessageContaining("nearest is 'Red oxide'");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MATCHER.match(MatchRequest.of(RUST).withOnly(Set.of("Bell brass"))))
        .withMessageContaining("no paint is left to choose from");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MatchRequest.of(RUST).withMostPaints(9))
        .withMessage("most paints is 9, must be within [1, 4]");
  }

  @Test
  void twoHundredRandomRecipesAreFoundAgainByTheirOwnColour() {
    Random random = new Random(2026);
    MixPredictor predictor = MixPredictor.of(OPTICS, TristimulusWeights.D65);
    ExhaustiveSearch search = new ExhaustiveSearch();
    double worst = 0;
    for (int trial = 0; trial < 200; trial++) {
      Recipe recipe = randomRecipe(random);
      Prediction prediction = predictor.predict(recipe.toMix());
      List<PaintOptics> paints =
          OPTICS.paints().stream()
              .filter(p -> p.paint().medium() == recipe.drops().get(0).paint().medium())
              .toList();
      SearchSpace space = new SearchSpace(paints, predictor.viewing(), 3, 12);
      Lab target = prediction.lab();
      worst = Math.max(worst, search.nearest(space, target, 1).get(0).deltaE00());
    }
    System.out.printf(Locale.ROOT, "search round trip: worst of 200 is ΔE00 %.2e%n", worst);
    assertThat(worst).isLessThanOrEqualTo(0.01);
  }

  private static Recipe randomRecipe(Random random) {
    Medium medium = random.nextInt(4) == 0 ? Medium.ENAMEL : Medium.ACRYLIC;
    List<Paint> paints =
        new ArrayList<>(
            OPTICS.paints().stream()
                .map(PaintOptics::paint)
                .filter(paint -> paint.medium() == medium)
                .toList());
    Collections.shuffle(paints, random);
    List<Recipe.Drops> drops = new ArrayList<>();
    for (Paint paint : paints.subList(0, 1 + random.nextInt(3))) {
      drops.add(new Recipe.Drops(paint, 1 + random.nextInt(4)));
    }
    return new Recipe(drops);
  }
}
