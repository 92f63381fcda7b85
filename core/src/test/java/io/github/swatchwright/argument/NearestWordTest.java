package io.github.swatchwright.argument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestWordTest {
  private static final List<String> WORDS = List.of("match", "reach", "shelf", "sheet", "ladder");

  @Test
  void aSlipOfTheKeyboardIsOne() {
    assertThat(NearestWord.to("mtach", WORDS, 1)).contains("match");
    assertThat(NearestWord.to("Match", WORDS, 0)).contains("match");
    assertThat(NearestWord.to("shel", WORDS, 1)).contains("shelf");
    assertThat(NearestWord.to("shlef", WORDS, 1)).contains("shelf");
    assertThat(NearestWord.to("laddder", WORDS, 1)).contains("ladder");
  }

  @Test
  void moreSlipsThanAreBelievedLeadNowhere() {
    assertThat(NearestWord.to("foo", WORDS, 1)).isEmpty();
    assertThat(NearestWord.to("", WORDS, 1)).isEmpty();
    assertThat(NearestWord.to("mtahc", WORDS, 1)).isEmpty();
    assertThat(NearestWord.to("mtahc", WORDS, 2)).contains("match");
  }

  @Test
  void eachLetterTooManyOrTooFewIsASlip() {
    assertThat(NearestWord.to("", List.of("ab"), 2)).contains("ab");
    assertThat(NearestWord.to("", List.of("ab"), 1)).isEmpty();
    assertThat(NearestWord.to("xshelfxx", WORDS, 3)).contains("shelf");
    assertThat(NearestWord.to("xshelfxx", WORDS, 2)).isEmpty();
    assertThat(NearestWord.to("ladder".repeat(100_000), WORDS, 2)).isEmpty();
  }

  @Test
  void lettersAreCountedInLowerCase() {
    // Unicode's SpecialCasing.txt: the capital I with a dot has two characters in lower case.
    assertThat("\u0130").hasSize(1);
    assertThat(NearestWord.to("i\u0307", List.of("\u0130"), 0)).contains("\u0130");
  }
}
