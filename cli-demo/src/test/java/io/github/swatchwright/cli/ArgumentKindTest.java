package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArgumentKindTest {
  @ParameterizedTest(name = "{0} is read as {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "#8A4B2A | NOTATION",
        "8A4B2A | NOTATION",
        "#12 | NOTATION",
        "lab(45, 5, 12) | NOTATION",
        "LAB(45 5 12) | NOTATION",
        "138,75,42 | NOTATION",
        "sienna | NOTATION",
        "barge.jpg@10,20,30,40 | PHOTO",
        "a@b.png@10%,20%,5%,5% | PHOTO",
        "C:\\photos\\barge.jpg@x,y,w,h | PHOTO",
        "barge.jpg@10,20,30 | WORDS",
        "@10,20,30,40 | WORDS",
        "Red oxide | PAINT",
        "red oxide | PAINT",
        "Gold | PAINT",
        "White:3, Red oxide:1 | WORDS",
        "labrador grey | WORDS"
      })
  void aTextIsToldApartByTheShelfAndByHowItLooks(String text, ArgumentKind kind) {
    Shelf shelf =
        Shelf.of(
            "two",
            Stream.of("Red oxide", "Gold")
                .map(
                    name ->
                        Paint.of(name, Medium.ACRYLIC, new Swatch.OfSrgb(Srgb.parseHex("#8A4B2A"))))
                .toList());
    assertThat(ArgumentKind.of(text, shelf)).isEqualTo(kind);
    assertThat(ArgumentKind.of("  " + text + " ", shelf)).isEqualTo(kind);
  }
}
