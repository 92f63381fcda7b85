package io.github.swatchwright.cli.faulty;

/** A call that changes what a disk holds, as {@link PowerCut} plays it again. */
public sealed interface DiskChange {
  /** A file is made, empty. */
  record Made(String path) implements DiskChange {}

  /** Bytes are written into a file. */
  final class Written implements DiskChange {
    private final String path;
    private final long position;
    private final byte[] bytes;

    /**
     * A write.
     *
     * @param bytes kept, and not changed any more
     */
    Written(String path, long position, byte[] bytes) {
      this.path = path;
      this.position = position;
      this.bytes = bytes;
    }

    String path() {
      return path;
    }

    long position() {
      return position;
    }

    byte[] bytes() {
      return bytes;
    }

    @Override
    public String toString() {
      return "Written " + bytes.length + " at " + position + " of " + path;
    }
  }

  /** A file is cut off. */
  record Cut(String path, long size) implements DiskChange {}

  /** A file takes the name of another. */
  record Moved(String from, String to) implements DiskChange {}

  /** A name is taken away. */
  record Deleted(String path) implements DiskChange {}

  /** A file's content, or a folder's names, are forced to the disk. */
  record Forced(String path) implements DiskChange {}
}
