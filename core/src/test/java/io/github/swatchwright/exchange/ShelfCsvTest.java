package io.github.swatchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.exchange.BadLinesException.BadLine;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Bottle;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.testdata.DemoShelf;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelfCsvTest {
  private static final ImportDefaults NO_MEDIUM = new ImportDefaults("bench", Optional.empty());

  private static Shelf read(String text) {
    return ShelfCsv.read(text.getBytes(StandardCharsets.UTF_8), "bench.csv", NO_MEDIUM);
  }

  private static List<BadLine> badLines(String text) {
    BadLinesException e = catchThrowableOfType(BadLinesException.class, () -> read(text));
    assertThat(e).as("exception for %s", text).isNotNull();
    return e.lines();
  }

  @Test
  void aShelfThatIsWrittenReadsBackEqual() {
    Shelf demo = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);

    assertThat(read(ShelfCsv.toText(demo)).paints()).isEqualTo(demo.paints());
  }

  @Test
  void hostileNamesAndNotesReadBackEqual() {
    Paint paint =
        Paint.of("=1+1, \"<script>\" \u202E\uD83D\uDEA2", Medium.OIL)
            .withFinish(Finish.GLOSS)
            .withMake(Make.READY_MIXED)
            .withHiding(new Hiding.Scattering(1e-4))
            .withDropMillilitres(0.1 + 0.2)
            .withSwatchError(1.0 / 3)
            .withNotes("two\r\nlines, \"quoted\"")
            .withBottle(new Bottle(OptionalDouble.of(12.5), OptionalDouble.of(0.1)));
    Shelf shelf = Shelf.of("bench", List.of(paint));

    assertThat(read(ShelfCsv.toText(shelf))).isEqualTo(shelf);
  }

  @Test
  void columnsMayStandInAnyOrder() {
    Shelf shelf = read("Coats,LAB_B,medium,lab_a,Name,lab_l\n2,-3,acrylic,-1,Bridge grey,48\n");

    assertThat(shelf)
        .isEqualTo(
            ShelfJson.parse(
                "{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"bench\",\"paints\":["
                    + "{\"name\":\"Bridge grey\",\"medium\":\"acrylic\","
                    + "\"masstone\":{\"lab\":[48,-1,-3]},\"hiding\":{\"coats\":2}}]}",
                "the same as JSON"));
  }

  @ParameterizedTest(name = "{1} is refused: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          name,medium,srgb|Grey,acrylic|has 2 fields, must have 3 as the first line
          name,medium,srgb|Grey,milk,#808080|medium is 'milk', must be one of acrylic, lacquer, enamel, oil, water
          name,medium,srgb|Grey,,#808080|the file doesn't tell the medium, so it has to be given
          name,medium,srgb|Grey,oil,80808|'80808' is not a colour of the form #RRGGBB, rgb(138, 75, 42) or lab(L, a, b), nor a colour name of CSS such as sienna
          name,medium,lab_l,lab_a|Grey,oil,50,0|has some of lab_l, lab_a and lab_b, must have all three
          name,medium,lab_l,lab_a,lab_b|Grey,oil,120,0,0|L* is 120.0, must be within [0.0, 100.0]
          name,medium,lab_l,lab_a,lab_b|Grey,oil,50,0,NaN|lab_b is 'NaN', must be a number such as 12.5
          name,medium,lab_l,lab_a,lab_b|Grey,oil,50,0,1e999|lab_b is '1e999', which is too large
          name,medium,coats,scattering|Grey,oil,2,0.5|has 2 of coats, contrastRatio, scattering, hidingWord, must have at most one
          name,medium,coats|Grey,oil,-1|coats is -1.0, must be a finite number above 0
          name,medium,nm_400,nm_420,nm_450|Grey,oil,0.1,0.1,0.1|has wavelengths that aren't equally far apart: 420 nm instead of 425
          name,medium|,oil|name has 0 characters, must have 1 to 200 and not be blank
          """)
  void namesTheLineAndTheReason(String header, String line, String reason) {
    assertThat(badLines(header + "\n" + line + "\n")).containsExactly(new BadLine(2, reason));
  }

  @Test
  void listsEveryBadLineAndImportsNothing() {
    String text =
        """
        name,medium,coats
        White,oil,1
        Grey,oil,x
        "Two
        lines",oil,1
        White,oil,1
        Red,oil,0
        """;

    assertThat(badLines(text))
        .containsExactly(
            new BadLine(3, "coats is 'x', must be a number such as 12.5"),
            new BadLine(4, "name holds a line break or another control character"),
            new BadLine(6, "name is 'White', as on line 2"),
            new BadLine(7, "coats is 0.0, must be a finite number above 0"));
    assertThatThrownBy(() -> read(text))
        .hasMessageStartingWith(
            "bench.csv: nothing was read from it, because of 4 lines\n  line 3: coats is 'x'");
  }

  @ParameterizedTest(name = "the first line {0} is refused")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          name,shade|has an unknown column 'shade'; known are name, medium,
          name,medium,Name|has two columns 'Name'
          medium,srgb|has no column 'name'
          notes|has no column 'name', no column 'medium' (or the medium has to be given), no column 'srgb' (or
          name,nm_x|the wavelength in a column is 'x', must be a number such as 12.5
          """)
  void refusesAFirstLine(String header, String reason) {
    assertThat(badLines(header + "\nx,y,z\n"))
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.number()).isEqualTo(1);
              assertThat(line.reason()).startsWith(reason);
            });
  }

  @Test
  void readsTenThousandLines() {
    String text =
        IntStream.range(0, Shelf.MOST_PAINTS)
            .mapToObj(i -> "Paint " + i + ",acrylic," + i % 100 + ",0,0\n")
            .collect(Collectors.joining("", "name,medium,lab_l,lab_a,lab_b\n", ""));

    assertThat(read(text).paints()).hasSize(10_000);
    assertThatThrownBy(() -> read(text + "One more,oil,1,0,0\n"))
        .hasMessage("bench.csv: the shelf holds 10001 paints, must hold 1 to 10000");
  }

  @Test
  void keepsToItsLimits() {
    assertThat(badLines("name,medium,notes\nGrey,oil," + "x".repeat(20_001) + "\n"))
        .containsExactly(new BadLine(2, "has a field of more than 20000 characters"));
    assertThat(badLines("name" + ",nm_1".repeat(2_000) + "\nGrey\n"))
        .contains(new BadLine(1, "has 2001 fields, must have at most 2000"));
    assertThatThrownBy(
            () -> ShelfCsv.read(new byte[ReadLimits.USUAL.mostBytes() + 1], "big.csv", NO_MEDIUM))
        .hasMessage("big.csv: is longer than 10000000 bytes, the most that is read");
    assertThatThrownBy(() -> ShelfCsv.read(new byte[] {(byte) 0xFF}, "x.csv", NO_MEDIUM))
        .hasMessage("x.csv: is not UTF-8 text; save it with that encoding");
    assertThatThrownBy(() -> read("")).hasMessageContaining("is empty");
  }

  @Test
  void spreadsheetsWithSemicolonsAndDecimalCommasAreRead() {
    Shelf shelf =
        read(
            """
            Name;Medium;Hex;Coats;Notes\r
            Quay green;oil;405040;1,5;thin, in two coats\r
            "Rust; dark";oil;rgb(90, 40, 20);3;"12,5"\r
            """);
    Paint first = shelf.paints().get(0);
    assertThat(first.masstone()).contains(new Swatch.OfSrgb(Srgb.parseHex("#405040")));
    assertThat(first.hiding()).contains(new Hiding.Coats(1.5));
    assertThat(first.notes()).isEqualTo("thin, in two coats");
    assertThat(shelf.paints().get(1).name()).isEqualTo("Rust; dark");
    assertThat(shelf.paints().get(1).notes()).isEqualTo("12,5");
  }
}
