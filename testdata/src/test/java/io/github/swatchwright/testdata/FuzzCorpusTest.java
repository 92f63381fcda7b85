package io.github.swatchwright.testdata;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FuzzCorpusTest {
  @Test
  void everyByteSurvivesItsLine() {
    byte[] all = new byte[256];
    for (int i = 0; i < all.length; i++) {
      all[i] = (byte) i;
    }
    String line = FuzzCorpus.line(all);
    assertThat(line).doesNotContain("\n", "\r").contains("abc").contains("\\x00", "\\x5C", "\\xFF");
    assertThat(FuzzCorpus.input(line)).isEqualTo(all);
  }
}
