package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class CorrectCommandTest {

  private static Run correct(String mix, String measured, String target, String... more) {
    String[] args = {
      "correct", mix, "--measured", measured, "--target", target, "--shelf", Run.fiveShelf()
    };
    String[] all = Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return Run.of(all);
  }

  @Test
  void aPotThatIsTooLightGetsBlackByWholeDrops() throws Exception {
    Run run = correct("White:10, Black:1", "lab(70, -1, 0)", "lab(60, -1, 0)", "--json");

    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    JsonNode result = new ObjectMapper().readTree(run.out());
    assertThat(result.get("additions")).isNotEmpty();
    assertThat(result.get("additions").toString()).contains("\"Black\"");
    assertThat(result.get("deltaE00").asDouble()).isLessThan(result.get("now").asDouble());
    assertThat(result.get("predicted").get("srgb").asText()).matches("#[0-9A-F]{6}");
    assertThat(result.get("startAfresh").asBoolean()).isFalse();
  }

  @Test
  void saysInWordsWhatToDo() {
    assertThat(correct("White:10, Black:1", "lab(70, -1, 0)", "lab(70, -1, 0)").out())
        .isEqualTo("The pot is ΔE00 0.0 from the target.\nThat is near enough: add nothing.\n");
    assertThat(correct("White:1, Black:9", "lab(25, 0, 0)", "lab(80, 0, 60)").out())
        // Yellow is in neither. White with a touch of green comes nearer to it than white alone,
        // and both much nearer than this black pot gets.
        .contains("  add ")
        .containsPattern(
            "Start afresh instead: White:[0-9]+, Grün, dunkel:[0-9] \\([0-9]+ drops; expect ΔE00 ");
  }

  @Test
  void badInputIsRefusedInOneLine() {
    refused(correct("Wite:1", "#808080", "#808080"), "no paint 'Wite'");
    refused(correct("White:0", "#808080", "#808080"), "must be a finite number above 0");
    refused(correct("White:1, Brass:1", "#808080", "#808080"), "metallic");
    refused(correct("White:1", "bluish", "#808080"), "no paint 'bluish'");
  }

  private static void refused(Run run, String message) {
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains(message);
  }
}
