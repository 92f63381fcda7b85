package io.github.swatchwright.cli;

/** What a command does once its arguments are known. */
interface Command {
  /**
   * Prints the result.
   *
   * @throws IllegalArgumentException when an argument or a file can't be taken
   */
  void run();
}
