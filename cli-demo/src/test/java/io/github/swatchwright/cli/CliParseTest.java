package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.FuzzSubject;
import io.github.swatchwright.testdata.Mutations;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What long runs of {@link CliParseFuzz} kept, tried again, and a short run from there. */
class CliParseTest {
  private static final int INPUTS = 2000;

  private static List<FuzzSubject> subjects() {
    return CliParseFuzz.SUBJECTS;
  }

  @ParameterizedTest
  @MethodSource("subjects")
  void readsOrRefusesWhateverComes(FuzzSubject subject) {
    for (byte[] seed : subject.seeds()) {
      assertThat(subject.feed(seed)).as(new String(seed, StandardCharsets.UTF_8)).isTrue();
    }
    List<byte[]> corpus = subject.corpus();
    // The corpus knows inputs that are refused as well.
    assertThat(corpus.stream().filter(subject::feed).count())
        .isBetween((long) subject.seeds().size(), corpus.size() - 1L);
    Mutations mutations = new Mutations(corpus, CliParseFuzz.WORDS, subject.name().hashCode());
    for (int i = 0; i < INPUTS; i++) {
      subject.feed(mutations.next());
    }
  }
}
