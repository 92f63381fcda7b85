package io.github.swatchwright.ladder;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why there is no ladder, and what would do instead: each remedy is named only after it worked. */
final class LadderRefusal {
  private final LadderRequest request;
  private final ShelfOptics optics;
  private final TristimulusWeights light;
  private final Control control;

  LadderRefusal(
      LadderRequest request, ShelfOptics optics, TristimulusWeights light, Control control) {
    this.control = control;
    this.request = request;
    this.optics = optics;
    this.light = light;
  }

  /**
   * The refusal.
   *
   * @param failed the planning that found nothing
   */
  NoLadderException of(LadderPlanning failed) {
    String way = failed.isRising() ? "lighter" : "darker";
    if (!failed.isMonotone()) {
      return new NoLadderException(
          NoLadderException.Reason.NOT_STEADY,
          List.of(),
          "mixes between these ends don't get steadily "
              + way
              + "; choose other ends, or leave out the paint that is in the way");
    }
    Map<String, LadderRequest> remedies = remedies();
    return new NoLadderException(
        NoLadderException.Reason.STEPS_TOO_SMALL,
        List.copyOf(remedies.values()),
        "no "
            + (request.rungs() - request.washes().size())
            + " rungs between these ends get steadily "
            + way
            + " in whole drops, by steps that are told apart; "
            + (remedies.isEmpty()
                ? "choose ends that lie further apart"
                : "these would do: " + String.join(", or ", remedies.keySet())));
  }

  /** What would do instead, in words. */
  private Map<String, LadderRequest> remedies() {
    Map<String, LadderRequest> remedies = new LinkedHashMap<>();
    PotRule pot = request.pot();
    int larger = 2 * pot.mostDrops();
    if (larger <= PotRule.LARGEST_POT) {
      LadderRequest inLarger = request.withPot(pot.withMostDrops(larger));
      putIfItWorks(remedies, "a pot of up to " + larger + " drops", inLarger);
    }
    if (!pot.separate()) {
      LadderRequest apart = request.withPot(pot.withSeparate());
      putIfItWorks(remedies, "a separate recipe for each rung", apart);
    }
    for (int rungs = request.rungs() - 1; rungs - request.washes().size() >= 2; rungs--) {
      if (request.canHaveRungs()
          && putIfItWorks(remedies, rungs + " rungs", request.withRungs(rungs))) {
        break;
      }
    }
    return remedies;
  }

  private boolean putIfItWorks(
      Map<String, LadderRequest> remedies, String words, LadderRequest other) {
    boolean works = works(other);
    if (works) {
      remedies.put(words, other);
    }
    return works;
  }

  private boolean works(LadderRequest other) {
    try {
      return new LadderPlanning(other, optics, light, control).cheapest().isPresent();
    } catch (IllegalArgumentException refused) {
      return false;
    }
  }
}
