package io.github.swatchwright.match;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.match.LeftOutPaint.Reason;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The paints of a shelf that a request allows in a recipe, and why others are left out.
 *
 * @param paints the paints
 * @param leftOut the paints that can't be used, though nobody asked to leave them out
 */
record Ingredients(List<PaintOptics> paints, List<LeftOutPaint> leftOut) {

  static Ingredients of(ShelfOptics optics, MatchRequest request) {
    Shelf shelf = optics.shelf();
    PaintChoice wanted = request.choice().on(shelf);
    List<LeftOutPaint> leftOut = new ArrayList<>();
    shelf.paints().stream()
        .filter(wanted::admits)
        .forEach(
            paint ->
                paint
                    .whyNotComputable()
                    .map(why -> LeftOutPaint.of(Reason.NOT_COMPUTABLE, paint.name(), why))
                    .ifPresent(leftOut::add));
    List<PaintOptics> paints = new ArrayList<>();
    for (PaintOptics each : optics.paints()) {
      Paint paint = each.paint();
      boolean asked = wanted.admits(paint);
      if (asked && isTarget(paint, request) && !wanted.only().contains(paint.name())) {
        leftOut.add(LeftOutPaint.of(Reason.IS_TARGET, paint.name(), "is what is to be matched"));
      } else if (asked && paint.dropsLeft() < 1) {
        leftOut.add(LeftOutPaint.of(Reason.USED_UP, paint.name(), "is used up"));
      } else if (asked) {
        paints.add(each);
      }
    }
    if (paints.isEmpty() && request.pots().isEmpty()) {
      throw new IllegalArgumentException(
          "no paint is left to choose from on the shelf " + Printable.quoted(shelf.name()));
    }
    wanted.medium().ifPresent(medium -> request.pots().forEach(pot -> check(pot, medium)));
    return new Ingredients(List.copyOf(paints), List.copyOf(leftOut));
  }

  private static boolean isTarget(Paint paint, MatchRequest request) {
    return request.insteadOf().map(one -> one.paint().name().equals(paint.name())).orElse(false);
  }

  private static void check(Pot pot, Medium medium) {
    if (pot.medium() != medium) {
      throw new IllegalArgumentException(
          "the " + pot.name() + " is " + pot.medium().word() + ", must be " + medium.word());
    }
  }

  /** The media of the paints and the pots; no recipe goes beyond one. */
  Set<Medium> media(List<Pot> pots) {
    return Stream.concat(
            paints.stream().map(each -> each.paint().medium()), pots.stream().map(Pot::medium))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The paints of one medium. */
  List<PaintOptics> of(Medium medium) {
    return paints.stream().filter(each -> each.paint().medium() == medium).toList();
  }
}
