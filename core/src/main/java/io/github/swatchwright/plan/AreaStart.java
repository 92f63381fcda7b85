package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import java.util.List;
import java.util.Optional;

/**
 * Where the work on an area goes on.
 *
 * @param layers what is there
 * @param last the step that was done last; empty when nothing is done
 */
record AreaStart(Layers layers, Optional<PlanStep> last) {
  static AreaStart of(ProjectArea area) {
    return new AreaStart(Layers.on(area.bare()), Optional.empty());
  }

  /** After the steps that are done, with the colours that were measured. */
  static AreaStart after(
      ProjectArea area, List<PlanStep> done, List<Optional<Done.Measured>> seen) {
    Layers layers = Layers.on(area.bare());
    for (int i = 0; i < done.size(); i++) {
      List<Coat> coats = done.get(i).work().coats();
      layers = layers.with(coats);
      if (seen.get(i).isPresent()) {
        layers = layers.seenAs(SeenColour.of(done.get(i).look().prediction(), seen.get(i).get()));
      } else if (done.get(i).kind() == StepKind.CORRECTION) {
        layers = layers.seenAs(Tools.asBase(done.get(i).look().prediction()));
      }
    }
    return new AreaStart(
        layers, done.isEmpty() ? Optional.empty() : Optional.of(done.get(done.size() - 1)));
  }
}
