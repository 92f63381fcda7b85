package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.ExternalCheck;
import io.github.swatchwright.testdata.ReferenceTable;
import io.github.swatchwright.testdata.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * CIELAB against colours that people have spaced by eye: Newhall, Nickerson and Judd 1943, by
 * {@code munsell-renotation-real.csv}, whose head says how it is to be read. CIELAB was made to
 * follow these colours, in order though not in every distance.
 */
@Tag("external")
class MunsellRenotationTest {
  private static final ExternalCheck RENOTATION =
      ExternalCheck.against(
          "Newhall, Nickerson and Judd 1943", "L* against ten times the Munsell value");
  private static final List<Row> ROWS = ReferenceTable.load("munsell-renotation-real.csv").rows();

  /** Illuminant C, CIE 1931 observer, by its chromaticity (CIE 15:2004, table T.3). */
  private static final WhitePoint C = WhitePoint.ofChromaticity(0.31006, 0.31616);

  /** Y of the perfect diffuser over that of magnesium oxide. */
  private static final double MAGNESIUM_OXIDE = 1.0257;

  /** The ten hue families in the order of the circle, ten steps each. */
  private static final List<String> FAMILIES =
      List.of("R", "YR", "Y", "GY", "G", "BG", "B", "PB", "P", "RP");

  private static Lab lab(Row row) {
    double x = row.number("x");
    double y = row.number("y");
    double luminance = row.number("Y") / MAGNESIUM_OXIDE;
    return new Xyz(luminance * x / y, luminance, luminance * (1 - x - y) / y, C).toLab();
  }

  /** Position on the hue circle, 0 to 100. */
  private static double step(String hue) {
    String family = hue.replaceAll("[0-9.]", "");
    double within = Double.parseDouble(hue.substring(0, hue.length() - family.length()));
    return (10 * FAMILIES.indexOf(family) + within) % 100;
  }

  private static Map<String, List<Row>> grouped(String first, String second) {
    Map<String, List<Row>> groups = new HashMap<>();
    for (Row row : ROWS) {
      String key = row.text(first) + " / " + row.text(second);
      groups.computeIfAbsent(key, unused -> new ArrayList<>()).add(row);
    }
    return groups;
  }

  @Test
  @DisplayName("Munsell renotation: lightness L* is ten times the value, within 1.1")
  void lightnessFollowsValue() {
    assertThat(ROWS).hasSizeGreaterThan(2700);
    for (Row row : ROWS) {
      // A cube root against the committee's polynomial of value: they part by 1.04 at value 6
      // (L* of the table's own Y), and by less elsewhere.
      RENOTATION.near(lab(row).l(), 10 * row.number("value"), 1.1, "%s".formatted(row));
    }
  }

  @Test
  @DisplayName("Munsell renotation: chroma C*ab grows with chroma at every hue and value")
  void chromaGrowsWithChroma() {
    for (List<Row> leaf : grouped("hue", "value").values()) {
      leaf.sort((p, q) -> Double.compare(p.number("chroma"), q.number("chroma")));
      for (int i = 1; i < leaf.size(); i++) {
        assertThat(lab(leaf.get(i)).chroma())
            .as("%s", leaf.get(i))
            .isGreaterThan(lab(leaf.get(i - 1)).chroma());
      }
    }
  }

  @Test
  @DisplayName("Munsell renotation: hue angle turns the same way from hue to neighbouring hue")
  void hueAngleFollowsHue() {
    int compared = 0;
    for (List<Row> circle : grouped("value", "chroma").values()) {
      circle.sort((p, q) -> Double.compare(step(p.text("hue")), step(q.text("hue"))));
      for (int i = 1; i < circle.size(); i++) {
        if (step(circle.get(i).text("hue")) - step(circle.get(i - 1).text("hue")) != 2.5) {
          continue; // Not neighbours: the pigments' limit leaves hues out.
        }
        double before = lab(circle.get(i - 1)).hueDegrees().orElseThrow();
        double after = lab(circle.get(i)).hueDegrees().orElseThrow();
        double turn = (after - before + 360) % 360;
        assertThat(turn)
            .as("%s after %s", circle.get(i), circle.get(i - 1))
            .isStrictlyBetween(0.0, 90.0);
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(2000);
  }
}
