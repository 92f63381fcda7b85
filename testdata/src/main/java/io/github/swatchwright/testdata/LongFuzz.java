package io.github.swatchwright.testdata;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A long run of spoilt inputs over subjects that take little time each. Under JaCoCo's agent it
 * keeps each input that reaches new code, spoils those further, and writes the fewest that reach
 * the same.
 */
public final class LongFuzz {
  private static final int BATCH = 1000;

  private final Optional<CodeProbes> probes;
  private final List<String> words;
  private final int inputs;
  private final Set<String> findings = new LinkedHashSet<>();

  private LongFuzz(Optional<CodeProbes> probes, List<String> words, int inputs) {
    this.probes = probes;
    this.words = List.copyOf(words);
    this.inputs = inputs;
  }

  /**
   * Runs, and shows one input for each place where something was found.
   *
   * @param subjects what to feed
   * @param words what parsers stumble over
   * @param args how many inputs a subject; optionally a seed other than 1, and then the resources'
   *     folder to write the corpus to and the subject's name, when not all
   * @return how many places
   */
  public static int run(List<? extends FuzzSubject> subjects, List<String> words, String... args)
      throws IOException {
    LongFuzz fuzz = new LongFuzz(CodeProbes.ofProcess(), words, Integer.parseInt(args[0]));
    long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
    System.out.println("subject         inputs     taken  a second  slowest s  corpus");
    for (FuzzSubject subject : subjects) {
      if (args.length < 4 || subject.name().equals(args[3])) {
        List<byte[]> kept = fuzz.run(subject, seed);
        if (args.length > 2) {
          fuzz.write(subject, kept, Path.of(args[2]));
        }
      }
    }
    System.out.println("findings: " + fuzz.findings.size());
    return fuzz.findings.size();
  }

  /** The corpus after the run: what there was before it, and what reached new code. */
  private List<byte[]> run(FuzzSubject subject, long seed) {
    List<byte[]> corpus = new ArrayList<>(subject.corpus());
    BitSet reached = reached(subject, corpus);
    long start = processorTime();
    long slowest = 0;
    int taken = 0;
    for (int done = 0; done < inputs; done += BATCH) {
      long batchSeed = seed * inputs + done;
      Mutations mutations = new Mutations(corpus, words, batchSeed);
      for (int i = 0; i < BATCH; i++) {
        byte[] input = mutations.next();
        long before = System.nanoTime();
        taken += feed(subject, input) ? 1 : 0;
        slowest = Math.max(slowest, System.nanoTime() - before);
      }
      if (probes.isPresent() && grows(reached, probes.get().reached())) {
        keepWhatIsNew(subject, batchSeed, corpus, reached);
      }
    }
    double seconds = (processorTime() - start) / 1e9;
    System.out.printf(
        Locale.ROOT,
        "%-12s%10d%10d%10.0f%11.3f%8d%n",
        subject.name(),
        inputs,
        taken,
        inputs / seconds,
        slowest / 1e9,
        corpus.size());
    return corpus;
  }

  private boolean feed(FuzzSubject subject, byte[] input) {
    try {
      return subject.feed(input);
    } catch (RuntimeException | Error finding) {
      Throwable cause = finding.getCause() == null ? finding : finding.getCause();
      String place = cause.getClass().getName() + " at " + cause.getStackTrace()[0];
      if (findings.add(place)) {
        System.out.println(subject.name() + ": " + finding.getMessage() + "\n  " + place);
        System.out.println("  " + FuzzCorpus.line(input));
      }
      return false;
    }
  }

  private static long processorTime() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static boolean grows(BitSet reached, BitSet now) {
    BitSet fresh = (BitSet) now.clone();
    fresh.andNot(reached);
    return !fresh.isEmpty();
  }

  /** Goes through a batch again, by halves as long as they hold something new. */
  private void keepWhatIsNew(FuzzSubject subject, long seed, List<byte[]> corpus, BitSet reached) {
    List<byte[]> batch = new ArrayList<>();
    Mutations mutations = new Mutations(corpus, words, seed);
    for (int i = 0; i < BATCH; i++) {
      batch.add(mutations.next());
    }
    keepWhatIsNew(subject, batch, corpus, reached);
  }

  private void keepWhatIsNew(
      FuzzSubject subject, List<byte[]> batch, List<byte[]> corpus, BitSet reached) {
    BitSet now = reached(subject, batch);
    if (!grows(reached, now)) {
      return;
    }
    if (batch.size() == 1) {
      corpus.addAll(batch);
      reached.or(now);
      return;
    }
    int half = batch.size() / 2;
    keepWhatIsNew(subject, batch.subList(0, half), corpus, reached);
    keepWhatIsNew(subject, batch.subList(half, batch.size()), corpus, reached);
  }

  /** What those inputs reach; nothing when nobody watches. */
  private BitSet reached(FuzzSubject subject, List<byte[]> inputs) {
    probes.ifPresent(CodeProbes::execution);
    inputs.forEach(input -> feed(subject, input));
    return probes.map(CodeProbes::reached).orElseGet(BitSet::new);
  }

  /** Writes the fewest inputs that reach what all reach, and what they reach in JaCoCo's form. */
  private void write(FuzzSubject subject, List<byte[]> corpus, Path folder) throws IOException {
    BitSet reached = reached(subject, subject.seeds());
    List<byte[]> fewest = new ArrayList<>();
    List<byte[]> shortFirst = new ArrayList<>(corpus);
    shortFirst.sort(Comparator.comparingInt(input -> input.length));
    for (byte[] input : shortFirst) {
      BitSet now = reached(subject, List.of(input));
      if (grows(reached, now)) {
        fewest.add(input);
        reached.or(now);
      }
    }
    FuzzCorpus.write(folder, subject.name(), fewest);
    if (probes.isPresent()) {
      reached(subject, subject.seeds());
      fewest.forEach(input -> feed(subject, input));
      subject.seeds().forEach(input -> feed(subject, input));
      Path execution = Files.createDirectories(Path.of("target", "fuzz"));
      Files.write(execution.resolve(subject.name() + ".exec"), probes.get().execution());
    }
  }
}
