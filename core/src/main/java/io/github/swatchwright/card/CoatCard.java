package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Drops;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.card.CardPart.Picture;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatAdvice;
import io.github.swatchwright.coat.CoatOption;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.coat.CoatStep;
import io.github.swatchwright.coat.HidingCoats;
import io.github.swatchwright.coat.OrderNote;
import io.github.swatchwright.coat.ScaleLightening;
import io.github.swatchwright.coat.SeenPatch;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.paint.Medium;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Coats over a base in their order, with waits and cautions, and what to paint next. */
final class CoatCard {
  private static final int MOST_OPTIONS = 4;

  /** More patches than that are hard to tell apart in a strip. */
  private static final int MOST_PATCHES = 6;

  private final CoatPlan plan;
  private final long seed;
  private final List<CardPart> blocks = new ArrayList<>();

  private CoatCard(CoatPlan plan, long seed) {
    this.plan = plan;
    this.seed = seed;
  }

  /**
   * The card.
   *
   * @param plan the coats
   * @param seed where the speckles of its pictures lie
   */
  static Card of(CoatPlan plan, long seed) {
    return new CoatCard(plan, seed).card();
  }

  private Card card() {
    plan.below()
        .ifPresent(below -> blocks.add(BelowSection.of(below, new PaintColour(plan.light()))));
    blocks.add(base());
    for (int i = 0; i < plan.steps().size(); i++) {
      blocks.add(step(i));
    }
    if (isSpeckled()) {
      blocks.add(shares());
    }
    plan.advice().ifPresent(this::advise);
    blocks.add(Sayings.RING);
    blocks.add(Sayings.lamp(plan.light()));
    blocks.addAll(Sayings.notes(plan.closingCautions()));
    int coats = plan.steps().size();
    String title = coats == 0 ? "What to paint next" : coats == 1 ? "One step" : coats + " steps";
    return new Card("Coats", title, blocks);
  }

  /** Whether paints lie beside each other in the end; a filter over all of them is just tinted. */
  private boolean isSpeckled() {
    double[] shares = plan.sharesOnTop();
    return shares[shares.length - 1] < 1
        && plan.steps().stream().anyMatch(step -> step.coat().coverage() < 1);
  }

  private Section base() {
    List<CardPart> inside = new ArrayList<>();
    inside.add(Colours.known(new Named("Base", plan.basePrediction().lab())));
    if (plan.scaleLightening() > 0) {
      inside.add(
          new Note(
              "Scale",
              String.format(
                  Locale.ROOT,
                  "The base is lightened by %.0f %%. %s",
                  100 * plan.scaleLightening(),
                  ScaleLightening.DISPUTED)));
    }
    return new Section("0", "Below", inside);
  }

  private static Colours colours(List<Named> before, String name, Prediction prediction) {
    List<Named> all = new ArrayList<>(before);
    all.add(new Named(name, prediction.lab()));
    return Colours.toDo(all, prediction.spread());
  }

  private Section step(int i) {
    CoatStep step = plan.steps().get(i);
    Prediction before = i == 0 ? plan.basePrediction() : plan.steps().get(i - 1).prediction();
    List<CardPart> inside = new ArrayList<>();
    below(i).ifPresent(lower -> inside.add(Layering.waitAfter(lower)));
    if (i == 0 && plan.base().medium().isEmpty()) {
      inside.add(new Note("Unknown base", "What binds it isn't known: try this on scrap first."));
    }
    for (OrderNote note : plan.orderOf(i + 1)) {
      inside.addAll(Layering.trouble(note.rule()));
    }
    step.coat().doubt().ifPresent(question -> inside.add(new Note("Sure?", question)));
    inside.add(new Drops(List.of(Layering.row(step.coat()))));
    inside.add(colours(List.of(new Named("Before", before.lab())), "After", step.prediction()));
    if (step.patches().size() > 1 && step.coat().coverage() < 1) {
      inside.add(speckle(i, step));
    }
    plan.chippingOf(i + 1).forEach(sentence -> inside.add(new Sentence(Label.sentence(sentence))));
    inside.add(
        new Colours(
            List.of(
                new Named("On a dark pre-highlight", step.overDarkest()),
                new Named("On a light one", step.overLightest())),
            Optional.empty(),
            false));
    inside.add(facts(i, step));
    inside.addAll(Sayings.notes(plan.cautionsOfSteps().get(i)));
    return new Section(Integer.toString(i + 1), "Paint", inside);
  }

