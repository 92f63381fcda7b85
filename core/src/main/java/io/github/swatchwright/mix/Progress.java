package io.github.swatchwright.mix;

/** Is told by a long call how far it has come; from any of its threads, one call at a time. */
@FunctionalInterface
public interface Progress {

  /** Nobody is told. */
  Progress UNHEARD = share -> {};

  /**
   * So much is done.
   *
   * @param share of the whole call, 0 to 1, never falling
   */
  void reached(double share);
}
