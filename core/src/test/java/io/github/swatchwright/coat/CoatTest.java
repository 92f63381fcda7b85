package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Application;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.paint.Bottle;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoatTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);

  private static Coat coat(String text) {
    return Coats.parse(text, SHELF).get(0);
  }

  @ParameterizedTest(name = "{0} is painted {1}")
  @CsvSource({
    "Red oxide:1, not thinned",
    "Blue filter:1, as it comes",
    "Red oxide:1@2:1, 1 part paint : 0.5 acrylic thinner",
    "Red oxide:1@3:1, 1 part paint : 0.33 acrylic thinner",
    "Bucket-chain rust:1@1:4, 1 part paint : 4 white spirit"
  })
  void howItIsThinnedIsToldAsItIsMeasured(String text, String thinning) {
    assertThat(coat(text).thinning()).isEqualTo(thinning);
  }

  @Test
  void aBottleThatNamesItsThinnerComesBeforeItsMedium() {
    Bottle bottle = Bottle.UNSTATED.withThinner("isopropyl alcohol");
    Paint paint = Paint.of("Fast grey", Medium.ACRYLIC).withBottle(bottle);

    assertThat(new Coat(Mix.of(paint), 1, 2, 1).thinning())
        .isEqualTo("1 part paint : 2 isopropyl alcohol");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          Whitewash wash:1@4:1|'Whitewash wash' is a wash, and 4 to 1 is more paint than thinner: did you mean @1:4?
          Blue filter:1@15:1|'Blue filter' is a filter, and 15 to 1 is more paint than thinner: did you mean @1:15?
          Whitewash wash:1@1:1|'Whitewash wash' comes ready to use: is it meant to be thinned once more?
          """)
  void aRatioThatLooksWrongIsAskedAbout(String text, String question) {
    assertThat(coat(text).doubt()).contains(question);
  }

  @ParameterizedTest(name = "nothing is asked about {0}")
  @CsvSource({"Whitewash wash:1", "Red oxide:1", "Red oxide:1@4:1", "Bucket-chain rust:1@1:10"})
  void aRatioThatLooksRightIsNot(String text) {
    assertThat(coat(text).doubt()).isEmpty();
  }

  @Test
  @DisplayName("200 cm², 10 µm dry of 30 % solids, 35 % landing: 1.90 ml a coat (by hand)")
  void aSpongedCoatTakesTheShareThatItCovers() {
    List<Coat> coats = Coats.parse("Red oxide:1, Red oxide:2@1:3 over 60%", SHELF);

    CoatAmounts amounts = CoatAmounts.of(200, Application.USUAL, coats);

    // .02 m² · 10 µm = .2 ml dry; ÷ .3 ÷ .35 = 1.905 ml wet. Then 60 % of it, twice, a quarter of
    // which is paint.
    assertThat(amounts.each()).extracting(PaintAmount::paintMillilitres).hasSize(2);
    assertThat(amounts.each().get(0).paintMillilitres()).isCloseTo(1.905, within(5e-4));
    assertThat(amounts.each().get(0).thinnerMillilitres()).isZero();
    assertThat(amounts.each().get(1).paintMillilitres()).isCloseTo(0.5714, within(5e-5));
    assertThat(amounts.each().get(1).thinnerMillilitres()).isCloseTo(1.7143, within(5e-5));
  }

  @ParameterizedTest(name = "{0} coats: {1}")
  @CsvSource({
    "0.1, hides after 1 coat",
    "1.04, hides after 1 coat",
    "1.2, hides after 2 coats",
    "2.0000001, hides after 2 coats",
    "30, hides after 30 coats",
    "30.1, never hides",
    "Infinity, never hides"
  })
  void coatsToHideAreCountedAsAPainterCounts(double coats, String words) {
    assertThat(HidingCoats.inWords(coats)).isEqualTo(words);
  }
}
