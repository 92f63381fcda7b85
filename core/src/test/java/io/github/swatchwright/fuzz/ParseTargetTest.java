package io.github.swatchwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.Mutations;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What long runs of {@link ParseFuzz} kept, tried again, and a short run from there. */
class ParseTargetTest {
  private static final int INPUTS = 2000;

  @ParameterizedTest
  @EnumSource
  void readsOrRefusesWhateverComes(ParseTarget target) {
    for (byte[] seed : target.seeds()) {
      assertThat(target.feed(seed)).as(new String(seed, StandardCharsets.UTF_8)).isTrue();
    }
    List<byte[]> corpus = target.corpus();
    assertThat(corpus).hasSizeGreaterThan(target.seeds().size());
    long kept = corpus.stream().filter(target::feed).count();
    // The corpus knows inputs that are taken and others that are refused.
    assertThat(kept).isBetween((long) target.seeds().size(), corpus.size() - 1L);
    Mutations mutations = new Mutations(corpus, FuzzTarget.WORDS, target.name().hashCode());
    for (int i = 0; i < INPUTS; i++) {
      target.feed(mutations.next());
    }
  }
}
