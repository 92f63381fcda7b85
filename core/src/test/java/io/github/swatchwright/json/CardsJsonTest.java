package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.PartsBy;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Swatch;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CardsJsonTest {
  private static final CardSet CARDS =
      new CardSet(
          List.of(
              new TestCard(
                  List.of(
                      new TestCard.Part("White", 50),
                      new TestCard.Part("Yellow, \"oxide\"", 0.1, Optional.of("tin, \"new\""))),
                  PartsBy.MASS,
                  new Swatch.OfLab(Lab.ofD65(80.1, -1.0 / 3, 20)),
                  Optional.of(new Swatch.OfSrgb(Srgb.parse("#202020"))),
                  OptionalDouble.of(2),
                  OptionalDouble.of(1.7),
                  Optional.of(LocalDate.of(2026, 11, 20))),
              new TestCard(
                  List.of(new TestCard.Part("White", 1)),
                  PartsBy.VOLUME,
                  new Swatch.OfSrgb(Srgb.parse("#F0F0EE")),
                  Optional.empty(),
                  OptionalDouble.empty())));

  @Test
  void writtenCardsReadBackEqual(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("cards.json"), CardsJson.toText(CARDS));

    assertThat(CardsJson.read(file)).isEqualTo(CARDS);
  }

  @Test
  void aSetsPaintingDayIsThatOfItsCardsThatDoNotStateTheirOwn() {
    String card = "{\"parts\":{\"White\":1},\"measured\":{\"srgb\":\"#F0F0EE\"}";
    CardSet cards =
        CardsJson.parse(
            "{\"format\":\"swatchwright-cards\",\"version\":1,\"painted\":\"2026-11-20\",\"cards\":["
                + card
                + "},"
                + card
                + ",\"painted\":\"2026-12-01\"}]}",
            "cards");

    assertThat(cards.cards())
        .extracting(TestCard::painted)
        .containsExactly(
            Optional.of(LocalDate.of(2026, 11, 20)), Optional.of(LocalDate.of(2026, 12, 1)));
  }

  @Test
  void partsAreByVolumeUnlessStated() {
    CardSet cards = CardsJson.parse(document("{\"White\":50,\"Red\":0.5}", ""), "cards");

    assertThat(cards.cards().get(0).by()).isEqualTo(PartsBy.VOLUME);
    assertThat(cards.cards().get(0).parts())
        .containsExactly(new TestCard.Part("White", 50), new TestCard.Part("Red", 0.5));
  }

  @ParameterizedTest(name = "{0} {1} is refused at {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {}||$.cards[0].parts: holds 0 paints, must hold 1 to 100
          {"White":0}||$.cards[0].parts.White: parts of 'White' is 0.0, must be a finite number above 0
          {"White":"1"}||$.cards[0].parts.White: is "1", must be a number
          {"White":1,"White":2}||$.cards[0].parts.White: is given twice
          {"Yellow oxide":NaN}||$.cards[0].parts['Yellow oxide']: is NaN, must be a finite number within ±1.7976931348623157E308
          {"White":1}|,"by":"drops"|$.cards[0].by: is "drops", must be one of volume, mass
          {"White":1}|,"coats":0|$.cards[0].coats: is 0.0, must be a finite number above 0
          {"White":1}|,"over":{"lab":[1,2]}|$.cards[0].over.lab: holds 2 items, must hold exactly 3
          {"White":1}|,"base":{}|$.cards[0].base: is an unknown field; known here: parts, by, measured, over, coats, measuredError, batches, painted
          {"White":1}|,"by":"mass","by":"volume"|$.cards[0].by: is given twice
          {"White":1}|,"measuredError":0|$.cards[0].measuredError: is 0.0, must be a finite number above 0
          {"White":1}|,"batches":{"Red":"new"}|$.cards[0].batches.Red: is of a paint that isn't among the parts
          {"White":1}|,"batches":{"White":" "}|$.cards[0].parts.White: the batch of 'White' is blank
          {"White":1}|,"over":{"lab":[1,2,3],"srgb":"#123456"}|$.cards[0].over: has 2 fields, must have exactly one: srgb, lab or reflectance
          """)
  void refusesACard(String parts, String more, String message) {
    assertThatThrownBy(
            () -> CardsJson.parse(document(parts, more == null ? "" : more), "cards.json"))
        .isInstanceOf(JsonInputException.class)
        .hasMessage("cards.json: " + message);
  }

  private static String document(String parts, String more) {
    return "{\"format\":\"swatchwright-cards\",\"version\":1,\"cards\":[{\"parts\":"
        + parts
        + ",\"measured\":{\"srgb\":\"#F0F0EE\"}"
        + more
        + "}]}";
  }
}
