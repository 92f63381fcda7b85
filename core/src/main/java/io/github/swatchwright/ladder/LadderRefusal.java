package io.github.swatchwright.ladder;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;

/** Why there is no ladder, and what would do instead: each remedy is named only after it worked. */
final class LadderRefusal {
  private final LadderRequest request;
  private final ShelfOptics optics;
  private final TristimulusWeights light;

  LadderRefusal(LadderRequest request, ShelfOptics optics, TristimulusWeights light) {
    this.request = request;
    this.optics = optics;
    this.light = light;
  }

  /**
   * The message.
   *
   * @param failed the planning that found nothing
   */
  String text(LadderPlanning failed) {
    String way = failed.isRising() ? "lighter" : "darker";
    if (!failed.isMonotone()) {
      return "mixes between these ends don't get steadily "
          + way
          + "; choose other ends, or leave out the paint that is in the way";
    }
    List<String> remedies = remedies();
    return "no "
        + (request.rungs() - request.washes().size())
        + " rungs between these ends get steadily "
        + way
        + " in whole drops, by steps that are told apart; "
        + (remedies.isEmpty()
            ? "choose ends that lie further apart"
            : "these would do: " + String.join(", or ", remedies));
  }

  private List<String> remedies() {
    List<String> remedies = new ArrayList<>();
    PotRule pot = request.pot();
    int larger = 2 * pot.mostDrops();
    if (larger <= PotRule.LARGEST_POT && works(request.withPot(pot.withMostDrops(larger)))) {
      remedies.add("a pot of up to " + larger + " drops");
    }
    if (!pot.separate() && works(request.withPot(pot.withSeparate()))) {
      remedies.add("a separate recipe for each rung");
    }
    for (int rungs = request.rungs() - 1; rungs - request.washes().size() >= 2; rungs--) {
      if (request.canHaveRungs() && works(request.withRungs(rungs))) {
        remedies.add(rungs + " rungs");
        break;
      }
    }
    return remedies;
  }

  private boolean works(LadderRequest other) {
    try {
      return new LadderPlanning(other, optics, light).cheapest().isPresent();
    } catch (IllegalArgumentException refused) {
      return false;
    }
  }
}
