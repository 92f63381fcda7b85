package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.Mutations;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Spoilt command lines end with a result or one line, never with an internal fault. */
class CommandLineFuzzTest {
  private static final int LINES = 1200;

  /** One argument a line. */
  private static final List<String> GOOD =
      List.of(
          "compare\n#808080\n#828282",
          "compare\nlab(50, 1, 2)\nRust\n--json",
          "predict\nWhite:2, Black:1\nRust:0.5\n--light\nA",
          "match\n#8A4B2A\n--max-drops\n4\n--paints\n2\n--alternatives\n3",
          "match\nlab(40, 20, 20)\n--max-drops\n3\n--only\nWhite\n--without\nBlack",
          "correct\nWhite:6, Black:2\n--measured\n#C3907F\n--target\n#B47A68",
          "coat\n--base\n#808080\n--coats\nWhite:2@1:4 over 60%",
          "ladder\n#3A2418\n#B5622E\n--rungs\n3",
          "shelf\n--json",
          "--help");

  private static final List<String> WORDS =
      List.of(
          "\n", "--", "--json", "-1", "0", "NaN", "1e99", "%", "@", ":", ",", "'", "\"", "ß",
          "--help");

  /** Options that write or read files, and slow calls: not for this test. */
  private static final Pattern LEFT_OUT =
      Pattern.compile(
          "--(out|card|notebook|preview|plot|import|export|catalogue|shelf)|[/\\\\~]"
              + "|--(max-drops|paints|rungs)[=\\n]*\\d{2}");

  @Test
  void endInAResultOrOneLine() {
    List<byte[]> seeds = GOOD.stream().map(l -> l.getBytes(StandardCharsets.UTF_8)).toList();
    Mutations mutations = new Mutations(seeds, WORDS, 5);
    int done = 0;
    for (int i = 0; i < LINES; i++) {
      String line = new String(mutations.next(), StandardCharsets.UTF_8);
      if (LEFT_OUT.matcher(line).find()) {
        continue;
      }
      String[] args = (line + "\n--shelf\n" + Run.fiveShelf()).split("\n", -1);
      Run run = Run.of(args);
      assertThat(run.status()).as("%s: %s", String.join(" ", args), run.err()).isIn(0, 2);
      if (run.status() == 2) {
        assertThat(run.out()).as(line).isEmpty();
        assertThat(run.err().lines()).as(line).hasSize(1);
      } else {
        done++;
      }
    }
    assertThat(done).isPositive();
  }
}
