package io.github.swatchwright.cli.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;

/**
 * The place that a file will be written to: a plain file or nothing, in a folder that can be
 * written to.
 *
 * <p>A symbolic link stays a link, and what it points to is written, as long as that lies in the
 * link's own folder or below it. A link that leads out of the folder is refused, since someone else
 * may have put it there to have one of the user's own files overwritten.
 *
 * @param file the real path of the file, whether it is there or not
 */
record TargetFile(Path file) {
  /** As many as systems usually follow; a ring of links ends there. */
  private static final int MOST_LINKS = 40;

  private static final Set<PosixFilePermission> WRITE =
      Set.of(
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.GROUP_WRITE,
          PosixFilePermission.OTHERS_WRITE);

  /**
   * The place.
   *
   * @param argument what the command line calls the file, for messages
   * @param given the path as it was given
   * @throws IllegalArgumentException when nothing can or may be written there
   */
  static TargetFile of(String argument, Path given) {
    try {
      return new TargetFile(checked(given));
    } catch (IOException e) {
      throw new IllegalArgumentException(
          argument + ": " + given + " can't be written: " + FileReason.of(e), e);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(argument + ": " + e.getMessage(), e);
    }
  }

  private static Path checked(Path given) throws IOException {
    Path absolute = given.toAbsolutePath();
    Path parent = absolute.getParent();
    if (parent == null || Files.isDirectory(absolute)) {
      throw new IllegalArgumentException(given + " is a directory, must be a file");
    }
    if (!Files.isDirectory(parent)) {
      throw new IllegalArgumentException("there is no folder " + parent);
    }
    Path folder = parent.toRealPath();
    Path target = behindLinks(folder.resolve(absolute.getFileName()), given, folder);
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      requirePlain(target, given);
    }
    requireWritable(target.resolveSibling("").toAbsolutePath());
    return target;
  }

  private static Path behindLinks(Path named, Path given, Path folder) throws IOException {
    Path place = named;
    for (int links = 0; Files.isSymbolicLink(place); links++) {
      if (links == MOST_LINKS) {
        throw new IOException("more than " + MOST_LINKS + " symbolic links in a row");
      }
      Path next = place.resolveSibling(Files.readSymbolicLink(place)).normalize();
      Path nextFolder = next.getParent();
      if (nextFolder == null || !Files.isDirectory(nextFolder)) {
        throw new IllegalArgumentException(given + " is a link to a folder that isn't there");
      }
      place = nextFolder.toRealPath().resolve(next.getFileName());
      if (!place.startsWith(folder)) {
        throw new IllegalArgumentException(
            given + " is a link out of its folder, to " + place + "; name that file itself");
      }
    }
    return place;
  }

  private static void requirePlain(Path target, Path given) throws IOException {
    if (Files.isDirectory(target)) {
      throw new IllegalArgumentException(given + " is a directory, must be a file");
    }
    if (!Files.isRegularFile(target)) {
      throw new IllegalArgumentException(
          given + " is a device or a pipe, must be a plain file; results go to standard output");
    }
    PosixFileAttributeView view = Files.getFileAttributeView(target, PosixFileAttributeView.class);
    boolean locked =
        view != null && view.readAttributes().permissions().stream().noneMatch(WRITE::contains);
    if (locked || !Files.isWritable(target)) {
      throw new IllegalArgumentException(given + " is read-only, and is left as it is");
    }
  }

  private static void requireWritable(Path folder) throws IOException {
    if (!Files.isWritable(folder)) {
      String why =
          Files.getFileStore(folder).isReadOnly()
              ? "its file system is read-only"
              : "permission denied";
      throw new IllegalArgumentException("the folder " + folder + " can't be written to: " + why);
    }
  }
}
