package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** New bottles on a shelf that is there already: nothing that was measured is lost. */
class ShelfAddingTest {
  @TempDir Path folder = Path.of("");
  private Path own = Path.of("");

  @BeforeEach
  void ownShelf() throws IOException {
    own = folder.resolve("bench.shelf.json");
    Files.copy(Path.of(Run.fiveShelf()), own);
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private static void refused(Run run, String why) {
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains(why);
    assertThat(run.err().lines()).hasSize(1);
  }

  @Test
  void aBottleIsAddedAndTheOldShelfKept() throws IOException {
    byte[] before = Files.readAllBytes(own);
    String bottle = file("new.csv", "name,medium,srgb\nHatch grey,acrylic,#707478\n");

    assertThat(Run.of("shelf", "--shelf", own.toString(), "--add", bottle).status()).isZero();

    Shelf after = ShelfJson.read(own);
    assertThat(after.paints()).hasSize(6).last().extracting(Paint::name).isEqualTo("Hatch grey");
    assertThat(folder.resolve("bench.shelf.json.bak")).hasBinaryContent(before);
  }

  @Test
  void aClashOfNamesIsRefusedUnlessReplacingIsAskedFor() throws IOException {
    byte[] before = Files.readAllBytes(own);
    String name = ShelfJson.read(own).paints().get(1).name();
    String bottle = file("new.csv", "name,medium,srgb\n" + name + ",acrylic,#707478\n");

    Run clash = Run.of("shelf", "--shelf", own.toString(), "--add", bottle);

    refused(clash, "on the shelf already: '" + name + "'; --replace takes the new ones");
    assertThat(own).hasBinaryContent(before);
    Run.of("shelf", "--shelf", own.toString(), "--add", bottle, "--replace");
    assertThat(ShelfJson.read(own).paints()).hasSize(5);
    assertThat(ShelfJson.read(own).paint(name).hiding()).isEmpty();
  }

  @Test
  void anImportNeverReplacesAShelfUnasked() throws IOException {
    byte[] before = Files.readAllBytes(own);
    String bottle = file("new.csv", "name,medium,srgb\nHatch grey,acrylic,#707478\n");

    refused(Run.of("shelf", "--import", bottle, "--out", own.toString()), "is there already");
    assertThat(own).hasBinaryContent(before);

    assertThat(Run.of("shelf", "--import", bottle, "--out", own.toString(), "--replace").status())
        .isZero();
    assertThat(ShelfJson.read(own).paints()).hasSize(1);
    assertThat(folder.resolve("bench.shelf.json.bak")).hasBinaryContent(before);
  }

  @Test
  void addingNeedsToKnowWhereto() throws IOException {
    String bottle = file("new.csv", "name,medium,srgb\nHatch grey,acrylic,#707478\n");
    refused(Run.of("shelf", "--add", bottle), "--add needs --shelf FILE");
    refused(
        Run.of("shelf", "--shelf", own.toString(), "--add", bottle, "--import", bottle),
        "exclude each other");
    refused(Run.of("shelf", "--shelf", own.toString(), "--replace"), "go with --import or --add");
  }

  @Test
  void whatTableWritesImportReads() throws IOException {
    String table = folder.resolve("table.csv").toString();
    assertThat(Run.of("shelf", "--shelf", own.toString(), "--table", table).status()).isZero();
    Path again = folder.resolve("again.json");

    assertThat(Run.of("shelf", "--import", table, "--out", again.toString()).err()).isEmpty();

    Shelf before = ShelfJson.read(own);
    assertThat(ShelfJson.read(again).paints())
        .extracting(Paint::name)
        .containsExactlyElementsOf(before.paints().stream().map(Paint::name).toList());
    for (Paint paint : ShelfJson.read(again).paints()) {
      Paint old = before.paint(paint.name());
      assertThat(paint.medium()).isEqualTo(old.medium());
      assertThat(paint.hiding()).isEqualTo(old.hiding());
      // Tables give four digits.
      assertThat(paint.masstone().orElseThrow().lab().l())
          .isEqualTo(old.masstone().orElseThrow().lab().l(), within(1e-4));
    }
  }

  @Test
  void allMissingColumnsAreNamedInOneLine() throws IOException {
    String csv = file("notes.csv", "notes\nred\n");
    Run run = Run.of("shelf", "--import", csv);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("no column 'name'", "no column 'medium'", "no column 'srgb'");
  }

  @Test
  void aPhonesOwnFormatIsRefusedWithWhatToDo() throws IOException {
    byte[] head = {0, 0, 0, 24, 'f', 't', 'y', 'p', 'h', 'e', 'i', 'c', 0, 0, 0, 0};
    Path photo = Files.write(folder.resolve("hull.heic"), head);
    refused(Run.of("sample", photo.toString()), "is HEIC, which isn't read: save it as JPEG");
  }
}
