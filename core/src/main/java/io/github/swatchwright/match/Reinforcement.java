package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.List;

/**
 * The paints whose purchase would bring a shelf closest to a list of colours.
 *
 * @param light the light that colours are seen under
 * @param targets the wanted colours under the chosen light
 * @param withoutIt how far and in which direction the shelf is from each as it stands
 * @param additions the best paints to add, the best first
 * @param tried how many paints of the catalogue were tried
 */
public record Reinforcement(
    Illuminant light,
    List<Lab> targets,
    List<Reach> withoutIt,
    List<Addition> additions,
    int tried) {
  /** Copies the lists. */
  public Reinforcement {
    targets = List.copyOf(targets);
    withoutIt = List.copyOf(withoutIt);
    additions = List.copyOf(additions);
  }
}
