package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.List;
import org.junit.jupiter.api.Test;

class CoatOrderTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final Base ACRYLIC = new Base.OfMix(Mix.parse("Dredger grey", SHELF));

  private static List<String> notes(Base base, String coats) {
    return CoatOrder.check(base, Coats.parse(coats, SHELF)).stream()
        .map(
            note ->
                note.coat()
                    + " "
                    + note.upperPaint()
                    + " over "
                    + note.lowerPaint()
                    + ": "
                    + note.verdict().word())
        .toList();
  }

  @Test
  void anEnamelWashOverAcrylicIsSafe() {
    assertThat(notes(ACRYLIC, "Whitewash wash:1@1:10"))
        .containsExactly("1 Whitewash wash over Dredger grey: safe");
  }

  @Test
  void aSecondEnamelWashClashesWithTheFirstAndReachesTheBase() {
    assertThat(notes(ACRYLIC, "Whitewash wash:2@1:4, Blue filter:3@1:15"))
        .containsExactly(
            "1 Whitewash wash over Dredger grey: safe",
            "2 Blue filter over Whitewash wash: clash",
            "2 Blue filter over Dredger grey: safe");
  }

  @Test
  void aClosedFilmKeepsTheThinnerFromWhatIsBelow() {
    assertThat(notes(ACRYLIC, "Bucket-chain rust:2@1:1, Red oxide:1@1:1, Blue filter:1@1:15"))
        .containsExactly(
            "1 Bucket-chain rust over Dredger grey: safe",
            "2 Red oxide over Bucket-chain rust: careful",
            "3 Blue filter over Red oxide: safe");
  }

  @Test
  void aChippedCoatDoesNot() {
    assertThat(notes(ACRYLIC, "Bucket-chain rust:2, Red oxide:1 over 60%, Blue filter:1@1:15"))
        .endsWith(
            "3 Blue filter over Red oxide: safe", "3 Blue filter over Bucket-chain rust: clash");
  }

  @Test
  void ofABaseThatIsOnlyAColourNothingIsKnown() {
    Base colour = new Base.OfSwatch(new Swatch.OfSrgb(Srgb.parse("#808080")));

    assertThat(notes(colour, "Whitewash wash:1@1:10")).isEmpty();
  }

  // The lacquer has clashed with the enamel already; a varnish over both isn't to blame for it.
  @Test
  void aVarnishIsJudgedByWhatItTouchesItself() {
    List<Coat> clashing = List.of(coat(Medium.ENAMEL), coat(Medium.LACQUER));
    assertThat(CoatOrder.check(ACRYLIC, clashing))
        .extracting(OrderNote::verdict)
        .contains(SolventVerdict.CLASH);

    assertThat(CoatOrder.seals(ACRYLIC, clashing, List.of()))
        .containsExactly(Medium.ACRYLIC, Medium.LACQUER);
  }

  private static Coat coat(Medium medium) {
    return Coat.of(Mix.of(Paint.of("a " + medium.word(), medium)));
  }
}
