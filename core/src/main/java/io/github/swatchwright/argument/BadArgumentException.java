package io.github.swatchwright.argument;

/**
 * An argument that can't be taken. It knows the argument by its name, so that a reader of files can
 * say in which field of the file it stands.
 */
public final class BadArgumentException extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final String argument;
  private final String complaint;

  /**
   * Refuses an argument.
   *
   * @param argument its name, such as {@code dropMillilitres}, or {@code values[3]} for an element
   * @param complaint what is wrong with it and what would do, such as {@code is 2.0, must be …}
   */
  public BadArgumentException(String argument, String complaint) {
    super(Printable.oneLine(argument) + " " + complaint);
    this.argument = argument;
    this.complaint = complaint;
  }

  /** The argument's name. */
  public String argument() {
    return argument;
  }

  /** What is wrong with it, without its name. */
  public String complaint() {
    return complaint;
  }
}
