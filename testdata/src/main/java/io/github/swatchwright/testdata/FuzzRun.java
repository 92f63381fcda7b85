package io.github.swatchwright.testdata;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * One run of a fuzzer over one subject, or over all of them in turn: then the first byte of an
 * input chooses. It counts inputs and remembers the slowest, by processor time, and the fullest
 * heap.
 */
public final class FuzzRun {
  /** The name that stands for all subjects. */
  public static final String ALL = "ALL";

  /** So many inputs of a subject may take as long as warming up does. */
  private static final int WARM_UP = 500;

  /** No input may take longer, ns. */
  private static final long LONGEST = 1_000_000_000;

  private final List<FuzzSubject> subjects;
  private final long[] inputs;
  private final long[] taken;
  private final long[] slowest;
  private long mostHeap;
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

  private FuzzRun(List<FuzzSubject> subjects) {
    this.subjects = subjects;
    inputs = new long[subjects.size()];
    taken = new long[subjects.size()];
    slowest = new long[subjects.size()];
  }

  /**
   * A run over the subject of that name, or over all.
   *
   * @throws IllegalArgumentException when there is none of that name
   */
  public static FuzzRun of(String name, FuzzSubject... all) {
    List<FuzzSubject> chosen =
        Arrays.stream(all).filter(s -> name.equals(ALL) || name.equals(s.name())).toList();
    if (chosen.isEmpty()) {
      throw new IllegalArgumentException(
          "there is no " + name + ", must be ALL or one of " + Arrays.toString(all));
    }
    return new FuzzRun(chosen);
  }

  /**
   * Feeds one input.
   *
   * @throws AssertionError when it takes more than a second of processor time
   */
  public void feed(byte[] input) {
    int which = 0;
    byte[] content = input;
    if (subjects.size() > 1) {
      if (input.length == 0) {
        return;
      }
      which = (input[0] & 0xFF) % subjects.size();
      content = Arrays.copyOfRange(input, 1, input.length);
    }
    long before = threads.getCurrentThreadCpuTime();
    taken[which] += subjects.get(which).feed(content) ? 1 : 0;
    long took = threads.getCurrentThreadCpuTime() - before;
    mostHeap = Math.max(mostHeap, heap());
    inputs[which]++;
    if (inputs[which] > WARM_UP) {
      slowest[which] = Math.max(slowest[which], took);
      if (took > LONGEST) {
        throw new AssertionError(subjects.get(which).name() + " took " + took / 1e9 + " s");
      }
    }
  }

  /** What is in use, garbage included, in bytes. */
  private static long heap() {
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  /** What was fed so far: a line for each subject, and one for all. */
  public String report() {
    StringBuilder report = new StringBuilder("subject          inputs       taken   slowest s\n");
    for (int i = 0; i < inputs.length; i++) {
      report.append(line(subjects.get(i).name(), inputs[i], taken[i], slowest[i]));
    }
    report.append(
        line(
            "all",
            Arrays.stream(inputs).sum(),
            Arrays.stream(taken).sum(),
            Arrays.stream(slowest).max().orElse(0)));
    return report
        .append(
            String.format(
                Locale.ROOT,
                "heap at most %d MB of %d MB",
                mostHeap >> 20,
                Runtime.getRuntime().maxMemory() >> 20))
        .toString();
  }

  private static String line(String name, long inputs, long taken, long slowest) {
    return String.format(Locale.ROOT, "%-10s%13d%12d%12.3f%n", name, inputs, taken, slowest / 1e9);
  }

  /**
   * Writes what a run starts from.
   *
   * @param folder receives a file for each seed
   * @param words what parsers stumble over
   * @param dictionary receives the words in libFuzzer's format
   */
  public void writeSeeds(Path folder, List<String> words, Path dictionary) throws IOException {
    Files.createDirectories(folder);
    for (int which = 0; which < subjects.size(); which++) {
      List<byte[]> seeds = subjects.get(which).seeds();
      for (int i = 0; i < seeds.size(); i++) {
        byte[] content = seeds.get(i);
        byte[] input = content;
        if (subjects.size() > 1) {
          input = new byte[content.length + 1];
          input[0] = (byte) which;
          System.arraycopy(content, 0, input, 1, content.length);
        }
        Files.write(folder.resolve("seed-" + subjects.get(which).name() + "-" + i), input);
      }
    }
    List<String> entries = new ArrayList<>();
    words.forEach(word -> entries.add(entry(word)));
    Files.write(dictionary, entries);
  }

  /** A line of libFuzzer's dictionary format: bytes that aren't plain ASCII are escaped. */
  private static String entry(String word) {
    StringBuilder line = new StringBuilder("\"");
    for (byte b : word.getBytes(StandardCharsets.UTF_8)) {
      boolean plain = b >= ' ' && b < 0x7F && b != '"' && b != '\\';
      line.append(
          plain ? String.valueOf((char) b) : String.format(Locale.ROOT, "\\x%02X", b & 0xFF));
    }
    return line.append('"').toString();
  }
}
