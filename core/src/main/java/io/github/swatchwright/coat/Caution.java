package io.github.swatchwright.coat;

import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Use;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What can hurt someone at the bench, and the usual caution. None of it replaces the product's
 * safety data sheet and the local rules.
 */
public enum Caution {
  /** Solvent in the air. Common practice. */
  EXTRACTION(
      "Spray paint that is thinned with solvent only where an extractor takes the mist outside; an"
          + " open window is not enough. Protect your breathing as the data sheet tells."),

  /** Solvent from a brush. Common practice. */
  FRESH_AIR(
      "Brush washes and filters on where the air moves, and keep the jar closed. To spray them, an"
          + " extractor must take the mist outside; an open window is not enough."),

  /** Mist of acrylics and water colours. Common practice. */
  ACRYLIC_MIST(
      "Airbrush mist harms the lungs even when it is thinned with water: spray where an extractor"
          + " with a particle filter takes it away, and protect your breathing as the data sheet"
          + " tells."),

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

  /**
   * Whether it is about work with that medium, however it is put on. {@link #FRESH_AIR} isn't,
   * since {@link #EXTRACTION} is stricter.
   */
  public boolean concerns(Medium medium) {
    boolean solvent = isSolvent(medium);
    return switch (this) {
      case FRESH_AIR -> false;
      case EXTRACTION, FLAMES -> solvent;
      case ACRYLIC_MIST -> !solvent;
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

  private static boolean isSolvent(Medium medium) {
    return medium == Medium.LACQUER || medium == Medium.ENAMEL || medium == Medium.OIL;
  }

  /**
   * Whether it is about that coat: washes and filters are brushed on, and sanding is for primers
   * and for coats that are worn or sponged.
   */
  public boolean concerns(Coat coat) {
    boolean brushed = coat.use() == CoatUse.WASH || coat.use() == CoatUse.FILTER;
    return switch (this) {
      case EXTRACTION -> concerns(coat.medium()) && !brushed;
      case FRESH_AIR -> isSolvent(coat.medium()) && brushed;
      case DUST -> coat.coverage() < 1 || coat.mix().parts().get(0).paint().use() == Use.PRIMER;
      default -> concerns(coat.medium());
    };
  }

  /**
   * The cautions of each coat, each once: at the first coat that it touches.
   *
   * @param coats in the order in which they are painted
   * @return as many lists, without {@link #DATA_SHEET}, which stands once under all of them
   */
  public static List<List<Caution>> forCoats(List<Coat> coats) {
    Set<Caution> said = EnumSet.of(DATA_SHEET);
    return coats.stream()
        .map(
            coat ->
                Arrays.stream(values())
                    .filter(caution -> caution.concerns(coat))
                    .filter(caution -> caution != FRESH_AIR || !said.contains(EXTRACTION))
                    .filter(said::add)
                    .toList())
        .toList();
  }

  /** Every caution that touches work with these media. */
  public static List<Caution> forMedia(Collection<Medium> used) {
    return Arrays.stream(values())
        .filter(caution -> used.stream().anyMatch(caution::concerns))
        .toList();
  }
}
