package io.github.swatchwright.exchange;

import io.github.swatchwright.paint.Shelf;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Formats that a shelf can be read from, recognised by the file's ending and then checked. */
public enum ShelfImport {
  /** {@link ShelfCsv}, {@code .csv}. */
  CSV(Set.of("csv"), ShelfCsv::read),
  /** {@link GimpPalette}, {@code .gpl}. */
  GIMP_PALETTE(Set.of("gpl"), GimpPalette::read),
  /** Measured colours as CGATS.17 and ISO 28178 have them, {@code .txt} or {@code .cgats}. */
  CGATS(Set.of("txt", "cgats"), CgatsShelf::read);

  /** Made by {@code Set.of}. */
  @SuppressWarnings("ImmutableEnumChecker")
  private final Set<String> endings;

  /** Made of a static method. */
  @SuppressWarnings("ImmutableEnumChecker")
  private final Format format;

  ShelfImport(Set<String> endings, Format format) {
    this.endings = endings;
    this.format = format;
  }

  private interface Format {
    Shelf read(byte[] bytes, String source, ImportDefaults missing);
  }

  /** The format of a file of that name, when its ending is known. */
  public static Optional<ShelfImport> ofFileName(String name) {
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    for (ShelfImport format : values()) {
      if (format.endings.contains(ending)) {
        return Optional.of(format);
      }
    }
    return Optional.empty();
  }

  /**
   * Reads a shelf.
   *
   * @param bytes the file
   * @param source what messages call it
   * @param missing what the file doesn't say
   * @throws BadLinesException when lines can't be taken
   * @throws IllegalArgumentException when the file as a whole can't
   */
  public Shelf read(byte[] bytes, String source, ImportDefaults missing) {
    return format.read(bytes, source, missing);
  }

  /**
   * The same for a file that may be shorter than usual at most.
   *
   * @param bytes the file
   * @param source what messages call it
   * @param missing what the file doesn't say
   * @param mostBytes the longest file that is taken
   * @throws BadLinesException when lines can't be taken
   * @throws IllegalArgumentException when the file as a whole can't
   */
  public Shelf read(byte[] bytes, String source, ImportDefaults missing, int mostBytes) {
    if (bytes.length > mostBytes) {
      throw new IllegalArgumentException(
          source + ": is longer than " + mostBytes + " bytes, the most that is read");
    }
    return format.read(bytes, source, missing);
  }
}
