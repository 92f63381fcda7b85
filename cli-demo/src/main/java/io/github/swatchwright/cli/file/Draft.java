package io.github.swatchwright.cli.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.security.SecureRandom;
import java.util.HexFormat;

/**
 * A file's new content, on the disk beside the file that it will replace.
 *
 * <p>Its name can't be foreseen, and it is made only where nothing has that name: so nobody can
 * plant a link there, and two processes never share a draft, whatever their numbers.
 */
final class Draft {
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int NAME_BYTES = 16;

  private final Path target;
  private final Path file;

  private Draft(Path target, Path file) {
    this.target = target;
    this.file = file;
  }

  /** A draft that has nothing on the disk yet. */
  static Draft beside(Path target) {
    byte[] name = new byte[NAME_BYTES];
    RANDOM.nextBytes(name);
    return new Draft(
        target,
        target.resolveSibling(".swatchwright-" + HexFormat.of().formatHex(name) + ".draft"));
  }

  /** Writes the content and forces it to the disk. */
  void write(ByteBuffer content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = content.duplicate();
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      if (Files.exists(target)) {
        keepOwnerAndMode();
      }
      channel.force(true);
    }
  }

  private void keepOwnerAndMode() throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(target, PosixFileAttributeView.class);
    PosixFileAttributeView mine = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    if (old == null || mine == null) {
      return;
    }
    PosixFileAttributes kept = old.readAttributes();
    try {
      mine.setGroup(kept.group());
      mine.setOwner(kept.owner());
    } catch (IOException e) {
      // Only some users may give files away; the file is then theirs, as any other that they write.
      mine.setPermissions(kept.permissions());
      return;
    }
    mine.setPermissions(kept.permissions());
  }

  /** Puts it in the place of the old file, in one step. */
  void publish() throws IOException {
    Files.move(file, target, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Forces the folder to the disk, so that the new name outlives a power cut. */
  void forceFolder() throws IOException {
    FileChannel folder;
    try {
      folder = FileChannel.open(target.resolveSibling(""), StandardOpenOption.READ);
    } catch (IOException e) {
      return; // Some systems don't open folders, and have nothing to force.
    }
    try (folder) {
      folder.force(true);
    }
  }

  /** Takes it away, when it is still there. */
  void discard(Throwable cause) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      cause.addSuppressed(e);
    }
  }
}
