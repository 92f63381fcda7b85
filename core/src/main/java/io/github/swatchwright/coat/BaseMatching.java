package io.github.swatchwright.coat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.match.RankedRecipe;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Matches paint to a base and looks at each recipe under the coats. The base's colour was found for
 * the smoothest reflectance; where that of the nearest recipe ends elsewhere, the aim is moved by
 * the difference and paint is matched once more.
 */
final class BaseMatching {
  private static final int RECIPES = 5;

  /** More than are shown, since some end elsewhere than their own colour tells. */
  private static final int MATCHED = 10;

  /** From this difference on it is worth matching again, ΔE00. */
  private static final double WORTH_AIMING_AGAIN = 0.2;

  private static final Comparator<BaseRecipe> NEAREST_FIRST =
      Comparator.comparingInt(BaseRecipe::clashes)
          .thenComparingDouble(BaseRecipe::expectedDeltaE00);

  private final BaseFinder finder;
  private final List<Coat> coats;
  private final PaintChoice choice;
  private final Matcher matcher;

  BaseMatching(BaseFinder finder, List<Coat> coats, PaintChoice choice) {
    this.finder = finder;
    this.coats = coats;
    this.choice = choice;
    matcher = Matcher.of(finder.predictor().optics(), finder.predictor().light());
  }

  List<BaseRecipe> recipes(BaseColour colour) {
    Map<Set<String>, BaseRecipe> found = new LinkedHashMap<>();
    add(found, colour.base(), colour.end());
    found.values().stream()
        .min(NEAREST_FIRST)
        .map(nearest -> aim(colour, nearest))
        .filter(aim -> Ciede2000.deltaE(aim, colour.end()) > WORTH_AIMING_AGAIN)
        .ifPresent(aim -> add(found, finder.colour(colour.end(), aim, coats).base(), colour.end()));
    return found.values().stream().sorted(NEAREST_FIRST).limit(RECIPES).toList();
  }

  /** Matches a base and keeps, of each set of paints, the recipe that ends nearest. */
  private void add(Map<Set<String>, BaseRecipe> found, Lab base, Lab end) {
    MatchRequest request =
        MatchRequest.of(new Swatch.OfLab(base)).withAlternatives(MATCHED).withChoice(choice);
    for (RankedRecipe ranked : matcher.matchNearest(request).recipes()) {
      found.merge(
          ranked.recipe().names(),
          under(ranked, end),
          (one, other) -> NEAREST_FIRST.compare(one, other) <= 0 ? one : other);
    }
  }

  private BaseRecipe under(RankedRecipe ranked, Lab end) {
    Base.OfMix base = new Base.OfMix(ranked.recipe().toMix());
    Prediction last = finder.predictor().last(base, coats);
    return new BaseRecipe(
        ranked,
        last,
        Ciede2000.deltaE(last.lab(), end),
        last.spread().expectedDeltaE00(end),
        CoatOrder.check(base, coats));
  }

  /** The end moved by what paint of this recipe ends beside a smooth reflectance of its colour. */
  private Lab aim(BaseColour colour, BaseRecipe nearest) {
    Lab own = TristimulusWeights.D65.xyz(nearest.base().prediction().reflectance()).toLab();
    Lab smooth = finder.under(own, coats);
    Lab real = nearest.end().lab();
    Lab end = colour.end();
    return new Lab(
        Math.max(0, Math.min(100, end.l() - (real.l() - smooth.l()))),
        end.a() - (real.a() - smooth.a()),
        end.b() - (real.b() - smooth.b()),
        end.white());
  }
}
