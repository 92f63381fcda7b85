package io.github.swatchwright.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BoxWordTest {
  private final Random random = new Random(3);
  private final float[] low = new float[3];
  private final float[] high = new float[3];
  private final float[] from = new float[3];
  private final float[] to = new float[3];

  private void draw(float middle, float range, float[] least, float[] most) {
    for (int i = 0; i < 3; i++) {
      float a = middle + range * (random.nextFloat() - 0.5f);
      float b = a + range * 0.3f * random.nextFloat() * random.nextFloat();
      least[i] = a;
      most[i] = b;
    }
  }

  private boolean meet() {
    for (int i = 0; i < 3; i++) {
      if (low[i] > to[i] || high[i] < from[i]) {
        return false;
      }
    }
    return true;
  }

  @Test
  void boxesThatMeetAreNeverToldApartInsideTheRangeOrOutside() {
    int apart = 0;
    for (int i = 0; i < 200_000; i++) {
      boolean lab = i % 2 == 0;
      draw(lab ? 20 : 0.6f, lab ? 500 : 1.5f, low, high);
      draw(lab ? 20 : 0.6f, lab ? 500 : 1.5f, from, to);
      long box = lab ? BoxWord.ofLab(low, high) : BoxWord.ofF(low, high);
      long region = BoxWord.region(lab ? BoxWord.ofLab(from, to) : BoxWord.ofF(from, to));
      assertThat(box).isNotZero();
      assertThat(BoxWord.isLab(box)).isEqualTo(lab);
      if (meet()) {
        assertThat(BoxWord.meets(region, box)).isTrue();
      } else if (!BoxWord.meets(region, box)) {
        apart++;
      }
    }
    assertThat(apart).isGreaterThan(100_000);
  }

  @Test
  void theBoxAroundTwoMeetsWhateverOneOfThemMeets() {
    for (int i = 0; i < 50_000; i++) {
      draw(20, 300, low, high);
      long one = BoxWord.ofLab(low, high);
      draw(20, 300, low, high);
      long other = BoxWord.ofLab(low, high);
      long around = BoxWord.around(one, other);
      draw(20, 300, from, to);
      long region = BoxWord.region(BoxWord.ofLab(from, to));
      assertThat(BoxWord.isLab(around)).isTrue();
      assertThat(BoxWord.meets(region, around))
          .isIn(true, BoxWord.meets(region, one) || BoxWord.meets(region, other));
      for (int axis = 0; axis < 3; axis++) {
        assertThat(BoxWord.lowLab(around, axis))
            .isEqualTo(Math.min(BoxWord.lowLab(one, axis), BoxWord.lowLab(other, axis)));
        assertThat(BoxWord.highLab(around, axis))
            .isEqualTo(Math.max(BoxWord.highLab(one, axis), BoxWord.highLab(other, axis)));
      }
    }
  }
}
