package io.github.swatchwright.coat;

import io.github.swatchwright.paint.Medium;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * What can hurt someone at the bench, and the usual caution. None of it replaces the product's
 * safety data sheet and the local rules.
 */
public enum Caution {
  /** Solvent in the air. Common practice. */
  EXTRACTION(
      "Spray paint that is thinned with solvent only where an extractor takes the mist outside; an"
          + " open window is not enough. Protect your breathing as the data sheet tells."),

  /** White spirit: International Chemical Safety Card 0361. */
  FLAMES(
      "Keep flames, sparks and hot things away: white spirit can catch fire at about 40 °C or less"
          + " and its vapour can explode above 21 °C (ICSC 0361); lacquer thinner is worse."),

  /** Drying oils heat up as they dry. Common practice. */
  OILY_RAGS(
      "Rags with oil or enamel heat up by themselves and can catch fire: spread them out to dry"
          + " outdoors, or drown them in water in a closed tin."),

  /** Hardeners. UK Health and Safety Executive on isocyanate paints. */
  ISOCYANATES(
      "Two-part paint with isocyanate hardener is for air-fed equipment only (UK HSE): it has no"
          + " place on a hobby bench."),

  /** Dust and skin. Common practice. */
  DUST("Sand wet, keep dry pigment out of the air, and wash your hands afterwards."),

  /** What wins over all of this. */
  DATA_SHEET("The label, the product's safety data sheet and local rules come first.");

  private final String text;

  Caution(String text) {
    this.text = text;
  }

  /** Whether it is about work with that medium. */
  public boolean concerns(Medium medium) {
    boolean solvent = medium == Medium.LACQUER || medium == Medium.ENAMEL || medium == Medium.OIL;
    return switch (this) {
      case EXTRACTION, FLAMES -> solvent;
      case OILY_RAGS -> medium == Medium.OIL || medium == Medium.ENAMEL;
      case ISOCYANATES -> medium == Medium.LACQUER;
      case DUST, DATA_SHEET -> true;
    };
  }

  /** The caution in plain sentences. */
  public String text() {
    return text;
  }

  /** The word for it in JSON, such as {@code oily-rags}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Every caution that touches work with these media. */
  public static List<Caution> forMedia(Collection<Medium> used) {
    return Arrays.stream(values())
        .filter(caution -> used.stream().anyMatch(caution::concerns))
        .toList();
  }
}
