package io.github.swatchwright.cookbook;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Answers requests of a web page with JSON, from any number of threads at once. */
final class WebAnswer {
  private final Map<String, Matcher> matchers = new ConcurrentHashMap<>();

  record Answer(int status, String body) {}

  /** A shelf is estimated once; its matcher remembers what it has learned of it. */
  void open(String name, String json) {
    Shelf shelf = ShelfJson.parse(json, name);
    matchers.put(name, Matcher.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65));
  }

  Answer answer(String shelf, String colour) {
    Matcher matcher = matchers.get(shelf);
    if (matcher == null) {
      return new Answer(404, "no such shelf");
    }
    try {
      MatchRequest request = MatchRequest.of(new Swatch.OfSrgb(Srgb.parse(colour)));
      Control atMost = Control.PLAIN.withLongest(Duration.ofSeconds(2));
      return new Answer(200, JsonResult.of(matcher.match(request, atMost)).toText());
    } catch (IllegalArgumentException badInput) {
      return new Answer(400, String.valueOf(badInput.getMessage()));
    }
  }
}
