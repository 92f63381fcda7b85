package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MixTest {
  private static final Shelf SHELF =
      Shelf.of(
          "test",
          List.of(
              paint("White", Medium.ACRYLIC),
              paint("Grey, cool", Medium.ACRYLIC),
              paint("Rust", Medium.ENAMEL)));

  private static Paint paint(String name, Medium medium) {
    return Paint.of(name, medium, new Swatch.OfSrgb(Srgb.parse("#808080")));
  }

  @Test
  void textReadsBackAsItWasWritten() {
    Mix mix = Mix.parse("White:3, Grey, cool:1.5", SHELF);
    assertThat(mix.parts()).extracting(Mix.Part::drops).containsExactly(3.0, 1.5);
    assertThat(mix.toText()).isEqualTo("White:3, Grey, cool:1.5");
    assertThat(Mix.parse(mix.toText(), SHELF)).isEqualTo(mix);
  }

  @Property
  void anyNumberOfDropsIsReadBackToTheLastBit(
      @ForAll @Scale(17) @DoubleRange(min = 0, minIncluded = false, max = 1e6) double drops) {
    Mix mix = new Mix(List.of(new Mix.Part(SHELF.paint("White"), drops)));
    assertThat(Mix.parse(mix.toText(), SHELF)).isEqualTo(mix);
    Mix little = new Mix(List.of(new Mix.Part(SHELF.paint("White"), drops * 1e-200)));
    assertThat(Mix.parse(little.toText(), SHELF)).isEqualTo(little);
  }

  @Test
  void aNameAloneIsOnePart() {
    assertThat(Mix.parse("grey, COOL", SHELF).toText()).isEqualTo("Grey, cool:1");
  }

  // A drop is 0.04 ml; 25 drops are 1 ml, of which 1.37 parts of 2.37 are 14.45.
  @ParameterizedTest(name = "{0}, enough for {1} ml: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          White:3, Grey, cool:1|1|White:21, Grey, cool:7
          White:3, Grey, cool:1|0.16|White:3, Grey, cool:1
          White:3, Grey, cool:1|0.01|White:3, Grey, cool:1
          White:3, Grey, cool:1.5|1|White:18, Grey, cool:9
          White:10, Grey, cool:0.013|1|White:25, Grey, cool:1
          White:1.37, Grey, cool:1|1|White:14, Grey, cool:11
          """)
  void isMixedInWholeDropsForAVolume(String mix, double millilitres, String enough) {
    assertThat(Mix.parse(mix, SHELF).enoughFor(millilitres).toText()).isEqualTo(enough);
  }

  @Test
  void aNameWithACommaComesBeforeTheNamesInIt() {
    Shelf both =
        Shelf.of("both", List.of(paint("Grey", Medium.OIL), paint("Grey, cool", Medium.OIL)));
    assertThat(Mix.parse("Grey, cool:2", both).toText()).isEqualTo("Grey, cool:2");
  }

  /** Whatever the ratio, there is enough in whole drops, and no part is off by much. */
  @Property(tries = 500)
  void enoughIsEnoughInWholeDrops(
      @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 30) double white,
      @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 30) double grey,
      @ForAll @Scale(2) @DoubleRange(min = 0.1, max = 20) double millilitres) {
    Paint first = SHELF.paint("White");
    Paint second = SHELF.paint("Grey, cool");
    Mix asked = new Mix(List.of(new Mix.Part(first, white), new Mix.Part(second, grey)));
    Mix enough = asked.enoughFor(millilitres);
    double factor = enough.millilitres() / asked.millilitres();
    assertThat(enough.millilitres()).isGreaterThanOrEqualTo(millilitres - 1e-9);
    for (int i = 0; i < 2; i++) {
      double drops = enough.parts().get(i).drops();
      assertThat(drops).isEqualTo(Math.rint(drops)).isGreaterThanOrEqualTo(1);
      // Each part is rounded by half a drop at most, or up to one drop.
      assertThat(drops).isCloseTo(asked.parts().get(i).drops() * factor, within(1.0));
    }
  }

  @Test
  void aRatioOfAHundredBatchesIsKept() {
    // 1.01 to 1 is whole after 100 batches: 201 drops are 8.04 ml, and 16 ml take them twice.
    assertThat(Mix.parse("White:1.01, Grey, cool:1", SHELF).enoughFor(16).toText())
        .isEqualTo("White:202, Grey, cool:200");
  }

  @Test
  void impossibleMixesAreRefusedInOneLine() {
    refusesWithStart(":3", "a paint's name is missing in the mix");
    refusesWithStart(":3, White:1", "a paint's name is missing in the mix");
    refusesWithStart("Grey, warm:2", "no paint 'Grey, warm' on the shelf");
    refuses("White:0", "parts of 'White' is 0.0, must be a finite number above 0");
    refuses("White:-2", "parts of 'White' is -2.0, must be a finite number above 0");
    refuses("White:NaN", "'NaN' in the mix 'White:NaN' is not a number of parts");
    refuses("White:3d", "'3d' in the mix 'White:3d' is not a number of parts");
    refuses("White:0x1p3", "'0x1p3' in the mix 'White:0x1p3' is not a number of parts");
    refuses("White:1e3", "'1e3' in the mix 'White:1e3' is not a number of parts");
    refuses("White:", "'' in the mix 'White:' is not a number of parts");
    refuses(
        "White, Grey, cool",
        "'White' in the mix 'White, Grey, cool' has no number of parts, must be 'White:3' or the"
            + " like");
    refuses(
        "White, Rust:2",
        "'White' in the mix 'White, Rust:2' has no number of parts, must be 'White:3' or the like");
    refuses(":x", "'x' in the mix ':x' is not a number of parts");
    refuses("White:x", "'x' in the mix 'White:x' is not a number of parts");
    refuses("White:1, White:2", "the mix names 'White' twice");
    refuses(
        "White:1, Rust:1", "a pot holds one medium, but 'White' is acrylic and 'Rust' is enamel");
    refuses("Wite:1", "no paint 'Wite' on the shelf 'test'; nearest is 'White'");
  }

  @Test
  void whatIsOftenWrittenInsteadIsExplained() {
    refuses(
        "White:3,5", "'3,5' in the mix 'White:3,5' has a comma, which parts the paints: write 3.5");
    for (String sign : new String[] {";", "+", "/", "&"}) {
      String text = "White:3" + sign + " Black:1";
      refuses(
          text,
          "'"
              + sign
              + "' in the mix '"
              + text
              + "': commas part the paints, such as 'Name:3, Other name:1'");
    }
    for (String turned :
        new String[] {
          "3 White", "3 drops of White", "3x White", "White 3", "White=3", "White x3"
        }) {
      refusesWithStart(
          turned + ", 1 Black",
          "'"
              + turned
              + "' in the mix '"
              + turned
              + ", 1 Black': the number of parts goes behind the name and a colon, 'White:3'");
    }
    refuses("hite", "no paint 'hite' on the shelf 'test'; nearest is 'White'");
  }

  private static void refusesWithStart(String text, String message) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Mix.parse(text, SHELF))
        .withMessageStartingWith(message);
  }

  private static void refuses(String text, String message) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Mix.parse(text, SHELF))
        .withMessage(message);
  }

  @Test
  void recipesReduceToTheFewestDrops() {
    Paint white = SHELF.paint("White");
    Paint grey = SHELF.paint("Grey, cool");
    Recipe recipe = new Recipe(List.of(new Recipe.Drops(white, 4), new Recipe.Drops(grey, 6)));
    assertThat(recipe.total()).isEqualTo(10);
    assertThat(recipe.reduced().toMix().toText()).isEqualTo("White:2, Grey, cool:3");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Recipe.Drops(white, 0))
        .withMessage("drops of 'White' is 0, must be within [1, 10000]");
  }
}
