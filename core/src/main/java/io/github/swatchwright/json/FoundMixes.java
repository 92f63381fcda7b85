package io.github.swatchwright.json;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.plan.StepKind;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The mixes that a result holds: {@code drops}, a list of {@code paint} or {@code pot} and {@code
 * drops}, or {@code mix}, a text, of each of its {@code recipes}, {@code rungs}, {@code
 * predictions} or {@code steps}; or what is in a {@code corrected} pot.
 */
final class FoundMixes {
  private static final Map<String, FoundMix.Kind> LISTS = lists();

  private static final Set<String> CLEAR =
      Arrays.stream(StepKind.values())
          .filter(StepKind::isClear)
          .map(StepKind::word)
          .collect(Collectors.toSet());

  private FoundMixes() {}

  private static Map<String, FoundMix.Kind> lists() {
    Map<String, FoundMix.Kind> lists = new LinkedHashMap<>();
    lists.put("recipes", FoundMix.Kind.RECIPE);
    lists.put("rungs", FoundMix.Kind.RUNG);
    lists.put("predictions", FoundMix.Kind.PREDICTION);
    lists.put("corrected", FoundMix.Kind.CORRECTED_POT);
    lists.put("steps", FoundMix.Kind.STEP);
    return lists;
  }

  static List<FoundMix> of(JsonElement result, Shelf shelf) {
    WhitePoint white = white(result.members().fields().get("light"));
    List<FoundMix> mixes = new ArrayList<>();
    LISTS.forEach(
        (list, kind) -> {
          JsonElement found = result.members().fields().get(list);
          if (found != null) {
            int place = 1;
            for (JsonElement item : found.items(0, Integer.MAX_VALUE)) {
              mix(kind, place++, item, shelf, white).ifPresent(mixes::add);
            }
          }
        });
    return mixes;
  }

  /** The colour that a result was looked for, if it names one. */
  static Optional<Lab> target(JsonElement result) {
    Map<String, JsonElement> fields = result.members().fields();
    return lab(fields.get("target"), white(fields.get("light")));
  }

  private static WhitePoint white(@Nullable JsonElement light) {
    return light == null
        ? WhitePoint.D65
        : TristimulusWeights.of(light.make(() -> Illuminant.parse(light.text())), Observer.CIE_1931)
            .whitePoint();
  }

  /** Empty for what isn't mixed: clear coats, and steps that are left out. */
  private static Optional<FoundMix> mix(
      FoundMix.Kind kind, int place, JsonElement item, Shelf shelf, WhitePoint white) {
    Map<String, JsonElement> fields = item.members().fields();
    JsonElement drops = fields.get("drops");
    JsonElement text = fields.get("mix");
    JsonElement step = fields.get("step");
    boolean clear = kind == FoundMix.Kind.STEP && step != null && CLEAR.contains(step.text());
    if (clear || (drops == null && text == null)) {
      return Optional.empty();
    }
    Mix mix =
        drops == null
            ? Objects.requireNonNull(text).make(() -> Mix.parse(text.text(), shelf))
            : drops(drops, shelf);
    if (mix.parts().get(0).paint().whyNotComputable().isPresent()) {
      return Optional.empty();
    }
    JsonElement number = fields.get("number");
    return Optional.of(
        new FoundMix(
            kind,
            number == null ? place : number.wholeNumber(1, Integer.MAX_VALUE),
            mix,
            lab(fields.get("predicted"), white),
            thinner(fields)));
  }

  /** Of a coat, or of the coats of a plan's step. */
  private static double thinner(Map<String, JsonElement> fields) {
    JsonElement thinner = fields.get("thinner");
    JsonElement coats = fields.get("coats");
    if (thinner != null) {
      return thinner.number(0, Coat.MOST_THINNER);
    }
    return coats != null && coats.content() instanceof JsonContent.Items list
        ? list.items().stream()
            .mapToDouble(coat -> thinner(coat.members().fields()))
            .findFirst()
            .orElse(0)
        : 0;
  }

  private static Mix drops(JsonElement drops, Shelf shelf) {
    Map<Paint, Double> sums = new LinkedHashMap<>();
    drops.items(1, Integer.MAX_VALUE).forEach(part -> add(sums, part, shelf));
    List<Mix.Part> parts = new ArrayList<>();
    sums.forEach((paint, sum) -> parts.add(drops.make(() -> new Mix.Part(paint, sum))));
    return drops.make(() -> new Mix(parts));
  }

  private static Optional<Lab> lab(@Nullable JsonElement predicted, WhitePoint white) {
    if (predicted == null) {
      return Optional.empty();
    }
    JsonElement lab = predicted.members().fields().get("lab");
    if (lab == null) {
      return Optional.empty();
    }
    List<JsonElement> numbers = lab.items(3, 3);
    return Optional.of(
        new Lab(numbers.get(0).number(), numbers.get(1).number(), numbers.get(2).number(), white));
  }

  /** Drops of a pot stand for what is in them. */
  private static void add(Map<Paint, Double> sums, JsonElement element, Shelf shelf) {
    Map<String, JsonElement> fields = element.members().fields();
    JsonElement count = fields.get("drops");
    JsonElement paint = fields.get("paint");
    JsonElement pot = fields.get("pot");
    if (count == null || (paint == null) == (pot == null)) {
      throw element.refuse("must have the fields drops and either paint or pot");
    }
    if (paint != null) {
      sums.merge(paint.make(() -> shelf.paint(paint.text())), count.number(), Double::sum);
    } else if (pot != null) {
      Pot contents = pot.make(() -> new Pot(Mix.parse(pot.text(), shelf)));
      for (Mix.Part part : contents.contents().parts()) {
        sums.merge(part.paint(), part.drops() * count.number() / contents.drops(), Double::sum);
      }
    }
  }
}
