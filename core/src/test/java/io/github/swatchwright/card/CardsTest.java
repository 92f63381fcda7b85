package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.Corrector;
import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatAmounts;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.ladder.LadderPlanner;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.ladder.Subject;
import io.github.swatchwright.match.LeftOutPaint;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.mix.Application;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.PixelShares;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.plan.Aim;
import io.github.swatchwright.plan.Planner;
import io.github.swatchwright.plan.Project;
import io.github.swatchwright.plan.ProjectArea;
import io.github.swatchwright.plan.StepKind;
import io.github.swatchwright.plan.Task;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Every card, of paints and photos with hostile names. */
class CardsTest {
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(HostileShelf.shelf());
  private static final Swatch GREEN = new Swatch.OfLab(Lab.ofD65(55, -15, 12));
  private static final Swatch RED = new Swatch.OfLab(Lab.ofD65(45, 30, 20));

  private static final Illuminant LIGHT =
      Illuminant.ofSamples(HostileShelf.ENDLESS, 380, 400, new double[] {1, 1});

  private static Mix mixOfAll() {
    return new Mix(
        HostileShelf.shelf().paints().stream().map(paint -> new Mix.Part(paint, 2.5)).toList());
  }

  private static final MatchResult MANY = match();
  private static final List<Card> CARDS =
      List.of(
          Card.of(MANY),
          correction(),
          prediction(),
          sample(30),
          ladder(),
          coats(),
          plan(),
          Card.of(
              GREEN.lab(), RED.lab(), Ciede2000.STANDARD.compare(GREEN.lab(), RED.lab()), LIGHT));

  /** Of all paints of the hostile shelf, in areas with names as bad as allowed. */
  private static Card plan() {
    List<Task> tasks =
        List.of(
            Task.of(StepKind.BASE, new Aim.OfMix(mixOfAll())),
            Task.of(StepKind.WHITEWASH, new Aim.OfMix(mixOfAll())).withWorn(0.2),
            Task.of(
                StepKind.LADDER,
                new Aim.OfLadder(
                    new Shade.OfColour(GREEN), new Shade.OfColour(RED), 3, Optional.empty())));
    Project project =
        Project.of(
            "</style><script>alert(1)</script>",
            List.of(new ProjectArea("<b>&amp;", 20, ProjectArea.BARE_PLASTIC, tasks)));
    return Card.of(Planner.of(OPTICS, TristimulusWeights.D65).withTestCards(1).plan(project));
  }

  private static MatchResult match() {
    MatchResult found =
        Matcher.of(OPTICS, TristimulusWeights.D65)
            .match(MatchRequest.of(GREEN).withMostDrops(8).withAlternatives(50));
    return new MatchResult(
        found.light(),
        found.target(),
        found.request(),
        found.recipes(),
        found.nearestBottle(),
        found.weighed(),
        found.bestOfAll(),
        found.reach(),
        found.complete(),
        found.provenGap(),
        List.of(
            new LeftOutPaint(
                LeftOutPaint.Reason.USED_UP, HostileShelf.ENDLESS, HostileShelf.ENDLESS)));
  }

  private static Card correction() {
    Correction correction =
        Corrector.of(OPTICS, TristimulusWeights.D65).correct(mixOfAll(), RED, 1, GREEN);
    return Card.of(mixOfAll(), RED, GREEN, correction);
  }

  private static Card prediction() {
    MixPredictor predictor = MixPredictor.of(OPTICS, TristimulusWeights.D65);
    return Card.ofPredictions(
        List.of(new PredictedMix(mixOfAll(), predictor.predict(mixOfAll()))), LIGHT);
  }

  private static Card ladder() {
    LadderRequest request =
        LadderRequest.between(
                new Shade.OfColour(new Swatch.OfLab(Lab.ofD65(80, -10, 5))),
                new Shade.OfColour(new Swatch.OfLab(Lab.ofD65(30, 20, 20))),
                LadderRequest.MOST_RUNGS)
            .withSubject(Subject.RUST);
    return Card.of(LadderPlanner.of(OPTICS, TristimulusWeights.D65).plan(request), 1);
  }

  private static Card coats() {
    Base base = new Base.OfMix(mixOfAll());
    List<Coat> coats = Collections.nCopies(12, new Coat(mixOfAll(), 1.5, 0.5, 0.3));
    CoatPredictor predictor = CoatPredictor.of(OPTICS, TristimulusWeights.D65);
    return Card.of(
        CoatPlan.of(predictor, base, coats)
            .withAmounts(CoatAmounts.of(500, Application.USUAL, coats)),
        1);
  }

  private static Card sample(int regions) {
    PhotoColour colour =
        new PhotoColour(
            ColourSpread.of(
                Lab.ofD65(50, 80, -90), new double[][] {{9, 0, 0}, {0, 4, 0}, {0, 0, 4}}),
            false,
            3,
            new PixelShares(0.5, 0.3, 0.1, 0.05, 0.05, 0.4),
            Optional.empty());
    List<RegionColour> colours = new ArrayList<>();
    for (int i = 0; i < regions; i++) {
      colours.add(new RegionColour(Optional.empty(), new Region(i, 0, 10, 10), colour, 0.5));
    }
    return Card.ofSample(HostileShelf.ENDLESS, HostileShelf.ENDLESS, colours);
  }

