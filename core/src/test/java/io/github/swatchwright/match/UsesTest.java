package io.github.swatchwright.match;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.Corrector;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.LadderPlanner;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.paint.Use;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a bottle is for decides whether it is mixed: in recipes, ladders and corrections. */
class UsesTest {
  /** The demo shelf with washes and filter that hide as paint does, so that they would tempt. */
  private static final Shelf SHELF = tempting(ShelfJson.parse(DemoShelf.text(), "demo shelf"));

  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final Matcher MATCHER = Matcher.of(OPTICS, TristimulusWeights.D65);

  /** 165 give more than 1,000 recipes, rungs and additions: {@code -Duses.targets=165}. */
  private static final int TARGETS = Integer.getInteger("uses.targets", 8);

  private static final PaintChoice WITH_WASHES =
      PaintChoice.ALL.withMedium(Medium.ENAMEL).withAlso(Set.of(Use.WASH));

  private static Shelf tempting(Shelf shelf) {
    return Shelf.of(
        shelf.name(),
        shelf.paints().stream()
            .map(
                paint ->
                    paint.use().isMixed() || paint.use() == Use.VARNISH
                        ? paint
                        : paint.withHiding(Hiding.Word.OPAQUE))
            .toList());
  }

  private static Swatch target(Random random) {
    return new Swatch.OfLab(
        Lab.ofD65(
            20 + 60 * random.nextDouble(),
            60 * random.nextDouble() - 30,
            60 * random.nextDouble() - 30));
  }

  /** The drops of some recipes for colours at random. */
  private static List<List<Recipe.Drops>> recipes(PaintChoice choice) {
    Random random = new Random(14);
    List<List<Recipe.Drops>> all = new ArrayList<>();
    for (int i = 0; i < TARGETS; i++) {
      MatchRequest request = MatchRequest.of(target(random)).withMostDrops(8).withChoice(choice);
      MATCHER.match(request).recipes().forEach(ranked -> all.add(ranked.recipe().drops()));
    }
    return all;
  }

  /** What is added at each rung of some ladders between colours at random. */
  private static List<List<Recipe.Drops>> ladders(PaintChoice choice) {
    Random random = new Random(15);
    LadderPlanner planner = LadderPlanner.of(OPTICS, TristimulusWeights.D65);
    List<List<Recipe.Drops>> all = new ArrayList<>();
    for (int i = 0; i < Math.max(1, TARGETS / 8); i++) {
      Swatch first = target(random);
      Swatch last = target(random);
      while (Math.abs(first.lab().l() - last.lab().l()) < 12) {
        last = target(random);
      }
      Shade from = new Shade.OfColour(first);
      Shade to = new Shade.OfColour(last);
      Ladder ladder = planner.plan(LadderRequest.between(from, to, 3).withChoice(choice));
      ladder.rungs().forEach(rung -> all.add(rung.add()));
    }
    return all;
  }

  /** What is added to pots that came out too dark, and the new pots instead. */
  private static List<List<Recipe.Drops>> corrections(String pot, PaintChoice choice) {
    Random random = new Random(16);
    Corrector corrector = Corrector.of(OPTICS, TristimulusWeights.D65).withChoice(choice);
    List<List<Recipe.Drops>> all = new ArrayList<>();
    for (int i = 0; i < Math.max(2, TARGETS / 4); i++) {
      Swatch measured = target(random);
      Correction correction = corrector.correct(Mix.parse(pot, SHELF), measured, 1, target(random));
      all.add(correction.additions().stream().map(Correction.Addition::drops).toList());
      correction.fresh().ifPresent(fresh -> all.add(fresh.recipe().drops()));
    }
    return all;
  }

  private static long ofOtherUse(List<List<Recipe.Drops>> all) {
    return all.stream().flatMap(List::stream).filter(some -> !some.paint().use().isMixed()).count();
  }

  @Test
  void washesFiltersAndVarnishesComeOnlyWhenAskedFor() {
    List<List<Recipe.Drops>> all = recipes(PaintChoice.ALL);
    all.addAll(ladders(PaintChoice.ALL));
    all.addAll(corrections("Dredger grey:6, Red oxide:1", PaintChoice.ALL));
    all.addAll(corrections("Enamel off-white:6", PaintChoice.ALL));

    assertThat(ofOtherUse(all)).isZero();
    System.out.printf("%d recipes, rungs and additions without wash or varnish%n", all.size());
  }

  @Test
  void washesComeWhenAskedFor() {
    assertThat(ofOtherUse(recipes(WITH_WASHES))).isPositive();
    assertThat(ofOtherUse(ladders(WITH_WASHES))).isPositive();
    assertThat(additionsToARustThatIsTooLight()).contains("Rust-brown wash");
  }

  /** No paint of the enamels left could bring it there: only the wash. */
  private static List<String> additionsToARustThatIsTooLight() {
    PaintChoice washes =
        WITH_WASHES.withWithout(Set.of("Spud-leg brown", "Tarpaulin blue", "Engine-room green"));
    return Corrector.of(OPTICS, TristimulusWeights.D65)
        .withChoice(washes)
        .correct(
            Mix.parse("Bucket-chain rust:6", SHELF),
            SHELF.paint("Bucket-chain rust").masstone().orElseThrow(),
            1,
            SHELF.paint("Rust-brown wash").masstone().orElseThrow())
        .additions()
        .stream()
        .map(addition -> addition.drops().paint().name())
        .toList();
  }

  @Test
  void aBottleThatIsNamedIsTakenWhateverItsUse() {
    MatchRequest request =
        MatchRequest.of(new Swatch.OfLab(Lab.ofD65(60, 5, 10)))
            .withOnly(Set.of("Whitewash wash", "Rust-brown wash"));

    assertThat(MATCHER.match(request).recipes()).isNotEmpty();
  }
}
