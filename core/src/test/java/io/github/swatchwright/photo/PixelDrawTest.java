package io.github.swatchwright.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PixelDrawTest {

  /** The places of those kept, of so many pixels in rows of that width. */
  private static long[] drawn(int width, int rows) {
    PixelDraw draw = new PixelDraw();
    for (int row = 0; row < rows; row++) {
      int last = -1;
      for (int i = draw.wanted(width); i >= 0; i = draw.wanted(width)) {
        assertThat(i).isBetween(last + 1, width - 1);
        last = i;
        draw.keep((long) row * width + i);
      }
      draw.passed(width);
    }
    return draw.pixels();
  }

  @Test
  void ofFewPixelsAllAreKept() {
    long[] all = drawn(100, 80);

    assertThat(all).hasSize(8000).isSorted().doesNotHaveDuplicates();
    assertThat(all[7999]).isEqualTo(7999);
  }

  // 640,000 pixels and room for 8,192: every 128th is kept, once seven halvings have made room.
  @ParameterizedTest
  @CsvSource({"800, 800", "1, 640000", "640000, 1"})
  void ofManySomeThousandAreKeptEvenlyAndInOrder(int width, int rows) {
    long[] kept = drawn(width, rows);

    assertThat(kept).isSorted().doesNotHaveDuplicates().hasSize(5000);
    long[] inStretches = new long[5000];
    for (int i = 0; i < 5000; i++) {
      inStretches[i] = kept[i] / 128;
    }
    // One in each stretch of 128, or now and then in the one beside it.
    assertThat(Arrays.stream(inStretches).distinct().count()).isGreaterThan(4500);
  }

  // Stripes of two pixels and of a picture's width: about half of those kept lie in each.
  @ParameterizedTest
  @CsvSource({"2", "4", "8", "16", "32", "64", "128", "256", "512", "800"})
  void stripesCannotHide(int period) {
    long[] kept = drawn(800, 800);

    long even = Arrays.stream(kept).filter(at -> at % period < period / 2).count();
    // Three standard deviations of 5,000 tosses of a coin are 2 %.
    assertThat((double) even / kept.length).isBetween(0.47, 0.53);
  }
}
