package io.github.swatchwright.json;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.PotRule;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;

/** Reads the rungs of a ladder as {@link LadderJson} writes them. */
final class RungReader {
  /** More paints than any ladder's pot holds. */
  private static final int MOST_PAINTS = 64;

  private static final String[] LADDER = {
    "light",
    "separate",
    "use",
    "evenStep",
    "unevenness",
    "allDrops",
    "letDown",
    "from",
    "to",
    "rungs",
    "baseShare",
    "base",
    "look",
    "wantedLook",
    "lookDeltaE00",
    "warnings"
  };
  private static final String[] RUNG = {
    "keep",
    "add",
    "addLetDown",
    "drops",
    "coats",
    "thinner",
    "predicted",
    "interval",
    "thinnedWith",
    "dries",
    "cautions",
    "step",
    "coverage",
    "visibleShare",
    "oneDrop",
    "potMillilitres",
    "setAside",
    "millilitres"
  };

  private RungReader() {}

  /** The rungs of a ladder that was read. */
  static List<ReadRung> rungs(JsonElement root, Shelf shelf) {
    JsonFields fields = root.fields(LADDER);
    JsonElement light = fields.required("light");
    WhitePoint white =
        TristimulusWeights.of(light.make(() -> Illuminant.parse(light.text())), Observer.CIE_1931)
            .whitePoint();
    return fields.required("rungs").items(1, LadderRequest.MOST_RUNGS).stream()
        .map(element -> rung(element, shelf, white))
        .toList();
  }

  private static ReadRung rung(JsonElement element, Shelf shelf, WhitePoint white) {
    JsonFields fields = element.fields(RUNG);
    List<Recipe.Drops> add =
        fields.required("add").items(0, MOST_PAINTS).stream()
            .map(some -> added(some, shelf))
            .toList();
    JsonElement drops = fields.required("drops");
    List<Mix.Part> parts =
        drops.items(1, MOST_PAINTS).stream().map(some -> part(some, shelf)).toList();
    List<JsonElement> lab =
        fields
            .required("predicted")
            .fields("lab", "srgb", "displayable")
            .required("lab")
            .items(3, 3);
    return new ReadRung(
        count(fields, "keep"),
        add,
        count(fields, "addLetDown"),
        drops.make(() -> new Mix(parts)),
        new Lab(lab.get(0).number(), lab.get(1).number(), lab.get(2).number(), white),
        fields.required("coverage").number(0, 1),
        fields.required("visibleShare").number(0, 1));
  }

  private static int count(JsonFields fields, String name) {
    return fields
        .optional(name)
        .map(number -> number.wholeNumber(0, PotRule.LARGEST_POT))
        .orElse(0);
  }

  private static Recipe.Drops added(JsonElement element, Shelf shelf) {
    JsonFields fields = element.fields("paint", "drops");
    Paint paint = paint(fields, shelf);
    JsonElement count = fields.required("drops");
    int drops = count.wholeNumber(1, Integer.MAX_VALUE);
    return count.make(() -> new Recipe.Drops(paint, drops));
  }

  private static Mix.Part part(JsonElement element, Shelf shelf) {
    JsonFields fields = element.fields("paint", "drops");
    Paint paint = paint(fields, shelf);
    JsonElement drops = fields.required("drops");
    return drops.make(() -> new Mix.Part(paint, drops.number()));
  }

  private static Paint paint(JsonFields fields, Shelf shelf) {
    JsonElement paint = fields.required("paint");
    return paint.make(() -> shelf.paint(paint.text()));
  }
}
