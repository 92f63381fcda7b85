package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Srgb;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StyleTest {

  @ParameterizedTest
  @EnumSource
  void needsNoEscapingAndNothingFromElsewhere(Style style) {
    assertThat(Markup.escaped(style.text())).isEqualTo(style.text());
    assertThat(style.text()).doesNotContain("url(", "@import", "http");
  }

  // WCAG 2.2, success criterion 1.4.3: 4.5:1; contrast is (Y1 + 0.05) : (Y2 + 0.05), Y of 1.
  @Test
  void textStandsOutFromPaperInEveryScheme() {
    Pattern scheme =
        Pattern.compile("--paper: (#\\w{6});\\s*--ink: (#\\w{6});\\s*--soft: (#\\w{6})");
    Matcher found = scheme.matcher(Style.PAGE.text());
    int schemes = 0;
    while (found.find()) {
      double paper = luminance(found.group(1));
      assertThat(contrast(paper, luminance(found.group(2)))).isGreaterThan(4.5);
      assertThat(contrast(paper, luminance(found.group(3)))).isGreaterThan(4.5);
      schemes++;
    }
    assertThat(schemes).as("light, dark and print").isEqualTo(3);
  }

  private static double luminance(String hex) {
    return Srgb.parse(hex).toXyz().y() / 100;
  }

  private static double contrast(double one, double other) {
    return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
  }
}
