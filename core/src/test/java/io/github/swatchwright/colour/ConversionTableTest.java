package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.ExternalCheck;
import io.github.swatchwright.testdata.ReferenceTable;
import io.github.swatchwright.testdata.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * 600 sRGB colours against npm culori 4.0.2 and Debian python3-colorspacious 1.1.2, by {@code
 * srgb-conversions-culori-colorspacious.csv}, whose head says how it was made.
 */
@Tag("external")
class ConversionTableTest {
  private static final ExternalCheck CULORI =
      ExternalCheck.against(
          "npm culori 4.0.2", "sRGB to XYZ, CIELAB, LCh and Display P3, 600 colours");
  private static final ExternalCheck COLORSPACIOUS =
      ExternalCheck.against("Debian python3-colorspacious 1.1.2", "sRGB to XYZ, 600 colours");
  private static final List<Row> ROWS =
      ReferenceTable.load("srgb-conversions-culori-colorspacious.csv").rows();

  /**
   * culori's matrices are those of CSS Color 4 to 16 digits; its results are kept to 10 decimals.
   */
  private static final double SAME_MATRIX = 1e-8;

  /**
   * culori's matrix from linear sRGB to XYZ under D50 is rounded: blue's X is 0.14307845 and its Y
   * 0.06061979, where the exact products are 0.14307842 and 0.06061981. By the slope of CIELAB's
   * curve there each is worth 2.1e-5 in a*, with opposite signs: 4.2e-5 in all.
   */
  private static final double ROUNDED_BRADFORD = 5e-5;

  /** IEC 61966-2-1 prints its matrix to four decimals: up to 0.5e-4 in each of three, times 100. */
  private static final double ROUNDED_MATRIX = 0.015;

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
      CULORI.near(xyz.x(), row.number("X"), SAME_MATRIX, "X of %s".formatted(row));
      CULORI.near(xyz.y(), row.number("Y"), SAME_MATRIX, "Y of %s".formatted(row));
      CULORI.near(xyz.z(), row.number("Z"), SAME_MATRIX, "Z of %s".formatted(row));
    }
  }

  @Test
  @DisplayName("culori 4.0.2, lab65: 600 rows")
  void labUnderD65() {
    for (Row row : ROWS) {
      Lab lab = srgb(row).toLab();
      CULORI.near(lab.l(), row.number("L65"), 1e-7, "L* of %s".formatted(row));
      CULORI.near(lab.a(), row.number("a65"), 1e-7, "a* of %s".formatted(row));
      CULORI.near(lab.b(), row.number("b65"), 1e-7, "b* of %s".formatted(row));
    }
  }

  @Test
  @DisplayName("culori 4.0.2, lch65: 600 rows, greys without a hue")
  void lchUnderD65() {
    for (Row row : ROWS) {
      Lch lch = srgb(row).toLab().toLch();
      CULORI.near(lch.c(), row.number("C65"), 1e-7, "C* of %s".formatted(row));
      if (row.text("h65").equals("none")) {
        assertThat(lch.hueDegrees()).as("hue of %s", row).isEmpty();
      } else {
        // An error of 1e-8 in a* or b* turns the hue of the palest row, C* above 1, by 6e-7°.
        CULORI.near(
            lch.hueDegrees().orElseThrow(), row.number("h65"), 1e-6, "hue of %s".formatted(row));
      }
    }
  }

  @Test
  @DisplayName("culori 4.0.2, lab: 600 rows, D50 by Bradford")
  void labUnderD50() {
    for (Row row : ROWS) {
      Lab lab = srgb(row).toLab().adaptTo(WhitePoint.D50);
      assertThat(lab.white()).isEqualTo(WhitePoint.D50);
      CULORI.near(lab.l(), row.number("L50"), ROUNDED_BRADFORD, "L* of %s".formatted(row));
      CULORI.near(lab.a(), row.number("a50"), ROUNDED_BRADFORD, "a* of %s".formatted(row));
      CULORI.near(lab.b(), row.number("b50"), ROUNDED_BRADFORD, "b* of %s".formatted(row));
    }
  }

  @Test
  @DisplayName("culori 4.0.2, p3: 600 rows")
  void displayP3() {
    for (Row row : ROWS) {
      DisplayP3 p3 = DisplayP3.ofXyz(srgb(row).toXyz());
      CULORI.near(p3.red(), row.number("p3Red"), SAME_MATRIX, "red of %s".formatted(row));
      CULORI.near(p3.green(), row.number("p3Green"), SAME_MATRIX, "green of %s".formatted(row));
      CULORI.near(p3.blue(), row.number("p3Blue"), SAME_MATRIX, "blue of %s".formatted(row));
    }
  }

  @Test
  @DisplayName("colorspacious 1.1.2, XYZ100: 600 rows")
  void roughXyz() {
    for (Row row : ROWS) {
      Xyz xyz = srgb(row).toXyz();
      COLORSPACIOUS.near(xyz.x(), row.number("roughX"), ROUNDED_MATRIX, "X of %s".formatted(row));
      COLORSPACIOUS.near(xyz.y(), row.number("roughY"), ROUNDED_MATRIX, "Y of %s".formatted(row));
      COLORSPACIOUS.near(xyz.z(), row.number("roughZ"), ROUNDED_MATRIX, "Z of %s".formatted(row));
    }
  }
}
