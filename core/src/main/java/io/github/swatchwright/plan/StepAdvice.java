package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.OrderNote;
import io.github.swatchwright.coat.SolventVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The sentences that stand below a step of a plan. */
final class StepAdvice {
  /** Common practice of the trade, without a source. */
  private static final String WIPING =
      "Into lines and recesses; wipe it off the faces with a clean damp brush, downwards.";

  /** A filter that moves a colour further than this, in ΔE00, has become a coat of paint. */
  private static final double STRONG_FILTER = 10;

  private StepAdvice() {}

  /** The sentences about a task of the project. */
  static List<String> of(Wish wish, Painted painted, List<Coat> worn, Layers below) {
    Task task = wish.task();
    List<String> advice = new ArrayList<>();
    wish.moved().ifPresent(advice::add);
    advice.addAll(painted.advice());
    advice.addAll(care(worn, below));
    if (task.kind() == StepKind.WASH && !worn.isEmpty() && worn.get(0).coverage() < 1) {
      advice.add(WIPING);
    }
    if (task.worn() > 0 && !worn.isEmpty()) {
      advice.add(Chips.wearing(worn.get(0).medium(), task.worn()));
    }
    return advice;
  }

  /** Why a clear coat was put in, and what it needs. */
  static List<String> ofClear(String why, Coat coat, Layers below) {
    List<String> advice = new ArrayList<>(List.of(why));
    advice.addAll(care(List.of(coat), below));
    return advice;
  }

  /** Why a varnish is put in between two coats. */
  static String whySealed(OrderNote clash) {
    return "Put in because "
        + clash.upperPaint()
        + " ("
        + clash.rule().upper().word()
        + ") goes over "
        + clash.lowerPaint()
        + " ("
        + clash.rule().lower().word()
        + "): "
        + clash.rule().reason()
        + ".";
  }

  /**
   * A word on a filter that does more than a filter should.
   *
   * @param moved how far it moves the colour, ΔE00
   */
  static Optional<String> strongFilter(StepKind kind, double moved) {
    return kind == StepKind.FILTER && moved > STRONG_FILTER
        ? Optional.of(
            String.format(
                Locale.ROOT,
                "This moves the colour by ΔE00 %.0f; a filter usually stays below %.0f: thin it"
                    + " more, or give it fewer coats.",
                moved,
                STRONG_FILTER))
        : Optional.empty();
  }

  /** What the coats need care for, each once. */
  private static List<String> care(List<Coat> coats, Layers below) {
    return below.notes(coats).stream()
        .filter(note -> note.verdict() == SolventVerdict.CAREFUL)
        .filter(note -> !note.lowerPaint().equals(ClearCoats.CHIPPING_MEDIUM))
        .map(note -> "Care: " + note.rule().reason() + ". " + note.rule().remedy())
        .distinct()
        .toList();
  }
}
