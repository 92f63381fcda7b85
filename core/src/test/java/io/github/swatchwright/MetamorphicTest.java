package io.github.swatchwright;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.Corrector;
import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.CoatStep;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.SearchControl;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Questions that must have the same answer, or a better one, when they are asked in another way. No
 * outside reference is needed for that, and errors that agree with themselves are found. A thousand
 * seeded cases each.
 */
@Tag("statistics")
class MetamorphicTest {
  private static final int SHELVES = 10;
  private static final int CASES = 100;

  /** Sums of matrices in another order differ by rounding; ΔE00. */
  private static final double ROUNDING = 1e-6;

  /** A shelf of invented paints, and what is drawn at random about it. */
  private static final class Drawn {
    private final Random random;
    private final Shelf shelf;
    private final ShelfOptics optics;
    private final MixPredictor predictor;

    private Drawn(long seed) {
      random = new Random(seed);
      List<Paint> paints = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        paints.add(Paint.of("Paint " + i, Medium.ACRYLIC, new Swatch.OfLab(colour())));
      }
      shelf = Shelf.of("invented", paints);
      optics = ShelfOptics.estimate(shelf);
      predictor = predictor(shelf);
    }

    /** A colour that paint can have and a display shows. */
    private Lab colour() {
      while (true) {
        Lab lab =
            Lab.ofD65(
                15 + 75 * random.nextDouble(),
                -50 + 100 * random.nextDouble(),
                -50 + 100 * random.nextDouble());
        if (lab.toSrgb().isDisplayable()) {
          return lab;
        }
      }
    }

    private static MixPredictor predictor(Shelf shelf) {
      return MixPredictor.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
    }

