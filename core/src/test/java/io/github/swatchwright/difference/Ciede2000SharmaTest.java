package io.github.swatchwright.difference;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.ExternalCheck;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/** CIEDE2000 against the published table that its implementers are told to check. */
@Tag("external")
class Ciede2000SharmaTest {
  private static final ExternalCheck SHARMA =
      ExternalCheck.against(
          "Sharma, Wu and Dalal 2005, table 1",
          "CIEDE2000 of 34 pairs, both orders, and the tests' textbook form");
  private static final String TABLE = "ciede2000-sharma-wu-dalal-table-1.csv";

  /** Half a unit of the 4th and last printed decimal. */
  private static final double PRINTED = 0.5e-4;

  @TestFactory
  Stream<DynamicTest> agreesWithThePublishedTable() {
    List<double[]> rows = Fixture.rows(TABLE);
    assertThat(rows).hasSize(34);
    return rows.stream()
        .map(
            r ->
                DynamicTest.dynamicTest(
                    String.format(
                        Locale.ROOT, "Sharma, Wu and Dalal 2005, table 1, pair %.0f", r[0]),
                    () -> check(r)));
  }

  private static void check(double[] r) {
    double expected = r[7];
    SHARMA.near(Ciede2000.deltaE(r[1], r[2], r[3], r[4], r[5], r[6]), expected, PRINTED);
    SHARMA.near(Ciede2000.deltaE(r[4], r[5], r[6], r[1], r[2], r[3]), expected, PRINTED);
    SHARMA.near(TextbookCiede2000.deltaE(r[1], r[2], r[3], r[4], r[5], r[6]), expected, PRINTED);
  }
}
