package io.github.swatchwright.calibrate;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** Turns cards into what the estimate takes, and refuses those that it can't take. */
final class CardReader {
  /**
   * The density of a paint, g/ml, and its relative error: the middle of 1.1 to 1.5 (common
   * practice).
   */
  private static final double USUAL_DENSITY = 1.3;

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
    Map<String, PaintedPatch.Amount> amounts = new LinkedHashMap<>();
    Set<Medium> media = new HashSet<>();
    for (TestCard.Part part : card.parts()) {
      Paint paint = shelf.paint(part.paint());
      paint
          .effect()
          .ifPresent(
              effect -> {
                throw new IllegalArgumentException(
                    Printable.quoted(paint.name())
                        + " is "
                        + effect.word()
                        + ", which the model doesn't hold for");
              });
      if (amounts.put(paint.name(), amount(card, part, paint)) != null) {
        throw new IllegalArgumentException(Printable.quoted(paint.name()) + " is named twice");
      }
      media.add(paint.medium());
    }
    if (media.size() > 1) {
      throw new IllegalArgumentException("the parts are of more than one medium");
    }
    if (card.over().isPresent() && card.coats().isEmpty()) {
      throw new IllegalArgumentException("'over' is stated without 'coats', must have both");
    }
    return new PaintedPatch(
        amounts,
        card.measured(),
        card.measuredError().orElse(errors.colour().orElse(card.measured().usualError())),
        card.over(),
        card.coats(),
        card.painted(),
        errors.model());
  }

  private PaintedPatch.Amount amount(TestCard card, TestCard.Part part, Paint paint) {
    if (card.by() == PartsBy.VOLUME) {
      return new PaintedPatch.Amount(part.amount(), errors.amount(), part.batch());
    }
    OptionalDouble density = paint.bottle().densityGramsPerMillilitre();
    return new PaintedPatch.Amount(
        part.amount() / density.orElse(USUAL_DENSITY),
        density.isPresent() ? errors.amount() : Math.hypot(errors.amount(), DENSITY_ERROR),
        part.batch());
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
              + String.join(" and ", unknown.stream().map(Printable::quoted).toList())
              + " apart: give a masstone, or more cards");
    }
  }

  private static boolean learn(PaintedPatch patch, Set<String> known) {
    known.addAll(patch.amounts().keySet());
    return true;
  }

  private static Set<String> unknown(PaintedPatch patch, Set<String> known) {
    Set<String> unknown = new TreeSet<>(patch.amounts().keySet());
    unknown.removeAll(known);
    return unknown;
  }
}
