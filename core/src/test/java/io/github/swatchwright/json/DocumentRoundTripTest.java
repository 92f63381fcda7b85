package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.PartsBy;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.testdata.DemoShelf;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Cards, recipes and notebook entries of any content come back as they were. */
class DocumentRoundTripTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final List<Paint> ACRYLICS =
      SHELF.paints().stream()
          .filter(p -> p.medium() == Medium.ACRYLIC && p.whyNotComputable().isEmpty())
          .toList();

  @Property(tries = 300)
  void writtenCardsReadBackEqual(@ForAll("cards") CardSet cards) {
    String text = CardsJson.toText(cards);
    assertThat(CardsJson.parse(text, "written")).isEqualTo(cards);
    assertThat(CardsJson.toText(CardsJson.parse(text, "written"))).isEqualTo(text);
  }

  @Provide
  Arbitrary<CardSet> cards() {
    Arbitrary<TestCard.Part> parts =
        Combinators.combine(
                ArbitraryValues.names(),
                ArbitraryValues.between(1e-6, 1e6),
                ArbitraryValues.names().optional())
            .as(TestCard.Part::new);
    Arbitrary<OptionalDouble> sometimes =
        ArbitraryValues.between(1e-3, 50)
            .optional()
            .map(v -> v.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    Arbitrary<LocalDate> days =
        Arbitraries.longs()
            .between(LocalDate.of(1, 1, 1).toEpochDay(), LocalDate.of(9999, 12, 31).toEpochDay())
            .map(LocalDate::ofEpochDay);
    return Combinators.combine(
            parts.list().ofMinSize(1).ofMaxSize(5).uniqueElements(TestCard.Part::paint),
            Arbitraries.of(PartsBy.class),
            ArbitraryValues.swatches(),
            ArbitraryValues.swatches().optional(),
            sometimes,
            sometimes,
            days.optional())
        .as(TestCard::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .map(CardSet::new);
  }

  @Property(tries = 300)
  void writtenRecipesReadBackEqual(@ForAll("recipes") List<Recipe> recipes) {
    String text =
        JsonOutput.object(
            json -> {
              json.writeArrayFieldStart("recipes");
              for (Recipe recipe : recipes) {
                json.writeStartObject();
                RecipeJson.write(json, recipe);
                json.writeEndObject();
              }
              json.writeEndArray();
            });
    assertThat(JsonResult.parseRecipes(text, "written", SHELF)).isEqualTo(recipes);
  }

  @Provide
  Arbitrary<List<Recipe>> recipes() {
    return Arbitraries.longs().map(DocumentRoundTripTest::recipe).list().ofMaxSize(5);
  }

  private static Recipe recipe(long seed) {
    Random random = new Random(seed);
    List<Paint> paints = new ArrayList<>(ACRYLICS);
    Collections.shuffle(paints, random);
    int alone = random.nextInt(4);
    List<Recipe.Drops> drops =
        paints.subList(0, alone).stream()
            .map(paint -> new Recipe.Drops(paint, 1 + random.nextInt(10_000)))
            .toList();
    List<Recipe.PotDrops> pots = new ArrayList<>();
    if (alone == 0 || random.nextBoolean()) {
      Mix inside =
          new Mix(
              List.of(
                  new Mix.Part(paints.get(5), 1 + random.nextInt(1000) / 8.0),
                  new Mix.Part(paints.get(6), 0.001 * (1 + random.nextInt(100_000)))));
      Pot pot = new Pot(inside);
      pots.add(new Recipe.PotDrops(pot, 1 + random.nextInt(pot.wholeDrops())));
    }
    return new Recipe(drops, pots);
  }

  @Property(tries = 300)
  void writtenEntriesReadBackEqual(@ForAll("entries") NotebookEntry entry) {
    String line = NotebookJson.toLine(entry);
    assertThat(line).doesNotContain("\n").doesNotContain("\r");
    assertThat(NotebookJson.read(JsonDocument.parse(line, "line 1"))).isEqualTo(entry);
  }

  @Provide
  Arbitrary<NotebookEntry> entries() {
    Arbitrary<Instant> dates =
        Arbitraries.longs()
            .between(-1_000_000_000_000L, 10_000_000_000_000L)
            .map(Instant::ofEpochMilli);
    Arbitrary<String> found =
        Combinators.combine(
                ArbitraryValues.text(), ArbitraryValues.between(-1e9, 1e9), Arbitraries.longs())
            .as(
                (text, number, whole) ->
                    JsonOutput.object(
                        json -> {
                          json.writeStringField("text", text);
                          json.writeNumberField("number", number);
                          json.writeNumberField("whole", whole);
                          json.writeArrayFieldStart("list");
                          json.writeBoolean(whole > 0);
                          json.writeEndArray();
                        }));
    return Combinators.combine(
            dates,
            ArbitraryValues.text(),
            ArbitraryValues.text(),
            ArbitraryValues.text(),
            ArbitraryValues.text().list().ofMinSize(1).ofMaxSize(6),
            found)
        .as(NotebookEntry::new);
  }
}
