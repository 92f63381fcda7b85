package io.github.swatchwright.ladder;

import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.List;
import java.util.Optional;

/**
 * Shades in even steps, and the passes that they are painted in.
 *
 * @param light the light that colours are seen under
 * @param rungs first painted first
 * @param from the wanted colour of the first end
 * @param to the wanted colour of the last end
 * @param pot how the rungs are mixed
 * @param letDown the small pot in which a strong paint is let down, when a rung takes of it
 * @param baseShare share of the area that shows the base once all passes are done, 0 to 1
 * @param base colour of the base, when there is one
 * @param look the average colour of the area once all passes are done, as seen from a distance
 * @param wantedLook the average that was asked for, if one was
 * @param warnings what to know before mixing
 */
public record Ladder(
    Illuminant light,
    List<Rung> rungs,
    Lab from,
    Lab to,
    PotRule pot,
    Optional<LetDown> letDown,
    double baseShare,
    Optional<Lab> base,
    Lab look,
    Optional<Lab> wantedLook,
    List<LadderWarning> warnings) {
  /** Nobody pours a drop more for that share of one. */
  private static final double HARDLY_A_DROP = 0.05;

  /** Copies the lists. */
  public Ladder {
    rungs = List.copyOf(rungs);
    warnings = List.copyOf(warnings);
  }

  /** The same with other warnings. */
  Ladder withWarnings(List<LadderWarning> known) {
    return new Ladder(
        light, rungs, from, to, pot, letDown, baseShare, base, look, wantedLook, known);
  }

  /** The mean ΔE00 between neighbouring rungs that are mixed in the pot. */
  public double evenStep() {
    return rungs.stream()
        .filter(rung -> rung.wash().isEmpty())
        .flatMapToDouble(rung -> rung.step().stream())
        .average()
        .orElse(0);
  }

  /** The drops that are poured in all, those of the let-down among them. */
  public int drops() {
    int added =
        rungs.stream().flatMap(rung -> rung.add().stream()).mapToInt(Recipe.Drops::count).sum();
    return added + letDown.map(LetDown::count).orElse(0);
  }

  /** The drops that the passes of the pot take, as far as they reach the model. */
  public double dropsNeeded() {
    return rungs.stream()
        .filter(rung -> rung.wash().isEmpty())
        .mapToDouble(Rung::dropsNeeded)
        .sum();
  }

  /**
   * What the drops of a rung's pot are for, such as {@code 9 to paint with, 5 to keep, 1 over}.
   *
   * @param rung which, 0 for the first; not a wash
   */
  public String useOfPot(int rung) {
    Rung pot = rungs.get(rung);
    long all = Math.round(pot.potDrops());
    long painted = Math.min(all, (long) Math.ceil(pot.dropsNeeded() - HARDLY_A_DROP));
    int kept = rung + 1 < rungs.size() ? rungs.get(rung + 1).keep() : 0;
    long over = all - painted - kept;
    return painted
        + " to paint with"
        + (kept > 0 ? ", " + kept + " to keep" : "")
        + (over > 0 ? ", " + over + " over" : "");
  }

  /** The cautions of each rung, each once: at the first rung that it touches. */
  public List<List<Caution>> cautionsOfRungs() {
    return Caution.forCoats(rungs.stream().map(Rung::coat).toList());
  }

  /** The largest deviation of such a step from the mean, as a share of the mean; 0 when even. */
  public double unevenness() {
    double even = evenStep();
    return rungs.stream()
        .filter(rung -> rung.wash().isEmpty())
        .flatMapToDouble(rung -> rung.step().stream())
        .map(step -> Math.abs(step / even - 1))
        .max()
        .orElse(0);
  }
}
