package io.github.swatchwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.ExternalCheck;
import io.github.swatchwright.testdata.ReferenceTable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** CIELAB of some 2,700 printed patches, against the CIELAB that their charts give beside XYZ. */
@Tag("external")
class PrintChartLabTest {
  /** XYZ and CIELAB carry two decimals, so each may be off by half of the last one. */
  private static final double HALF_DIGIT = 0.005;

  // Neither chart names the digits of its D50; each agrees to its last digit with one usual form.
  @ParameterizedTest(name = "{1}, white ({2}, 100, {3})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          fogra39l|Fogra, FOGRA39L|96.42|82.49
          fogra29l|Fogra, FOGRA29|96.42|82.49
          tr002|ANSI CGATS/SNAP TR 002-2007|96.422|82.521
          tr005|ANSI/CGATS/SWOP TR 005-2007|96.422|82.521
          """)
  void labIsAsPrinted(String file, String source, double xn, double zn) {
    WhitePoint white = new WhitePoint(xn, 100, zn);
    ExternalCheck check = ExternalCheck.against(source, "XYZ to CIELAB under D50");
    ReferenceTable table = ReferenceTable.load("print-chart-" + file + "-cmy.csv");
    assertThat(table.rows()).hasSizeGreaterThan(300);
    for (ReferenceTable.Row row : table.rows()) {
      double[] xyz = row.numbers("X", "Y", "Z");
      double[] printed = row.numbers("L", "a", "b");
      double fx = spread(xyz[0], xn);
      double fy = spread(xyz[1], 100);
      double fz = spread(xyz[2], zn);
      Lab lab = new Xyz(xyz[0], xyz[1], xyz[2], white).toLab();
      check.near(lab.l(), printed[0], 116 * fy + HALF_DIGIT, "L* of " + row);
      check.near(lab.a(), printed[1], 500 * (fx + fy) + HALF_DIGIT, "a* of " + row);
      check.near(lab.b(), printed[2], 200 * (fy + fz) + HALF_DIGIT, "b* of " + row);
    }
  }

  /** What half a digit of X, Y or Z does to CIELAB's cube root; downwards it does most. */
  private static double spread(double value, double white) {
    return CielabCurve.encode(value / white) - CielabCurve.encode((value - HALF_DIGIT) / white);
  }
}
