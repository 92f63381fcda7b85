package io.github.swatchwright.testdata;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Spoils good inputs, for tests of what reads them: bytes flipped, parts cut out, doubled or
 * swapped in from another input, words that parsers stumble over, and whole names or numbers put in
 * each other's place, so that much of what comes out still has its brackets and commas right. The
 * same seed gives the same inputs.
 */
public final class Mutations {
  private static final int MOST_CHANGES = 6;
  private static final int LARGEST = 20_000;

  /** What stands between the names and numbers of most formats. */
  private static final String BETWEEN = "\n\r\t ,:;{}[]()\"@=%/#";

  private final List<byte[]> seeds;
  private final List<byte[]> words;
  private final SplittableRandom random;

  /**
   * A source of spoilt inputs.
   *
   * @param seeds good inputs, at least one
   * @param words what to put in, at least one
   * @param seed of the sequence
   */
  public Mutations(List<byte[]> seeds, List<String> words, long seed) {
    this.seeds = List.copyOf(seeds);
    this.words = words.stream().map(word -> word.getBytes(StandardCharsets.UTF_8)).toList();
    this.random = new SplittableRandom(seed);
  }

  /** The next input, at most 20,000 bytes. */
  public byte[] next() {
    byte[] input = pick(seeds);
    int changes = 1 + random.nextInt(1 + random.nextInt(MOST_CHANGES));
    for (int change = 0; change < changes; change++) {
      input = changed(input);
    }
    return Arrays.copyOf(input, Math.min(input.length, LARGEST));
  }

  private byte[] changed(byte[] input) {
    int from = random.nextInt(input.length + 1);
    int to = Math.min(input.length, from + 1 + random.nextInt(1 + random.nextInt(40)));
    return switch (random.nextInt(8)) {
      case 0 -> flipped(input);
      case 1 -> spliced(input, from, to, new byte[0]);
      case 2 -> spliced(input, from, from, Arrays.copyOfRange(input, from, to));
      case 3 -> spliced(input, from, from, pick(words));
      case 4 -> spliced(input, from, to, pick(words));
      case 5 -> spliced(input, from, to, part(pick(seeds)));
      default -> exchanged(input, from);
    };
  }

  /** The name or number at that place gives way to another, or to a word. */
  private byte[] exchanged(byte[] input, int at) {
    byte[] other = pick(random.nextInt(4) == 0 ? words : seeds);
    int there = random.nextInt(other.length + 1);
    byte[] piece = Arrays.copyOfRange(other, start(other, there), end(other, there));
    return spliced(input, start(input, at), end(input, at), piece);
  }

  private static int start(byte[] text, int at) {
    int start = at;
    while (start > 0 && BETWEEN.indexOf(text[start - 1]) < 0) {
      start--;
    }
    return start;
  }

  private static int end(byte[] text, int at) {
    int end = at;
    while (end < text.length && BETWEEN.indexOf(text[end]) < 0) {
      end++;
    }
    return end;
  }

  private byte[] flipped(byte[] input) {
    byte[] copy = input.clone();
    if (copy.length > 0) {
      copy[random.nextInt(copy.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return copy;
  }

  private byte[] part(byte[] whole) {
    int from = random.nextInt(whole.length + 1);
    int to = Math.min(whole.length, from + random.nextInt(200));
    return Arrays.copyOfRange(whole, from, to);
  }

  private byte[] pick(List<byte[]> from) {
    return from.get(random.nextInt(from.size()));
  }

  private static byte[] spliced(byte[] input, int from, int to, byte[] middle) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(input, 0, from);
    out.writeBytes(middle);
    out.write(input, to, input.length - to);
    return out.toByteArray();
  }
}
