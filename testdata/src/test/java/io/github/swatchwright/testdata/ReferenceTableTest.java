package io.github.swatchwright.testdata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import org.junit.jupiter.api.Test;

class ReferenceTableTest {

  private static ReferenceTable table(String text) throws IOException {
    return ReferenceTable.read("sample.csv", new BufferedReader(new StringReader(text)));
  }

  @Test
  void commentsAndEmptyLinesAreSkipped() throws IOException {
    ReferenceTable table = table("# source\n\nname,x,y\n# part two\nred, 1.5,-2e3\nblue,0,4\n");
    assertThat(table.columns()).containsExactly("name", "x", "y");
    assertThat(table.rows()).hasSize(2);
    assertThat(table.rows().get(0).text("name")).isEqualTo("red");
    assertThat(table.rows().get(0).numbers("y", "x")).containsExactly(-2000, 1.5);
    assertThat(table.rows().get(1)).hasToString("sample.csv line 6: blue, 0, 4");
  }

  @Test
  void blanksPartCellsWhereTheNamesHaveNoComma() throws IOException {
    ReferenceTable table = table("nm  power\n380\t1.25\n  385   2\n");
    assertThat(table.rows().get(0).number("power")).isEqualTo(1.25);
    assertThat(table.rows().get(1).number("nm")).isEqualTo(385);
  }

  @Test
  void faultsAreNamedWithFileAndLine() throws IOException {
    ReferenceTable table = table("a,b\n1,none\n");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table.rows().get(0).number("b"))
        .withMessage("sample.csv line 2, column b: 'none' is not a number");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table.rows().get(0).number("c"))
        .withMessage("sample.csv has no column 'c', must be one of [a, b]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table("a,b\n1,2\n1,2,3\n"))
        .withMessage("sample.csv line 3 has 3 cells, must have 2: [1, 2, 3]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table("# nothing\na,b\n"))
        .withMessage("reference table sample.csv has no rows");
  }

  @Test
  void missingFileIsNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ReferenceTable.load("no-such.csv"))
        .withMessage("there is no reference table no-such.csv");
  }

  @Test
  void tableBesideTheClassIsLoaded() {
    ReferenceTable table = ReferenceTable.load("ciede2000-sharma-wu-dalal-table-1.csv");
    assertThat(table.rows()).hasSize(34);
    assertThat(table.rows().get(0).number("deltaE00")).isEqualTo(2.0425);
  }
}
