package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TypedLineTest {
  private static TypedLine asked(String... arguments) {
    return new TypedLine(List.of(arguments));
  }

  @Test
  void leavesOptionsOutInEitherForm() {
    TypedLine asked = asked("match", "#123456", "--card", "a.html", "--table=b.csv", "--json");

    assertThat(asked.without("--card", true).without("--table", true).arguments())
        .containsExactly("match", "#123456", "--json");
    assertThat(asked.without("--json", false).arguments()).doesNotContain("--json").hasSize(5);
    assertThat(asked.without("--tab", true)).isEqualTo(asked);
  }

  @Test
  void whatStandsBehindTwoDashesIsNoOption() {
    TypedLine asked = asked("match", "--json", "--", "--json");

    assertThat(asked.without("--json", false).arguments()).containsExactly("match", "--", "--json");
  }

  @Test
  void quotesForAShell() {
    assertThat(asked("match", "#8A4B2A", "it's", "a\nb", "10%,20%").toText())
        .isEqualTo("match '#8A4B2A' 'it'\\''s' 'a b' 10%,20%");
  }
}
