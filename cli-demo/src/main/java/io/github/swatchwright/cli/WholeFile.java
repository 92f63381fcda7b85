package io.github.swatchwright.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * Writes a file wholly or not at all: a file of that name stays as it is until the new one is. A
 * symbolic link stays a link; what it points to is written.
 */
final class WholeFile {
  /** As many as systems usually follow; a ring of links ends there. */
  private static final int MOST_LINKS = 40;

  private WholeFile() {}

  /**
   * Writes a text.
   *
   * @param option the option that names the file, for messages
   * @param file where to
   * @param text what
   * @throws IllegalArgumentException when it can't be written there
   */
  static void write(String option, Path file, String text) {
    write(option, file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes bytes.
   *
   * @param option the option that names the file, for messages
   * @param file where to
   * @param content what
   * @throws IllegalArgumentException when it can't be written there
   */
  static void write(String option, Path file, byte[] content) {
    try {
      Path absolute = behindLinks(file.toAbsolutePath());
      Path folder = absolute.getParent();
      if (folder == null || Files.isDirectory(absolute)) {
        throw new IllegalArgumentException(
            option + ": " + file + " is a directory, must be a file");
      }
      if (!Files.isDirectory(folder)) {
        throw new IllegalArgumentException(option + ": there is no folder " + folder);
      }
      Path draft = folder.resolve(".swatchwright-" + ProcessHandle.current().pid() + ".draft");
      try {
        Files.write(draft, content);
        keepPermissions(absolute, draft);
        try (FileChannel channel = FileChannel.open(draft, StandardOpenOption.WRITE)) {
          channel.force(true);
        }
        Files.move(draft, absolute, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(draft);
      }
    } catch (IOException e) {
      throw new IllegalArgumentException(
          option + ": " + file + " can't be written: " + e.getMessage(), e);
    }
  }

  /**
   * Makes sure that a file's name says what will be in it.
   *
   * @throws IllegalArgumentException when it has another ending
   */
  static void mustEndIn(String ending, String option, Path file) {
    if (!file.toString().endsWith(ending)) {
      throw new IllegalArgumentException(option + ": " + file + " must end in " + ending);
    }
  }

  private static Path behindLinks(Path absolute) throws IOException {
    Path place = absolute;
    for (int links = 0; Files.isSymbolicLink(place); links++) {
      if (links == MOST_LINKS) {
        throw new IOException("more than " + MOST_LINKS + " symbolic links in a row");
      }
      place = place.resolveSibling(Files.readSymbolicLink(place)).normalize();
    }
    return place;
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (view != null && Files.exists(from)) {
      view.setPermissions(Files.getPosixFilePermissions(from));
    }
  }
}