    /** Paints by their place, with drops, as {@code Name:drops}. */
    private String mix(double scale) {
      List<Integer> places = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5));
      Collections.shuffle(places, random);
      List<String> parts = new ArrayList<>();
      for (int place : places.subList(0, 1 + random.nextInt(3))) {
        parts.add("Paint " + place + ":" + scale * (1 + random.nextInt(8)));
      }
      return String.join(", ", parts);
    }

    private Lab predict(String mix) {
      return predictor.predict(Mix.parse(mix, shelf)).lab();
    }
  }

  private interface Case {
    void check(Drawn drawn);
  }

  private static void everyShelf(Case one) {
    for (int seed = 1; seed <= SHELVES; seed++) {
      one.check(new Drawn(seed));
    }
  }

  private static void assertSame(Lab one, Lab other, double tolerance, String what) {
    assertThat(Ciede2000.deltaE(one, other)).as(what).isLessThanOrEqualTo(tolerance);
  }

  @Test
  void theOrderOfTheShelfDoesNotMatter() {
    everyShelf(
        drawn -> {
          List<Paint> turned = new ArrayList<>(drawn.shelf.paints());
          Collections.shuffle(turned, drawn.random);
          Shelf other = Shelf.of("turned", turned);
          MixPredictor predictor = Drawn.predictor(other);
          for (int i = 0; i < CASES; i++) {
            String mix = drawn.mix(1);
            assertSame(
                drawn.predict(mix), predictor.predict(Mix.parse(mix, other)).lab(), ROUNDING, mix);
          }
        });
  }

  @Test
  void namesDoNotMatter() {
    everyShelf(
        drawn -> {
          List<Paint> renamed = new ArrayList<>();
          for (Paint paint : drawn.shelf.paints()) {
            String name = paint.name().replace("Paint ", "Tin ");
            renamed.add(Paint.of(name, paint.medium(), paint.masstone().orElseThrow()));
          }
          Shelf other = Shelf.of("renamed", renamed);
          MixPredictor predictor = Drawn.predictor(other);
          for (int i = 0; i < CASES; i++) {
            String mix = drawn.mix(1);
            Mix same = Mix.parse(mix.replace("Paint ", "Tin "), other);
            assertThat(predictor.predict(same).lab()).as(mix).isEqualTo(drawn.predict(mix));
          }
        });
  }

  @Test
  void theSizeOfAPotDoesNotMatter() {
    everyShelf(
        drawn -> {
          for (int i = 0; i < CASES; i++) {
            String mix = drawn.mix(1);
            Mix one = Mix.parse(mix, drawn.shelf);
            Mix many =
                new Mix(
                    one.parts().stream()
                        .map(part -> new Mix.Part(part.paint(), 7.5 * part.drops()))
                        .toList());
            assertSame(drawn.predict(mix), drawn.predictor.predict(many).lab(), ROUNDING, mix);
          }
        });
  }

  @Test
  void morePaintsInARecipeAreNeverWorse() {
    everyShelf(
        drawn -> {
          Matcher matcher = Matcher.of(drawn.optics, TristimulusWeights.D65);
          for (int i = 0; i < CASES; i++) {
            MatchRequest request =
                MatchRequest.of(new Swatch.OfLab(drawn.colour())).withMostDrops(5);
            double earlier = Double.MAX_VALUE;
            for (int paints = 1; paints <= 3; paints++) {
              double nearest =
                  matcher.match(request.withMostPaints(paints)).reach().nearestDeltaE00();
              assertThat(nearest).as("%d paints", paints).isLessThanOrEqualTo(earlier);
              earlier = nearest;
            }
          }
        });
  }

  @Test
  void aRecipeIsPredictedAsItWasFound() {
    everyShelf(
        drawn -> {
          Matcher matcher = Matcher.of(drawn.optics, TristimulusWeights.D65);
          for (int i = 0; i < CASES; i++) {
            MatchRequest request =
                MatchRequest.of(new Swatch.OfLab(drawn.colour())).withMostDrops(5);
            RankedRecipe best = matcher.match(request).recipes().get(0);
            assertThat(drawn.predictor.predict(best.recipe()).lab())
                .isEqualTo(best.prediction().lab());
          }
        });
  }

  @Test
  void threadsDoNotMatter() {
    everyShelf(
        drawn -> {
          Matcher matcher = Matcher.of(drawn.optics, TristimulusWeights.D65);
          for (int i = 0; i < CASES; i++) {
            MatchRequest request =
                MatchRequest.of(new Swatch.OfLab(drawn.colour())).withMostDrops(5);
            MatchResult one = matcher.match(request);
            MatchResult sixteen = matcher.match(request, SearchControl.PLAIN.withThreads(16));
            assertThat(sixteen.recipes()).isEqualTo(one.recipes());
          }
        });
  }

  /** A pot whose measured colour is the wanted one needs nothing. */
  @Test
  void aPotThatIsRightNeedsNothing() {
    everyShelf(
        drawn -> {
          Corrector corrector = Corrector.of(drawn.optics, TristimulusWeights.D65);
          for (int i = 0; i < CASES; i++) {
            Mix pot = Mix.parse(drawn.mix(1), drawn.shelf);
            Swatch colour = new Swatch.OfLab(drawn.predictor.predict(pot).lab());
            Correction correction = corrector.correct(pot, colour, 0.5, colour);
            assertThat(correction.drops()).as(pot.toText()).isZero();
          }
        });
  }

  @Test
  void manyCoatsAreTheMasstone() {
    everyShelf(
        drawn -> {
          CoatPredictor coats = CoatPredictor.of(drawn.optics, TristimulusWeights.D65);
          for (int i = 0; i < CASES; i++) {
            String paint = "Paint " + drawn.random.nextInt(6);
            Base base = new Base.OfSwatch(new Swatch.OfLab(drawn.colour()), 0.1);
            List<CoatStep> steps = coats.predict(base, Coats.parse(paint + ":500", drawn.shelf));
            assertSame(
                drawn.predict(paint),
                steps.get(steps.size() - 1).prediction().lab(),
                0.01, // The film's last trace of its base fades with its thickness.
                paint);
          }
        });
  }

  @Test
  void whatIsWrittenPredictsTheSame() {
    everyShelf(
        drawn -> {
          Shelf read = ShelfJson.parse(ShelfJson.toText(drawn.shelf), "written");
          assertThat(read).isEqualTo(drawn.shelf);
          MixPredictor predictor = Drawn.predictor(read);
          for (int i = 0; i < CASES; i++) {
            String mix = drawn.mix(1);
            assertThat(predictor.predict(Mix.parse(mix, read)).lab())
                .as(mix)
                .isEqualTo(drawn.predict(mix));
          }
        });
  }
}
