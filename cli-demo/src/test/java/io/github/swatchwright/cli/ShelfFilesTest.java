package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.testdata.ReferenceTable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Shelves and results in other formats. */
class ShelfFilesTest {

  private static String done(String... args) {
    Run run = Run.of(args);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return run.out();
  }

  @ParameterizedTest(name = "a shelf comes back from {0}")
  @ValueSource(strings = {"csv", "json"})
  void aShelfIsExportedAndImported(String ending, @TempDir Path folder) throws IOException {
    String exported = folder.resolve("five." + ending).toString();
    Path imported = folder.resolve("again.json");

    done("shelf", "--shelf", Run.fiveShelf(), "--export", exported);
    done("shelf", "--import", exported, "--out", imported.toString());

    assertThat(ShelfJson.read(imported).paints())
        .isEqualTo(ShelfJson.read(Path.of(Run.fiveShelf())).paints());
  }

  @Test
  void aPaletteNeedsAMedium(@TempDir Path folder) throws IOException {
    String palette = folder.resolve("five.gpl").toString();
    done("shelf", "--shelf", Run.fiveShelf(), "--export", palette);

    Run without = Run.of("shelf", "--import", palette);
    String with = done("shelf", "--import", palette, "--medium", "oil", "--json");

    assertThat(without.status()).isEqualTo(2);
    assertThat(without.err()).contains("the file doesn't tell the medium, so it has to be given");
    assertThat(new ObjectMapper().readTree(with).get("paints").get(0).get("medium").asText())
        .isEqualTo("oil");
  }

  @Test
  void aPrintChartIsImported(@TempDir Path folder) throws IOException {
    Path chart = folder.resolve("chart.txt");
    try (InputStream in =
        Objects.requireNonNull(ReferenceTable.class.getResourceAsStream("print-chart-tr002.txt"))) {
      Files.copy(in, chart);
    }
    Path shelf = folder.resolve("chart.shelf.json");

    JsonNode report =
        new ObjectMapper()
            .readTree(
                done(
                    "shelf",
                    "--import",
                    chart.toString(),
                    "--medium",
                    "acrylic",
                    "--json",
                    "--out",
                    shelf.toString()));

    assertThat(report.get("paints")).hasSize(928);
    assertThat(report.get("problems")).isEmpty();
    assertThat(ShelfJson.read(shelf).paints()).hasSize(928);
  }

  @Test
  void badLinesAreListedAndNothingIsWritten(@TempDir Path folder) throws IOException {
    Path csv = folder.resolve("bench.csv");
    Files.writeString(csv, "name,medium\nWhite,oil\nGrey,milk\nBlack\n");
    Path out = folder.resolve("bench.json");

    Run run = Run.of("shelf", "--import", csv.toString(), "--out", out.toString());

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines())
        .containsExactly(
            "swatchwright: " + csv + ": nothing was read from it, because of 2 lines",
            "  line 3: medium is 'milk', must be one of acrylic, lacquer, enamel, oil, water",
            "  line 4: has 1 fields, must have 2 as the first line");
    assertThat(out).doesNotExist();
  }

  @ParameterizedTest(name = "shelf {0} is refused: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --import none.csv|--import: there is no file none.csv
          --import bench.xls|--import: bench.xls must end in .csv, .gpl, .json, or .txt (CGATS text); the swatches of a photo are read with --regions
          --export bench.xls|--export: bench.xls must end in .csv, .gpl or .json
          --out bench.json|--out, --medium, --regions and --replace go with --import or --add
          --import none.csv --medium milk|--medium is 'milk', must be one of acrylic, lacquer, enamel, oil, water
          --table bench.xls|--table: bench.xls must end in .csv, .gpl or .json
          """)
  void refuses(String options, String message) {
    Run run = Run.of(("shelf " + options).split(" ", -1));

    assertThat(run.err().strip()).isEqualTo("swatchwright: " + message);
    assertThat(run.status()).isEqualTo(2);
  }

  @Test
  void recipesAreWrittenAsTables(@TempDir Path folder) throws IOException {
    Path csv = folder.resolve("recipes.csv");
    Path palette = folder.resolve("recipes.gpl");
    Path json = folder.resolve("recipes.json");
    String[] match = {"match", "#707A70", "--shelf", Run.fiveShelf(), "--alternatives", "2"};

    String printed = done(Run.with(match, "--json", "--table", json.toString()));
    done(Run.with(match, "--table", csv.toString()));
    done(Run.with(match, "--table", palette.toString()));

    JsonNode best = new ObjectMapper().readTree(printed).get("recipes").get(0);
    assertThat(Files.readString(json)).isEqualTo(printed);
    assertThat(Files.readAllLines(csv)).hasSize(3);
    assertThat(Files.readAllLines(csv).get(0)).startsWith("drops,predicted.lab,predicted.srgb,");
    assertThat(Files.readAllLines(csv).get(1)).contains(best.get("predicted").get("srgb").asText());
    assertThat(Files.readAllLines(palette)).hasSize(5).first().isEqualTo("GIMP Palette");
  }

  @Test
  void aTableIsOfEveryCommand(@TempDir Path folder) throws IOException {
    Path csv = folder.resolve("one.csv");

    done("compare", "#123456", "#654321", "--table", csv.toString());

    assertThat(Files.readAllLines(csv)).hasSize(2);
    assertThat(Files.readAllLines(csv).get(0)).contains("reference.srgb").contains("deltaE00");
  }
}
