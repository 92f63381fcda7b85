package io.github.swatchwright.mix;

/** Receives the progress of a long-running call, from any of its threads, one call at a time. */
@FunctionalInterface
public interface Progress {

  /** Ignores the progress. */
  Progress UNHEARD = share -> {};

  /**
   * Called as work goes on.
   *
   * @param share the part done of the whole call, 0 to 1, never falling
   */
  void reached(double share);
}
