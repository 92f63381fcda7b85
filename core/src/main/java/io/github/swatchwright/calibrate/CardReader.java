package io.github.swatchwright.calibrate;

import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintedPatch;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Turns cards into what the estimate takes, and refuses those that it can't take. */
final class CardReader {
  /**
   * Relative error that an unknown density adds to an amount by mass: paints lie between 1.1 and
   * 1.5 g/ml (common practice).
   */
  private static final double DENSITY_ERROR = 0.12;

  private final Shelf shelf;
  private final CardErrors errors;

  CardReader(Shelf shelf, CardErrors errors) {
    this.shelf = shelf;
    this.errors = errors;
  }

  List<PaintedPatch> patches(CardSet cards) {
    List<PaintedPatch> patches = new ArrayList<>();
    for (int i = 0; i < cards.cards().size(); i++) {
      try {
        patches.add(patch(cards.cards().get(i)));
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException("card " + (i + 1) + ": " + e.getMessage(), e);
      }
    }
    refuseUndetermined(patches);
    return patches;
  }

  private PaintedPatch patch(TestCard card) {
    Map<String, Double> volumes = new LinkedHashMap<>();
    Set<Medium> media = new HashSet<>();
    for (TestCard.Part part : card.parts()) {
      Paint paint = shelf.paint(part.paint());
      paint
          .effect()
          .ifPresent(
              effect -> {
                throw new IllegalArgumentException(
                    "'"
                        + paint.name()
                        + "' is "
                        + effect.word()
                        + ", which the model doesn't hold for");
              });
      if (volumes.put(paint.name(), part.amount()) != null) {
        throw new IllegalArgumentException("'" + paint.name() + "' is named twice");
      }
      media.add(paint.medium());
    }
    if (media.size() > 1) {
      throw new IllegalArgumentException("the parts are of more than one medium");
    }
    if (card.over().isPresent() && card.coats().isEmpty()) {
      throw new IllegalArgumentException("'over' is stated without 'coats', must have both");
    }
    double amount =
        card.by() == PartsBy.MASS ? Math.hypot(errors.amount(), DENSITY_ERROR) : errors.amount();
    return new PaintedPatch(
        volumes,
        amount,
        card.measured(),
        errors.colour().orElse(card.measured().usualError()),
        card.over(),
        card.coats());
  }

  /** Refuses fewer cards than paints that only they could tell. */
  private void refuseUndetermined(List<PaintedPatch> patches) {
    Set<String> known = new HashSet<>();
    for (Paint paint : shelf.paints()) {
      if (paint.whyNotComputable().isEmpty()) {
        known.add(paint.name());
      }
    }
    List<PaintedPatch> open = new ArrayList<>(patches);
    boolean learnt = true;
    while (learnt) {
      learnt = open.removeIf(patch -> unknown(patch, known).size() <= 1 && learn(patch, known));
    }
    Set<String> unknown = new TreeSet<>();
    open.forEach(patch -> unknown.addAll(unknown(patch, known)));
    if (open.size() < unknown.size()) {
      throw new IllegalArgumentException(
          open.size()
              + (open.size() == 1 ? " card can't" : " cards can't")
              + " tell "
              + String.join(" and ", unknown.stream().map(name -> "'" + name + "'").toList())
              + " apart: give a masstone, or more cards");
    }
  }

  private static boolean learn(PaintedPatch patch, Set<String> known) {
    known.addAll(patch.volumes().keySet());
    return true;
  }

  private static Set<String> unknown(PaintedPatch patch, Set<String> known) {
    Set<String> unknown = new TreeSet<>(patch.volumes().keySet());
    unknown.removeAll(known);
    return unknown;
  }
}
