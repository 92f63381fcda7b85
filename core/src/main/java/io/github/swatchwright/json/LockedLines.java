package io.github.swatchwright.json;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file that only grows, by whole lines. A line is written at once, under the file's lock, and is
 * on the disk when {@link #append} returns. What a crash leaves of a line stays where it is: the
 * next line begins on a line of its own, and the reader tells the torn one by its content.
 *
 * @param file the file
 * @param mostBytes the longest that it may become
 */
record LockedLines(Path file, int mostBytes) {
  private static final byte LINE_FEED = '\n';

  /** Appends a line, which must not hold a line feed; makes the file when there is none. */
  void append(String line) throws IOException {
    // A process may hold a file's lock once only; between its threads, the class is the lock.
    synchronized (LockedLines.class) {
      try (FileChannel channel =
          FileChannel.open(
              file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
        channel.lock(); // Until the channel is closed.
        append(channel, line.getBytes(StandardCharsets.UTF_8));
      }
    }
  }

  private void append(FileChannel channel, byte[] line) throws IOException {
    long end = channel.size();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(line.length + 2);
    if (end > 0 && byteAt(channel, end - 1) != LINE_FEED) {
      bytes.write(LINE_FEED);
    }
    bytes.write(line);
    bytes.write(LINE_FEED);
    if (end + bytes.size() > mostBytes) {
      throw new IOException("it would be longer than " + mostBytes + " bytes, begin another");
    }
    try {
      writeAll(channel, ByteBuffer.wrap(bytes.toByteArray()), end);
      channel.force(true);
      if (end == 0) {
        forceFolder();
      }
    } catch (IOException e) {
      takeBack(channel, end, e);
      throw e;
    }
  }

  /** Forces a new file's name to the disk: without it, a power cut would lose the whole file. */
  private void forceFolder() throws IOException {
    FileChannel folder;
    try {
      folder = FileChannel.open(file.toAbsolutePath().resolveSibling(""), StandardOpenOption.READ);
    } catch (IOException e) {
      return; // Some systems don't open folders, and have nothing to force.
    }
    try (folder) {
      folder.force(true);
    }
  }

  /**
   * An interrupted thread's channel is closed already: then what it wrote stays, as after a crash.
   */
  private static void takeBack(FileChannel channel, long end, IOException cause) {
    try {
      channel.truncate(end);
    } catch (IOException e) {
      cause.addSuppressed(e);
    }
  }

  private static byte byteAt(FileChannel channel, long position) throws IOException {
    ByteBuffer one = ByteBuffer.allocate(1);
    if (channel.read(one, position) != 1) {
      throw new EOFException("the file became shorter while it was locked");
    }
    return one.get(0);
  }

  private static void writeAll(FileChannel channel, ByteBuffer bytes, long from)
      throws IOException {
    long position = from;
    while (bytes.hasRemaining()) {
      position += channel.write(bytes, position);
    }
  }

  /** The whole text, read while nobody appends; bytes that aren't UTF-8 become U+FFFD. */
  String read() throws IOException {
    synchronized (LockedLines.class) {
      try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
        channel.lock(0, Long.MAX_VALUE, true); // Until the channel is closed.
        if (channel.size() > mostBytes) {
          throw new IOException("it is longer than " + mostBytes + " bytes, the most that is read");
        }
        ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
        int count = 0;
        while (bytes.hasRemaining() && count >= 0) {
          count = channel.read(bytes);
        }
        return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
      }
    }
  }
}
