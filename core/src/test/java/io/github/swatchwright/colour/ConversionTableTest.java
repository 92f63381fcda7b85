package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.testdata.ReferenceTable;
import io.github.swatchwright.testdata.ReferenceTable.Row;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * 600 sRGB colours against npm culori 4.0.2 and Debian python3-colorspacious 1.1.2, by {@code
 * srgb-conversions-culori-colorspacious.csv}, whose head says how it was made.
 */
class ConversionTableTest {
  private static final List<Row> ROWS =
      ReferenceTable.load("srgb-conversions-culori-colorspacious.csv").rows();

  /**
   * culori's matrices are those of CSS Color 4 to 16 digits; its results are kept to 10 decimals.
   */
  private static final Offset<Double> SAME_MATRIX = within(1e-8);

  /**
   * culori's matrix from linear sRGB to XYZ under D50 is rounded: blue's X is 0.14307845 and its Y
   * 0.06061979, where the exact products are 0.14307842 and 0.06061981. By the slope of CIELAB's
   * curve there each is worth 2.1e-5 in a*, with opposite signs: 4.2e-5 in all.
   */
  private static final Offset<Double> ROUNDED_BRADFORD = within(5e-5);

  /** IEC 61966-2-1 prints its matrix to four decimals: up to 0.5e-4 in each of three, times 100. */
  private static final Offset<Double> ROUNDED_MATRIX = within(0.015);

  private static Srgb srgb(Row row) {
    return new Srgb(row.number("red"), row.number("green"), row.number("blue"));
  }

  @Test
  @DisplayName("culori 4.0.2, xyz65: 600 rows")
  void xyz() {
    assertThat(ROWS).hasSize(600);
    for (Row row : ROWS) {
      Xyz xyz = srgb(row).toXyz();
      assertThat(xyz.white()).isEqualTo(WhitePoint.D65);
      assertThat(xyz.x()).as("X of %s", row).isCloseTo(row.number("X"), SAME_MATRIX);
      assertThat(xyz.y()).as("Y of %s", row).isCloseTo(row.number("Y"), SAME_MATRIX);
      assertThat(xyz.z()).as("Z of %s", row).isCloseTo(row.number("Z"), SAME_MATRIX);
    }
  }

  @Test
  @DisplayName("culori 4.0.2, lab65: 600 rows")
  void labUnderD65() {
    for (Row row : ROWS) {
      Lab lab = srgb(row).toLab();
      assertThat(lab.l()).as("L* of %s", row).isCloseTo(row.number("L65"), within(1e-7));
      assertThat(lab.a()).as("a* of %s", row).isCloseTo(row.number("a65"), within(1e-7));
      assertThat(lab.b()).as("b* of %s", row).isCloseTo(row.number("b65"), within(1e-7));
    }
  }

  @Test
  @DisplayName("culori 4.0.2, lch65: 600 rows, greys without a hue")
  void lchUnderD65() {
    for (Row row : ROWS) {
      Lch lch = srgb(row).toLab().toLch();
      assertThat(lch.c()).as("C* of %s", row).isCloseTo(row.number("C65"), within(1e-7));
      if (row.text("h65").equals("none")) {
        assertThat(lch.hueDegrees()).as("hue of %s", row).isEmpty();
      } else {
        // An error of 1e-8 in a* or b* turns the hue of the palest row, C* above 1, by 6e-7°.
        assertThat(lch.hueDegrees().orElseThrow())
            .as("hue of %s", row)
            .isCloseTo(row.number("h65"), within(1e-6));
      }
    }
  }

  @Test
  @DisplayName("culori 4.0.2, lab: 600 rows, D50 by Bradford")
  void labUnderD50() {
    for (Row row : ROWS) {
      Lab lab = srgb(row).toLab().adaptTo(WhitePoint.D50);
      assertThat(lab.white()).isEqualTo(WhitePoint.D50);
      assertThat(lab.l()).as("L* of %s", row).isCloseTo(row.number("L50"), ROUNDED_BRADFORD);
      assertThat(lab.a()).as("a* of %s", row).isCloseTo(row.number("a50"), ROUNDED_BRADFORD);
      assertThat(lab.b()).as("b* of %s", row).isCloseTo(row.number("b50"), ROUNDED_BRADFORD);
    }
  }

  @Test
  @DisplayName("culori 4.0.2, p3: 600 rows")
  void displayP3() {
    for (Row row : ROWS) {
      DisplayP3 p3 = DisplayP3.ofXyz(srgb(row).toXyz());
      assertThat(p3.red()).as("red of %s", row).isCloseTo(row.number("p3Red"), SAME_MATRIX);
      assertThat(p3.green()).as("green of %s", row).isCloseTo(row.number("p3Green"), SAME_MATRIX);
      assertThat(p3.blue()).as("blue of %s", row).isCloseTo(row.number("p3Blue"), SAME_MATRIX);
    }
  }

  @Test
  @DisplayName("colorspacious 1.1.2, XYZ100: 600 rows")
  void roughXyz() {
    for (Row row : ROWS) {
      Xyz xyz = srgb(row).toXyz();
      assertThat(xyz.x()).as("X of %s", row).isCloseTo(row.number("roughX"), ROUNDED_MATRIX);
      assertThat(xyz.y()).as("Y of %s", row).isCloseTo(row.number("roughY"), ROUNDED_MATRIX);
      assertThat(xyz.z()).as("Z of %s", row).isCloseTo(row.number("roughZ"), ROUNDED_MATRIX);
    }
  }
}
