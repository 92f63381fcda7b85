package io.github.swatchwright.fuzz;

import io.github.swatchwright.testdata.FuzzCorpus;
import io.github.swatchwright.testdata.Mutations;
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
 * A long run of spoilt inputs over every {@link ParseTarget}, as a program. Under JaCoCo's agent it
 * keeps each input that reaches new code, spoils those further, and writes the fewest that reach
 * the same.
 */
public final class ParseFuzz {
  private static final int BATCH = 1000;

  private final Optional<CodeProbes> probes;
  private final int inputs;
  private final Set<String> findings = new LinkedHashSet<>();

  private ParseFuzz(Optional<CodeProbes> probes, int inputs) {
    this.probes = probes;
    this.inputs = inputs;
  }

  /**
   * Runs; ends with status 1 when it found something, of which it shows one input for each place.
   *
   * @param args how many inputs a target; optionally a seed other than 1, and then the resources'
   *     folder to write the corpus to and the target's name, when not all
   */
  public static void main(String[] args) throws IOException {
    ParseFuzz fuzz = new ParseFuzz(CodeProbes.ofProcess(), Integer.parseInt(args[0]));
    long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
    System.out.println("target          inputs     taken  a second  slowest s  corpus");
    for (ParseTarget target : ParseTarget.values()) {
      if (args.length < 4 || target.name().equals(args[3])) {
        List<byte[]> kept = fuzz.run(target, seed);
        if (args.length > 2) {
          fuzz.write(target, kept, Path.of(args[2]));
        }
      }
    }
    System.out.println("findings: " + fuzz.findings.size());
    System.exit(fuzz.findings.isEmpty() ? 0 : 1);
  }

  /** The corpus after the run: what there was before it, and what reached new code. */
  private List<byte[]> run(ParseTarget target, long seed) {
    List<byte[]> corpus = new ArrayList<>(target.corpus());
    BitSet reached = reached(target, corpus);
    long start = processorTime();
    long slowest = 0;
    int taken = 0;
    for (int done = 0; done < inputs; done += BATCH) {
      long batchSeed = seed * inputs + done;
      Mutations mutations = new Mutations(corpus, FuzzTarget.WORDS, batchSeed);
      for (int i = 0; i < BATCH; i++) {
        byte[] input = mutations.next();
        long before = System.nanoTime();
        taken += feed(target, input) ? 1 : 0;
        slowest = Math.max(slowest, System.nanoTime() - before);
      }
      if (probes.isPresent() && grows(reached, probes.get().reached())) {
        keepWhatIsNew(target, batchSeed, corpus, reached);
      }
    }
    double seconds = (processorTime() - start) / 1e9;
    System.out.printf(
        Locale.ROOT,
        "%-12s%10d%10d%10.0f%11.3f%8d%n",
        target,
        inputs,
        taken,
        inputs / seconds,
        slowest / 1e9,
        corpus.size());
    return corpus;
  }

  private boolean feed(ParseTarget target, byte[] input) {
    try {
      return target.feed(input);
    } catch (RuntimeException | Error finding) {
      Throwable cause = finding.getCause() == null ? finding : finding.getCause();
      String place = cause.getClass().getName() + " at " + cause.getStackTrace()[0];
      if (findings.add(place)) {
        System.out.println(target + ": " + finding.getMessage() + "\n  " + place);
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
  private void keepWhatIsNew(ParseTarget target, long seed, List<byte[]> corpus, BitSet reached) {
    List<byte[]> batch = new ArrayList<>();
    Mutations mutations = new Mutations(corpus, FuzzTarget.WORDS, seed);
    for (int i = 0; i < BATCH; i++) {
      batch.add(mutations.next());
    }
    keepWhatIsNew(target, batch, corpus, reached);
  }

  private void keepWhatIsNew(
      ParseTarget target, List<byte[]> batch, List<byte[]> corpus, BitSet reached) {
    BitSet now = reached(target, batch);
    if (!grows(reached, now)) {
      return;
    }
    if (batch.size() == 1) {
      corpus.addAll(batch);
      reached.or(now);
      return;
    }
    int half = batch.size() / 2;
    keepWhatIsNew(target, batch.subList(0, half), corpus, reached);
    keepWhatIsNew(target, batch.subList(half, batch.size()), corpus, reached);
  }

  /** What those inputs reach; nothing when nobody watches. */
  private BitSet reached(ParseTarget target, List<byte[]> inputs) {
    probes.ifPresent(CodeProbes::execution);
    inputs.forEach(input -> feed(target, input));
    return probes.map(CodeProbes::reached).orElseGet(BitSet::new);
  }

  /** Writes the fewest inputs that reach what all reach, and what they reach in JaCoCo's form. */
  private void write(ParseTarget target, List<byte[]> corpus, Path folder) throws IOException {
    BitSet reached = reached(target, target.seeds());
    List<byte[]> fewest = new ArrayList<>();
    List<byte[]> shortFirst = new ArrayList<>(corpus);
    shortFirst.sort(Comparator.comparingInt(input -> input.length));
    for (byte[] input : shortFirst) {
      BitSet now = reached(target, List.of(input));
      if (grows(reached, now)) {
        fewest.add(input);
        reached.or(now);
      }
    }
    FuzzCorpus.write(folder, target.name(), fewest);
    if (probes.isPresent()) {
      reached(target, target.seeds());
      fewest.forEach(input -> feed(target, input));
      target.seeds().forEach(input -> feed(target, input));
      Path execution = Files.createDirectories(Path.of("target", "fuzz"));
      Files.write(execution.resolve(target.name() + ".exec"), probes.get().execution());
    }
  }
}
