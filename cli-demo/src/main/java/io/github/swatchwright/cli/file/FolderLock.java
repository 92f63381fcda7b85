package io.github.swatchwright.cli.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;

/**
 * A lock that one process holds on a folder, on the empty hidden file {@value #NAME} in it.
 *
 * <p>The file that is to be changed can't carry the lock itself, since its place is taken by a new
 * file. The lock file stays behind: taking it away would let two processes lock two files of one
 * name.
 */
final class FolderLock implements AutoCloseable {
  static final String NAME = ".swatchwright.lock";

  /** A process can hold a file's lock only once; between its threads, this is the lock. */
  private static final ReentrantLock IN_PROCESS = new ReentrantLock();

  private final FileChannel channel;

  private FolderLock(FileChannel channel) {
    this.channel = channel;
  }

  /** Waits until the folder is free, and locks it. */
  static FolderLock of(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)
        && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException(file + " is not a plain file");
    }
    IN_PROCESS.lock();
    FileChannel channel = null;
    try {
      channel =
          FileChannel.open(
              file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
      channel.lock(); // Until the channel is closed.
      return new FolderLock(channel);
    } catch (IOException | RuntimeException | Error e) {
      if (channel != null) {
        channel.close();
      }
      IN_PROCESS.unlock();
      throw e;
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    } finally {
      IN_PROCESS.unlock();
    }
  }
}
