package io.github.swatchwright.difference;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.testdata.ExternalCheck;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** All formulas against general-purpose libraries' figures; how they were made heads the table. */
@Tag("external")
class LibraryAgreementTest {
  private static final List<double[]> ROWS = Fixture.rows("colour-differences-culori-lcms.csv");

  /**
   * Half a unit of the 10th and last printed decimal, and as much again for both sides' rounding.
   */
  private static final double PRINTED = 1e-10;

  @Test
  void theTableHasItsRows() {
    assertThat(ROWS).hasSize(2240).allMatch(row -> row.length == 13);
  }

  @Test
  @DisplayName("CIEDE2000 agrees with culori 4.0.2 and color-diff 1.4.0")
  void ciede2000Agrees() {
    agrees(check("npm culori 4.0.2 and color-diff 1.4.0", "CIEDE2000"), 6, Ciede2000::deltaE);
  }

  @Test
  @DisplayName("CIE94 for graphic arts agrees with culori 4.0.2")
  void cie94Agrees() {
    agrees(check("npm culori 4.0.2", "CIE94, graphic arts"), 7, Cie94.GRAPHIC_ARTS::deltaE);
  }

  @Test
  @DisplayName("CIE94 for textiles agrees with culori 4.0.2")
  void cie94ForTextilesAgrees() {
    agrees(check("npm culori 4.0.2", "CIE94, textiles"), 8, Cie94.TEXTILES::deltaE);
  }

  @Test
  @DisplayName("CMC(1:1) agrees with culori 4.0.2")
  void cmcPerceptibilityAgrees() {
    agrees(check("npm culori 4.0.2", "CMC(1:1)"), 9, Cmc.PERCEPTIBILITY::deltaE);
  }

  @Test
  @DisplayName("CMC(2:1) agrees with culori 4.0.2")
  void cmcAcceptabilityAgrees() {
    agrees(check("npm culori 4.0.2", "CMC(2:1)"), 10, Cmc.ACCEPTABILITY::deltaE);
  }

  @Test
  @DisplayName("CIE76 agrees with culori 4.0.2")
  void cie76Agrees() {
    agrees(check("npm culori 4.0.2", "CIE76"), 11, Cie76::deltaE);
  }

  @Test
  @DisplayName("CIEDE2000 with factors 2, 1.5, 0.5 agrees with Little CMS 2.14")
  void ciede2000WithFactorsAgrees() {
    agrees(
        check("Little CMS 2.14", "CIEDE2000 with factors 2, 1.5, 0.5"),
        12,
        Ciede2000.withFactors(2, 1.5, 0.5)::difference);
  }

  private static ExternalCheck check(String source, String formula) {
    return ExternalCheck.against(source, formula + " of 2,240 pairs");
  }

  private static void agrees(
      ExternalCheck check, int column, ToDoubleBiFunction<Lab, Lab> formula) {
    for (double[] r : ROWS) {
      double actual =
          formula.applyAsDouble(Lab.ofD65(r[0], r[1], r[2]), Lab.ofD65(r[3], r[4], r[5]));
      check.near(actual, r[column], PRINTED, Arrays.toString(r));
    }
  }
}
