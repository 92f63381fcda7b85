package io.github.swatchwright.testdata;

import java.util.List;
import java.util.stream.Stream;

/** A reader of outside input, for a fuzzer to feed: it takes any bytes, or refuses them. */
public interface FuzzSubject {
  /** What it is called. */
  String name();

  /** Good inputs to start from. */
  List<byte[]> seeds();

  /** The good inputs, and those that earlier runs kept. */
  default List<byte[]> corpus() {
    return Stream.concat(seeds().stream(), FuzzCorpus.of(name()).stream()).toList();
  }

  /**
   * Feeds an input.
   *
   * @return whether it was taken; refused otherwise
   * @throws AssertionError when it was neither taken nor refused as it should be
   */
  boolean feed(byte[] input);
}