  private Optional<Medium> below(int i) {
    return i == 0 ? plan.base().medium() : Optional.of(plan.steps().get(i - 1).coat().medium());
  }

  private Facts facts(int i, CoatStep step) {
    Facts facts =
        Facts.none()
            .and("How sure", Sayings.interval(step.prediction().intervalDeltaE00()))
            .and(
                "Hiding so far",
                String.format(
                    Locale.ROOT,
                    "contrast ratio %.2f (hides from %.2f on)",
                    step.contrastRatio(),
                    HidingPower.HIDES))
            .and("This paint alone", hiding(step));
    return plan.amounts()
        .map(
            amounts ->
                facts.and(
                    "Paint", Volume.words(amounts.each().get(i), Thinner.of(step.coat().mix()))))
        .orElse(facts);
  }

  private static String hiding(CoatStep step) {
    return step.coat().isVarnish()
        ? "clear; it changes how the surface shines"
        : HidingCoats.inWords(step.coatsToHide());
  }

  /** The share of the area on which each paint lies on top, the topmost first. */
  private Section shares() {
    double[] shares = plan.sharesOnTop();
    Map<String, Double> byName = new LinkedHashMap<>();
    for (int i = plan.steps().size(); i > 0; i--) {
      Coat coat = plan.steps().get(i - 1).coat();
      if (!coat.isVarnish()) {
        byName.merge(Layering.name(coat), shares[i], Double::sum);
      }
    }
    Facts facts = Facts.none();
    for (Map.Entry<String, Double> one : byName.entrySet()) {
      facts = facts.and(one.getKey(), percent(one.getValue()));
    }
    return new Section("", "On top", List.of(facts.and("Base", percent(shares[0]))));
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %% of the area", 100 * share);
  }

  /** What is seen close up, patch by patch. */
  private Picture speckle(int i, CoatStep step) {
    List<SeenPatch> patches = step.patches();
    return new Picture(
        Speckle.ofPatches(
            patches.subList(0, Math.min(MOST_PATCHES, patches.size())), landing(i), seed + i),
        String.format(
            Locale.ROOT,
            "Close up: this coat covers %.0f %% of the area.%s",
            100 * step.coat().coverage(),
            patches.size() > MOST_PATCHES ? " Its largest patches alone." : ""));
  }

  /** Chips are where a coat came off; else thin cover is flicked on and more of it sponged. */
  private Landing landing(int i) {
    boolean chipped = !plan.chippingOf(i + 1).isEmpty();
    return chipped ? Landing.CHIPPED : Landing.SPONGED;
  }

  private void advise(CoatAdvice advice) {
    Named wanted = new Named("Wanted", advice.target());
    blocks.add(
        new Section(
            "",
            "What to paint next",
            List.of(
                new Colours(
                    List.of(new Named("Now", advice.now()), wanted), Optional.empty(), false),
                new Sentence(
                    advice.options().isEmpty()
                        ? "No coat of one of these paints brings it nearer."
                        : "One of these:"))));
    advice.options().stream()
        .limit(MOST_OPTIONS)
        .forEach(option -> blocks.add(option(option, advice, wanted)));
  }

  private static Section option(CoatOption option, CoatAdvice advice, Named wanted) {
    List<CardPart> inside = new ArrayList<>();
    option.worst().ifPresent(note -> inside.addAll(Layering.trouble(note.rule())));
    inside.add(new Drops(List.of(Layering.row(option.coat()))));
    inside.add(colours(List.of(wanted), "After", option.prediction()));
    inside.add(
        Facts.none()
            .and("If all goes well", Sayings.difference(option.deltaE00()))
            .and("Expect", Sayings.expected(option.expectedDeltaE00()))
            .and("How sure", Sayings.interval(option.prediction().intervalDeltaE00())));
    if (option.expectedDeltaE00() >= advice.nowDeltaE00()) {
      inside.add(new Note("Doubtful", "To be expected no nearer than to leave it as it is."));
    }
    return new Section("?", "As a " + option.use().word(), inside);
  }
}
