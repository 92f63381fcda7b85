package io.github.swatchwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.json.SheetLayoutJson;
import io.github.swatchwright.paint.Medium;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetCodeTest {
  private static final List<String> LABELS =
      List.of("Yellow oxide", "Öl — rot", "=Titanium white:5, Yellow oxide:1");

  @Test
  void aCodeReadsBackAsThePageThatItWasMadeFrom() {
    SheetPage page =
        SheetPage.pages(Paper.LETTER, LABELS, 12, SheetPage.shelfCode("Bench"), Medium.ENAMEL)
            .get(0);
    assertThat(SheetCode.parse(SheetCode.toText(page))).isEqualTo(page);
  }

  @Test
  void aLayoutReadsBackAsItWasWritten() {
    SheetLayout layout = SheetLayout.of(SheetPage.of(Paper.A5, LABELS));
    assertThat(SheetLayoutJson.parse(SheetLayoutJson.toText(layout), "layout")).isEqualTo(layout);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://example.org/",
        "SWATCHSHEET2 A4 3x6 1/2 5F3A9C - acrylic\nWhite",
        "SWATCHSHEET1 A9 3x6 1/2 5F3A9C - acrylic\nWhite",
        "SWATCHSHEET1 A4 3x6 3/2 5F3A9C - acrylic\nWhite",
        "SWATCHSHEET1 A4 999999999999x6 1/2 5F3A9C - acrylic\nWhite",
        "SWATCHSHEET1 A4 3x6 1/2 ../../ - acrylic\nWhite",
        "SWATCHSHEET1 A4 3x6 1/2 5F3A9C - acrylic",
        "SWATCHSHEET1 A4 3x6 1/2 5F3A9C - acrylic\n\u001b[31mWhite",
        "SWATCHSHEET1 A4 1x1 1/2 5F3A9C - acrylic\nWhite\nBlack",
        "SWATCHSHEET1 A4 1x2 1/1 5F3A9C - acrylic\nWhite\nWhite"
      })
  void hostileCodesAreRefusedInOneLine(String text) {
    assertThatThrownBy(() -> SheetCode.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n").doesNotContain("\u001b"));
  }

  @Test
  void aLongListFillsPages() {
    List<String> names = IntStream.range(0, 40).mapToObj(i -> "Paint " + i).toList();
    List<SheetPage> pages =
        SheetPage.pages(Paper.A4, names, 18, SheetPage.NO_SHELF, Medium.ACRYLIC);
    assertThat(pages).hasSize(3);
    assertThat(pages.stream().flatMap(page -> page.labels().stream()).toList()).isEqualTo(names);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 12, 13, 24})
  void fieldsDontOverlap(int count) {
    List<String> names = IntStream.range(0, count).mapToObj(i -> "Paint " + i).toList();
    for (Paper paper : count > 12 ? List.of(Paper.A4, Paper.LETTER) : List.of(Paper.values())) {
      List<SheetField> fields = SheetLayout.of(SheetPage.of(paper, names)).fields();
      for (int i = 0; i < count; i++) {
        for (int j = 0; j < i; j++) {
          SheetField one = fields.get(i);
          SheetField other = fields.get(j);
          assertThat(
                  one.paper().right() < other.black().left()
                      || other.paper().right() < one.black().left()
                      || one.black().bottom() < other.black().top()
                      || other.black().bottom() < one.black().top())
              .isTrue();
        }
      }
    }
  }

  @Test
  void tooManyFieldsForThePaperAreRefused() {
    List<String> names = IntStream.range(0, 24).mapToObj(i -> "Paint " + i).toList();
    assertThatThrownBy(() -> SheetLayout.of(SheetPage.of(Paper.A5, names)))
        .hasMessageContaining("no room for 12 rows of fields on A5");
  }
}
