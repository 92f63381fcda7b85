package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Effect;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.testdata.DemoShelf;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShelfJsonTest {

  @Test
  void readsEveryFieldOfAPaint() {
    Shelf shelf =
        ShelfJson.parse(
            """
            {"format":"swatchwright-shelf","version":1,"name":"Dredger",
             "surface":{"k1":0.03,"k2":0.5},
             "paints":[{"name":"Yellow oxide","medium":"lacquer","finish":"gloss",
             "masstone":{"srgb":"#C48A2C"},
             "make":"single-pigment","hiding":{"coats":3},
             "dropMillilitres":0.045,"swatchError":1.5,"effect":"pearl","notes":"free text"}]}
            """,
            "my shelf");

    Paint expected =
        Paint.of("Yellow oxide", Medium.LACQUER)
            .withFinish(Finish.GLOSS)
            .withMake(Make.SINGLE_PIGMENT)
            .withMasstone(new Swatch.OfSrgb(Srgb.parse("#C48A2C")))
            .withHiding(new Hiding.Coats(3))
            .withEffect(Effect.PEARL)
            .withDropMillilitres(0.045)
            .withSwatchError(1.5)
            .withNotes("free text");
    assertThat(shelf)
        .isEqualTo(new Shelf("Dredger", List.of(expected), Optional.of(new Saunderson(0.03, 0.5))));
  }

  @Test
  void takesNameAndMediumForAPaint() {
    Paint paint = paintOf("\"name\":\"Grey\",\"medium\":\"acrylic\"");

    assertThat(paint).isEqualTo(Paint.of("Grey", Medium.ACRYLIC));
  }

  @Test
  void readsTheOtherFormsOfMasstone() {
    assertThat(paintOf(NAMED + ",\"masstone\":{\"lab\":[41.5,20,-30.25]}").masstone())
        .hasValue(new Swatch.OfLab(Lab.ofD65(41.5, 20, -30.25)));
    assertThat(
            paintOf(
                    NAMED
                        + ",\"masstone\":{\"reflectance\":"
                        + "{\"from\":400,\"step\":40,\"values\":[0.1,0.2,0.3,0.4,0.5,0.6,0.7,0.8]}}")
                .masstone())
        .hasValue(new Swatch.OfReflectance(400, 40, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8));
  }

  @Test
  void readsTheOtherFormsOfHiding() {
    assertThat(paintOf(NAMED + ",\"hiding\":{\"contrastRatio\":0.9}").hiding())
        .hasValue(new Hiding.ContrastRatio(0.9));
    assertThat(paintOf(NAMED + ",\"hiding\":{\"scattering\":0.5}").hiding())
        .hasValue(new Hiding.Scattering(0.5));
    assertThat(paintOf(NAMED + ",\"hiding\":{\"word\":\"semi-opaque\"}").hiding())
        .hasValue(Hiding.Word.SEMI_OPAQUE);
  }

  private static final String NAMED = "\"name\":\"Grey\",\"medium\":\"acrylic\"";

  private static Paint paintOf(String fields) {
    return ShelfJson.parse(
            "{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"s\",\"paints\":[{"
                + fields
                + "}]}",
            "s")
        .paints()
        .get(0);
  }

  @Test
  void theDemoShelfReadsBackAsItself() {
    Shelf shelf = ShelfJson.parse(DemoShelf.text(), "demo shelf");

    assertThat(shelf.paints()).hasSizeGreaterThan(20);
    assertThat(ShelfJson.parse(ShelfJson.toText(shelf), "again")).isEqualTo(shelf);
  }

  @Test
  void readsFilesWithAByteOrderMarkAndNamesThemInMessages(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("shelf.json");
    Files.writeString(file, "\uFEFF" + DemoShelf.text());
    assertThat(ShelfJson.read(file)).isEqualTo(ShelfJson.parse(DemoShelf.text(), "demo"));

    Files.writeString(file, "[]");
    assertThatThrownBy(() -> ShelfJson.read(file))
        .isInstanceOf(JsonInputException.class)
        .hasMessage(file + ": $: is a list, must be an object");
  }

  @Test
  void refusesTextThatIsNotUtf8(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("latin.json");
    Files.write(file, "{\"name\":\"grün\"}".getBytes(StandardCharsets.ISO_8859_1));

    assertThatThrownBy(() -> ShelfJson.read(file))
        .isInstanceOf(JsonInputException.class)
        .hasMessage(file + ": $: is not UTF-8 text");
  }

  @Test
  void leavesAMissingFileToTheCaller(@TempDir Path folder) {
    assertThatThrownBy(() -> ShelfJson.read(folder.resolve("none.json")))
        .isInstanceOf(NoSuchFileException.class);
  }

  @Test
  void doesNotWriteWhatItCouldNotReadBack() {
    Swatch fine = new Swatch.OfSrgb(new Srgb(0.501, 0.2, 0.3));
    Shelf tooFine = Shelf.of("s", List.of(Paint.of("Grey", Medium.ACRYLIC, fine)));
    Shelf halfACharacter =
        Shelf.of(
            "\uD800",
            List.of(Paint.of("Grey", Medium.ACRYLIC, new Swatch.OfSrgb(Srgb.ofPacked(0)))));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> ShelfJson.toText(tooFine))
        .withMessageContaining("finer than the 256 steps of #RRGGBB");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ShelfJson.toText(halfACharacter))
        .withMessageContaining("name holds half a character");
  }
}
