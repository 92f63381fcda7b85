package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wrong use and bad input end with status 2 and one line, which names place and range. */
class RefusalTest {
  private static final String HEAD =
      "{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"s\",\"paints\":[";

  private static void assertRefused(Run run, String message) {
    assertThat(run.err()).isEqualTo("swatchwright: " + message + System.lineSeparator());
    assertThat(run.out()).isEmpty();
    assertThat(run.status()).isEqualTo(2);
  }

  @ParameterizedTest(name = "{0} is refused: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"name" "Grey"}|line 1, column 73: a colon is missing between a name and its value, before "
          {"name":"Grey","medium":"acrylic","shade":1}|$.paints[0].shade: is an unknown field; known here: name, medium, finish, masstone, make, hiding, drawdown, dropMillilitres, swatchError, effect, notes, optics, bottle, use, thinned
          |$.paints: holds 0 items, must hold 1 to 10000
          {"name":"Grey","medium":"acrylic"},{"name":"Grey","medium":"oil"}|$.paints[1].name: is "Grey", the name of $.paints[0] already, must be another
          {"name":"Grey","medium":"acrylic","swatchError":NaN}|$.paints[0].swatchError: is NaN, must be a finite number within ±1.7976931348623157E308
          {"name":"Grey","medium":"acrylic","swatchError":1e999}|$.paints[0].swatchError: is 1e999, must be a finite number within ±1.7976931348623157E308
          {"name":"Grey","medium":"acrylic","masstone":{"lab":[101,0,0]}}|$.paints[0].masstone.lab[0]: is 101, must be within [0.0, 100.0]
          """)
  void refusesAShelf(String paints, String message, @TempDir Path folder) throws IOException {
    Path file = folder.resolve("my.json");
    Files.writeString(file, HEAD + (paints == null ? "" : paints) + "]}");

    assertRefused(Run.of("shelf", "--shelf", file.toString()), file + ": " + message);
  }

  @Test
  void refusesAShelfThatIsNotThere(@TempDir Path folder) {
    Path file = folder.resolve("none.json");

    assertRefused(Run.of("shelf", "--shelf", file.toString()), "--shelf: there is no file " + file);
  }

  @Test
  void refusesADirectoryForAShelf(@TempDir Path folder) {
    assertRefused(
        Run.of("shelf", "--shelf", folder.toString()),
        "--shelf: " + folder + " is a directory, must be a file");
  }

  @Test
  void refusesAShelfOfFiftyMegabytes(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("big.json");
    try (RandomAccessFile big = new RandomAccessFile(file.toFile(), "rw")) {
      big.setLength(50_000_000);
    }

    assertRefused(
        Run.of("match", "#8A4B2A", "--shelf", file.toString()),
        file + ": $: is longer than 10000000 bytes, the most that is read");
  }

  @ParameterizedTest(name = "match {0} {1} {2} is refused: {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          `#8A4B2A`|--paints|9|--paints is 9, must be within [1, 4]
          `#8A4B2A`|--paints|0|--paints is 0, must be within [1, 4]
          `#8A4B2A`|--paints|two|--paints is 'two', must be a whole number
          `#8A4B2A`|--max-drops|41|--max-drops is 41, must be within [1, 40]
          `#8A4B2A`|--alternatives|51|--alternatives is 51, must be within [1, 50]
          `#8A4B2A`|--medium|milk|--medium is 'milk', must be one of acrylic, lacquer, enamel, oil, water
          `#8A4B2A`|--light|D93|--light: 'D93' is not an illuminant, must be one of D65, D50, A, F11, LED-B3
          `#8A4B2A`|--only|Whit|--only: no paint 'Whit' on the shelf 'Five invented paints'; nearest is 'White'
          `#8A4B2A`|--without|White, Blak|--without: no paint 'Blak' on the shelf 'Five invented paints'; nearest is 'Black'
          `#8A4B2A`|--only|Brass|no paint is left to choose from on the shelf 'Five invented paints'
          `#8A4B2A`|--colour|red|there is no option '--colour'; 'swatchwright match --help' lists them
          `#8A4B2`|--paints|2|'#8A4B2' is not a colour of the form #RRGGBB with six digits 0 to F
          lab(120, 0, 0)|--paints|2|L* in 'lab(120, 0, 0)' is 120.0, must be within [0.0, 100.0]
          lab(50, NaN, 0)|--paints|2|'NaN' in 'lab(50, NaN, 0)' is not a number
          lab(50, 1e999, 0)|--paints|2|a* in 'lab(50, 1e999, 0)' is Infinity, must be within [-160.0, 160.0]
          Rusty|--paints|2|no paint 'Rusty' on the shelf 'Five invented paints'; nearest is 'Rust' (a colour is #RRGGBB, rgb(r, g, b), lab(L, a, b) or the name of a paint)
          photo.jpg@10,20,5,5|--paints|2|there is no file photo.jpg
          """)
  void refusesArguments(String target, String option, String value, String message) {
    assertRefused(Run.of("match", target, option, value, "--shelf", Run.fiveShelf()), message);
  }

  @ParameterizedTest(name = "predict {0} is refused: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          White:0|parts of 'White' is 0.0, must be a finite number above 0
          White:NaN|'NaN' in the mix 'White:NaN' is not a number of parts
          White, Black|'White' in the mix 'White, Black' has no number of parts, must be 'White:3' or the like
          White:x|'x' in the mix 'White:x' is not a number of parts
          White:1, White:2|the mix names 'White' twice
          White:1, Rust:1|a pot holds one medium, but 'White' is acrylic and 'Rust' is enamel
          Brass:1|'Brass' is metallic, which the model doesn't hold for, so it can't be computed with
          Blak:1|no paint 'Blak' on the shelf 'Five invented paints'; nearest is 'Black'
          """)
  void refusesMixes(String mix, String message) {
    assertRefused(Run.of("predict", mix, "--shelf", Run.fiveShelf()), message);
  }

  @Test
  void refusesWrongUse() {
    assertRefused(Run.of(), "name a command; 'swatchwright --help' lists them");
    assertRefused(Run.of("blend"), "there is no command 'blend'; 'swatchwright --help' lists them");
    assertRefused(
        Run.of("compare", "#123456"), "missing: B; 'swatchwright compare --help' shows an example");
    assertRefused(
        Run.of("predict"), "missing: MIX; 'swatchwright predict --help' shows an example");
    assertRefused(
        Run.of("compare", "#123456", "#123456", "#123456"),
        "'#123456' is one argument too many; quote what has blanks in it, 'swatchwright compare"
            + " --help' tells what is asked for");
  }

  @Test
  void keepsOneLineWhateverAnArgumentHolds() {
    Run run = Run.of("match", "no\nsuch\r\npaint");

    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.status()).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "compare #123456 #654321 --card missing-folder/card.html",
        "ladder #303030 #A0A0A0 --picture missing-folder/look.svg",
        "ladder #303030 #A0A0A0 --picture look.png"
      })
  void showsNothingWhenAPictureCannotBeWritten(String line) {
    Run run = Run.of((line + " --shelf " + Run.fiveShelf()).split(" "));
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).containsPattern("--(card|picture): ");
    assertThat(run.status()).isEqualTo(2);
  }
}