  static List<Card> cards() {
    return CARDS;
  }

  /** A page's body and a picture are XML; only the page's head has elements without an end. */
  private static String body(Card card) {
    String page = card.toHtml();
    return page.substring(page.indexOf("<body>"), page.indexOf("</html>"));
  }

  private static Stream<Element> elements(Element root) {
    NodeList all = root.getElementsByTagName("*");
    return Stream.concat(
        Stream.of(root),
        Stream.iterate(0, i -> i < all.getLength(), i -> i + 1).map(i -> (Element) all.item(i)));
  }

  @ParameterizedTest
  @MethodSource("cards")
  void namesAreTextAndNothingElse(Card card) {
    for (String text : List.of(card.toSvg(), body(card))) {
      assertThat(elements(Xml.parse(text)))
          .allSatisfy(
              element -> {
                assertThat(element.getTagName()).isNotIn("script", "b", "a", "image", "link");
                for (int i = 0; i < element.getAttributes().getLength(); i++) {
                  Node attribute = element.getAttributes().item(i);
                  assertThat(attribute.getNodeName()).doesNotStartWith("on").doesNotContain("href");
                }
              });
      assertThat(text).doesNotContainPattern("[\u202A-\u202E\u2066-\u2069\u200B\uFFFF]");
    }
  }

  @ParameterizedTest
  @MethodSource("cards")
  void nothingIsFetchedFromElsewhere(Card card) {
    for (String text : List.of(card.toSvg(), card.toHtml())) {
      assertThat(text.replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
          .doesNotContain("http:", "https:", "url(", "@import", "src=");
    }
  }

  @ParameterizedTest
  @MethodSource("cards")
  void everyPictureIsToldInWords(Card card) {
    for (String text : List.of(card.toSvg(), body(card))) {
      assertThat(elements(Xml.parse(text)).filter(element -> element.hasAttribute("role")))
          .isNotEmpty()
          .allSatisfy(
              element -> {
                if (element.getTagName().equals("svg")) {
                  assertThat(element.getAttribute("role")).isEqualTo("img");
                  assertThat(element.getAttribute("aria-label")).isNotBlank();
                }
              });
    }
  }

  @ParameterizedTest
  @MethodSource("cards")
  void staysSmall(Card card) {
    assertThat(card.toHtml().length()).isLessThan(500_000);
    assertThat(card.toSvg().length()).isLessThan(300_000);
  }

  @ParameterizedTest
  @MethodSource("cards")
  void nothingIsDrawnBesideThePaper(Card card) {
    for (Page page : card.pages()) {
      assertThat(page.shapes())
          .allSatisfy(
              shape -> {
                if (shape instanceof Page.Words words) {
                  assertThat(words.left()).isBetween(9.0, 139.0);
                  assertThat(words.left() + words.most()).isLessThan(139.01);
                  assertThat(words.baseline()).isBetween(9.0, 203.5);
                } else if (shape instanceof Page.Box box) {
                  assertThat(box.left() + box.width()).isLessThan(139.01);
                  assertThat(box.top() + box.height()).isLessThan(201.01);
                } else {
                  Page.Figure figure = (Page.Figure) shape;
                  assertThat(figure.left()).isGreaterThan(8.99);
                  assertThat(figure.left() + figure.width()).isLessThan(139.01);
                  assertThat(figure.top() + figure.height()).isLessThan(201.01);
                }
              });
    }
  }

  @ParameterizedTest
  @MethodSource("cards")
  void warnsOfOtherLamps(Card card) {
    assertThat(Xml.parse(body(card)).getTextContent()).contains("Lamp These colours are for");
  }

  @Test
  void saysWhatIsNotOnTheCard() {
    int recipes = MANY.recipes().size();
    assertThat(recipes).isGreaterThan(MatchCard.MOST_RECIPES);
    assertThat(CARDS.get(0).toHtml())
        .contains("Recipes that are not on this card: " + (recipes - MatchCard.MOST_RECIPES));
    assertThat(sample(30).toHtml()).contains("Colours that are not on this card: 6");
  }

  @Test
  void saysWhatAPhotoDoesNotTell() {
    String text = Xml.parse(body(sample(1))).getTextContent();
    assertThat(text)
        .contains("Lightness unknown", "At least this", "stronger than a screen can show");
  }

  @Test
  void aRecipeHasADotForEachDrop() {
    int drops = MANY.recipes().get(0).recipe().total();
    long dots = Arrays.stream(CARDS.get(0).toHtml().split("class=\"dot\"", -1)).count() - 1;
    assertThat(dots).as("on the screen and on paper").isEqualTo(2L * drops);
  }
}
