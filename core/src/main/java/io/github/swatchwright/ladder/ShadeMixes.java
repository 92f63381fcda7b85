package io.github.swatchwright.ladder;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Mixes for the shades of a ladder, all of one medium, as one pot has to hold them all. The two
 * ends are chosen together: near to their colours, and with few paints in all. What lies between
 * them is mixed of the ends' paints.
 */
final class ShadeMixes {
  private static final int ALTERNATIVES = 8;
  private static final int MOST_DROPS = 12;
  private static final int MOST_PAINTS = 3;

  /** The number of ways to mix the ends that are planned. */
  private static final int WAYS = 4;

  /** The number of further ways that go by another paint. */
  private static final int DETOURS = 2;

  /** Another bottle on the table is worth it when it brings an end nearer by that ΔE00. */
  private static final double WORTH_OF_A_PAINT = 0.6;

  private final ShelfOptics optics;
  private final Matcher matcher;
  private final MixPredictor predictor;
  private final TristimulusWeights light;
  private final PaintChoice choice;

  ShadeMixes(ShelfOptics optics, TristimulusWeights light, PaintChoice choice) {
    this.optics = optics;
    this.matcher = Matcher.of(optics, light);
    this.light = light;
    this.predictor = MixPredictor.of(optics, light);
    this.choice = choice;
  }

  /**
   * A mix that is known or might be chosen.
   *
   * @param mix the mix
   * @param expected ΔE00 to be expected from the wanted colour; 0 for a mix that was stated
   */
  private record Option(Mix mix, double expected) {
    Set<Paint> paints() {
      return mix.parts().stream().map(Mix.Part::paint).collect(Collectors.toSet());
    }
  }

  /**
   * Both ends.
   *
   * @param from the first
   * @param to the last
   * @param cost of choosing them
   */
  private record Ends(Option from, Option to, double cost) {
    Set<Paint> paints() {
      Set<Paint> paints = new HashSet<>(from.paints());
      paints.addAll(to.paints());
      return paints;
    }
  }

  /**
   * Mixes for all shades.
   *
   * @param mixes one for each shade, in their order
   */
  record Mixes(List<Mix> mixes) {}

  /**
   * Several ways to mix the shades, the most hopeful first. Between two colours, some go by a paint
   * that keeps the shades between of one family, as from orange by way of brown to black.
   */
  List<Mixes> of(List<Shade> shades) {
    Shade first = shades.get(0);
    Shade last = shades.get(shades.size() - 1);
    List<Ends> ranked =
        media(shades).stream()
            .flatMap(medium -> ends(first, last, medium).stream())
            .sorted(Comparator.comparingDouble(Ends::cost))
            .toList();
    Set<Set<Paint>> known = new HashSet<>();
    List<Ends> chosen =
        ranked.stream().filter(ends -> known.add(ends.paints())).limit(WAYS).toList();
    List<Mixes> ways = new ArrayList<>();
    chosen.forEach(ends -> ways.add(new Mixes(along(shades, ends))));
    if (areTwoColours(shades)) {
      ShadeBetween between = new ShadeBetween(predictor, optics, choice);
      chosen.stream()
          .limit(DETOURS)
          .forEach(
              ends ->
                  between
                      .of(ends.from.mix, colour(first), ends.to.mix, colour(last))
                      .ifPresent(
                          via -> ways.add(new Mixes(List.of(ends.from.mix, via, ends.to.mix)))));
    }
    return ways;
  }

  /** Whether the planner may choose all that lies between. */
  static boolean areTwoColours(List<Shade> shades) {
    return shades.size() == 2 && shades.stream().allMatch(Shade.OfColour.class::isInstance);
  }

  private Lab colour(Shade shade) {
    return ((Shade.OfColour) shade).swatch().labUnder(light);
  }

  private List<Mix> along(List<Shade> shades, Ends ends) {
    List<Mix> mixes = new ArrayList<>();
    mixes.add(ends.from.mix);
    Set<String> names =
        new Mix(merged(ends))
            .parts().stream().map(part -> part.paint().name()).collect(Collectors.toSet());
    for (Shade shade : shades.subList(1, shades.size() - 1)) {
      mixes.add(between(shade, names));
    }
    mixes.add(ends.to.mix);
    return mixes;
  }

  /** The paints of both ends, once each. */
  private static List<Mix.Part> merged(Ends ends) {
    Set<Paint> paints = new HashSet<>(ends.from.paints());
    paints.addAll(ends.to.paints());
    return paints.stream().map(paint -> new Mix.Part(paint, 1)).toList();
  }

  private List<Medium> media(List<Shade> shades) {
    Optional<Medium> stated =
        shades.stream()
            .filter(Shade.OfMix.class::isInstance)
            .map(shade -> ((Shade.OfMix) shade).mix().parts().get(0).paint().medium())
            .findFirst()
            .or(choice::medium);
    if (stated.isPresent()) {
      return List.of(stated.get());
    }
    PaintChoice wanted = choice.on(optics.shelf());
    List<Medium> media =
        optics.paints().stream()
            .map(PaintOptics::paint)
            .filter(wanted::admits)
            .map(Paint::medium)
            .distinct()
            .toList();
    if (media.isEmpty()) {
      throw new IllegalArgumentException(
          "no paint is left to choose from on the shelf "
              + Printable.quoted(optics.shelf().name()));
    }
    return media;
  }

  private List<Ends> ends(Shade first, Shade last, Medium medium) {
    List<Ends> pairs = new ArrayList<>();
    List<Option> lasts = options(last, medium);
    for (Option from : options(first, medium)) {
      for (Option to : lasts) {
        Set<Paint> paints = new HashSet<>(from.paints());
        paints.addAll(to.paints());
        double cost = from.expected + to.expected + WORTH_OF_A_PAINT * paints.size();
        pairs.add(new Ends(from, to, cost));
      }
    }
    return pairs;
  }

  private List<Option> options(Shade shade, Medium medium) {
    if (shade instanceof Shade.OfMix stated) {
      return List.of(new Option(stated.mix(), 0));
    }
    Swatch swatch = ((Shade.OfColour) shade).swatch();
    Set<Set<Paint>> known = new HashSet<>();
    return IntStream.rangeClosed(1, MOST_PAINTS)
        .boxed()
        .flatMap(paints -> recipes(swatch, choice, medium, paints).stream())
        .map(ranked -> new Option(ranked.recipe().toMix(), ranked.expectedDeltaE00()))
        .filter(option -> known.add(option.paints()))
        .toList();
  }

  private Mix between(Shade shade, Set<String> names) {
    if (shade instanceof Shade.OfMix stated) {
      return stated.mix();
    }
    Medium medium = optics.of(names.iterator().next()).paint().medium();
    return recipes(
            ((Shade.OfColour) shade).swatch(), PaintChoice.ALL.withOnly(names), medium, MOST_PAINTS)
        .get(0)
        .recipe()
        .toMix();
  }

  private List<RankedRecipe> recipes(Swatch target, PaintChoice from, Medium medium, int paints) {
    return matcher
        .match(
            MatchRequest.of(target)
                .withMostPaints(paints)
                .withMostDrops(MOST_DROPS)
                .withAlternatives(ALTERNATIVES)
                .withChoice(from.withMedium(medium)))
        .recipes();
  }
}
