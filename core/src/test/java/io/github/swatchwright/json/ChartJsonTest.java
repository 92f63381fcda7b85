package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.photo.Chart;
import java.util.Collections;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ChartJsonTest {
  private static String chart(String fields, String patch, int count) {
    return "{\"format\":\"swatchwright-chart\",\"version\":1,"
        + fields
        + "\"patches\":["
        + String.join(",", Collections.nCopies(count, patch))
        + "]}";
  }

  @Test
  void patchesStandInAGridOrWhereTheyAreStated() {
    Chart grid = ChartJson.parse(chart("\"columns\":4,", "{\"lab\":[50,10,-20]}", 12), "grid.json");
    assertThat(grid.patches()).hasSize(12);
    assertThat(grid.patches().get(5))
        .isEqualTo(new Chart.Patch(1.25 / 4, 1.25 / 3, 0.125, 0.5 / 3, Lab.ofD65(50, 10, -20)));

    Chart placed =
        ChartJson.parse(chart("", "{\"lab\":[50,0,0],\"percent\":[10,20,5,5]}", 12), "placed");
    assertThat(placed.patches().get(0))
        .isEqualTo(new Chart.Patch(0.1, 0.2, 0.05, 0.05, Lab.ofD65(50, 0, 0)));
  }

  @Test
  @DisplayName("Lab relative to D50 becomes relative to D65: a colour converted by liblcms2 2.14")
  void coloursRelativeToD50AreAdapted() {
    // Display P3 196, 113, 134; the row of the fixture profile-conversions-lcms.csv.
    String patch = "{\"lab\":[58.3509,42.8654,4.8983]}";
    String text = chart("\"white\":\"D50\",\"columns\":4,", patch, 12);
    Lab known = ChartJson.parse(text, "d50.json").patches().get(0).known();

    RgbSpace p3 = RgbSpace.DISPLAY_P3;
    Lab exact =
        p3.toXyz(p3.decode(196 / 255.0), p3.decode(113 / 255.0), p3.decode(134 / 255.0)).toLab();
    assertThat(known.white()).isEqualTo(WhitePoint.D65);
    // liblcms2 works in 16-bit steps and with a D50 of four digits.
    assertThat(Ciede2000.deltaE(known, exact)).isLessThan(0.1);
  }

  @Test
  void refusalsNameTheirPlace() {
    assertRefused(
        chart("\"columns\":4,", "{\"lab\":[50,10]}", 12),
        "x: $.patches[0].lab: holds 2 items, must hold exactly 3");
    assertRefused(
        chart("\"columns\":4,", "{\"lab\":[50,10,0]}", 3),
        "x: $.columns: is 4, must be a whole number within [1, 3]");
    assertRefused(
        chart("\"columns\":3,", "{\"lab\":[50,10,0]}", 6),
        "x: $.patches: the number of patches is 6, must be within [12, 2000]");
    assertRefused(
        chart("", "{\"lab\":[50,10,0]}", 12),
        "x: $.patches[0]: has no field 'percent', must have one");
    assertRefused(
        chart("", "{\"lab\":[50,10,0],\"percent\":[90,0,20,5]}", 12),
        "x: $.patches[0].percent: width is 0.2, must be within [0.0, 0.1");
    assertRefused(
        chart("\"white\":\"A\",", "{\"lab\":[50,10,0]}", 12),
        "x: $.white: is \"A\", must be one of D50, D65");
  }

  private static void assertRefused(String text, String message) {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> ChartJson.parse(text, "x"))
        .withMessageStartingWith(message);
  }
}
