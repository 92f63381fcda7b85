package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Paint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Counts the paint and thinner that the remaining steps take. For one use. */
final class NeedsCount {
  private final ClearCoats clear;
  private final Map<String, Paint> paints = new LinkedHashMap<>();
  private final Map<String, Double> drops = new LinkedHashMap<>();
  private final Map<String, Double> thinners = new LinkedHashMap<>();

  NeedsCount(ClearCoats clear) {
    this.clear = clear;
  }

  Needs of(List<PlanStep> steps) {
    for (PlanStep step : steps) {
      if (!step.done()) {
        step.work().pot().ifPresent(this::add);
        step.work().ladder().ifPresent(this::add);
        double thinner = step.work().amount().thinnerMillilitres();
        if (thinner > 0) {
          thinners.merge(Thinner.of(step.top().orElseThrow().mix()), thinner, Double::sum);
        }
      }
    }
    List<Needs.OfPaint> all = new ArrayList<>();
    drops.forEach(
        (name, count) -> {
          Paint paint = Objects.requireNonNull(paints.get(name));
          all.add(
              new Needs.OfPaint(
                  name,
                  count * paint.dropMillilitres(),
                  (long) Math.ceil(count - 1e-9),
                  paint.bottle().leftMillilitres(),
                  clear.isOnShelf(paint)));
        });
    return new Needs(all, thinners);
  }

  private void add(Mix mix) {
    mix.parts().forEach(part -> add(part.paint(), part.drops()));
  }

  private void add(Ladder ladder) {
    ladder.letDown().ifPresent(letDown -> letDown.drops().forEach(this::add));
    ladder.rungs().forEach(rung -> rung.add().forEach(this::add));
  }

  private void add(Recipe.Drops some) {
    add(some.paint(), some.count());
  }

  private void add(Paint paint, double count) {
    paints.putIfAbsent(paint.name(), paint);
    drops.merge(paint.name(), count, Double::sum);
  }
}
