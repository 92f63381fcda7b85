package io.github.swatchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.exchange.BadLinesException.BadLine;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GimpPaletteTest {
  private static final ImportDefaults ENAMEL =
      new ImportDefaults("bench", Optional.of(Medium.ENAMEL));

  private static Shelf read(String text) {
    return GimpPalette.read(text.getBytes(StandardCharsets.UTF_8), "bench.gpl", ENAMEL);
  }

  private static Paint paint(String name, String hex) {
    return Paint.of(name, Medium.ENAMEL, new Swatch.OfSrgb(Srgb.parse(hex)));
  }

  // The layout is that of the GIMP's developer documentation, "GIMP palette file format" (mem).
  @Test
  void readsAPalette() {
    Shelf shelf =
        read(
            """
            GIMP Palette
            Name: Dredger
            Columns: 3
            # a comment

            255 254   1\tBuoy yellow\r
              0   0   0 Soot, fresh
            18 52 86
            1 2 3 Untitled
            """);
    ;

    assertThat(shelf)
        .isEqualTo(
            Shelf.of(
                "Dredger",
                List.of(
                    paint("Buoy yellow", "#FFFE01"),
                    paint("Soot, fresh", "#000000"),
                    paint("Colour 3", "#123456"),
                    paint("Colour 4", "#010203"))));
  }

  @Test
  void aShelfOfDisplayColoursReadsBackEqual() {
    Shelf shelf =
        Shelf.of("Bench", List.of(paint("White", "#FEFEFE"), paint("Rust # 2", "#8A4B2A")));

    assertThat(read(GimpPalette.toText(shelf))).isEqualTo(shelf);
  }

  @Test
  void listsBadLines() {
    BadLinesException e =
        catchThrowableOfType(
            BadLinesException.class,
            () -> read("GIMP Palette\n256 0 0 Red\n1 2 3 A\n1 2 A\n4 5 6 A\n"));

    assertThat(e.lines())
        .containsExactly(
            new BadLine(2, "red is 256, must be within [0, 255]"),
            new BadLine(4, "is '1 2 A', must be red, green, blue, 0 to 255, and a name"),
            new BadLine(5, "name is 'A', as on line 3"));
  }

  @Test
  void refusesAnotherKindOfFile() {
    assertThatThrownBy(() -> read("{\"format\":1}"))
        .hasMessage("bench.gpl: must begin with a line 'GIMP Palette'");
    assertThatThrownBy(
            () ->
                GimpPalette.read(
                    "GIMP Palette\n1 2 3 A\n".getBytes(StandardCharsets.UTF_8),
                    "bench.gpl",
                    new ImportDefaults("bench", Optional.empty())))
        .hasMessageContaining("line 2: the file doesn't tell the medium, so it has to be given");
  }

  @Test
  void aNameStaysOnItsLine() {
    NamedColour colour = new NamedColour("a\n255 0 0\u2028b", Srgb.parse("#000000"));

    assertThat(GimpPalette.toText("x\ny", List.of(colour)))
        .isEqualTo("GIMP Palette\nName: x y\n#\n  0   0   0\ta 255 0 0 b\n");
  }

  @Test
  void blanksAroundNamesAreKept() {
    Shelf shelf =
        Shelf.of(
            " bench ",
            List.of(Paint.of("  red ", Medium.OIL, new Swatch.OfSrgb(Srgb.parse("#C00000")))));

    Shelf back =
        GimpPalette.read(
            GimpPalette.toText(shelf).getBytes(StandardCharsets.UTF_8),
            "p.gpl",
            new ImportDefaults("p", Optional.of(Medium.OIL)));

    assertThat(back).isEqualTo(shelf);
  }
}
