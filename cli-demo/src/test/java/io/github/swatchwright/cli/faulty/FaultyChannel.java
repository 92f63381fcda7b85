package io.github.swatchwright.cli.faulty;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;

/** A channel whose calls fail as {@link Faults} says. A write that fails has written half. */
final class FaultyChannel extends FileChannel {
  private final String path;
  private final FileChannel real;

  FaultyChannel(String path, FileChannel real) {
    this.path = path;
    this.real = real;
  }

  /** A write of some bytes. */
  private interface Write {
    int write(ByteBuffer bytes) throws IOException;
  }

  private int write(ByteBuffer bytes, long position, Write write) throws IOException {
    try {
      Faults.call("write", path);
    } catch (IOException | Error e) {
      part(bytes, bytes.remaining() / 2, write);
      throw e;
    }
    ByteBuffer content = bytes.duplicate();
    int written = Faults.writesLittle() ? part(bytes, 1, write) : write.write(bytes);
    byte[] copy = new byte[written];
    content.get(copy);
    Faults.changed(new DiskChange.Written(path, position, copy));
    return written;
  }

  private static int part(ByteBuffer bytes, int count, Write write) throws IOException {
    ByteBuffer part = bytes.duplicate().limit(bytes.position() + count);
    int written = write.write(part);
    bytes.position(part.position());
    return written;
  }

  @Override
  public int read(ByteBuffer bytes) throws IOException {
    Faults.call("read", path);
    return real.read(bytes);
  }

  @Override
  public long read(ByteBuffer[] bytes, int offset, int length) throws IOException {
    Faults.call("read", path);
    return real.read(bytes, offset, length);
  }

  @Override
  public int read(ByteBuffer bytes, long position) throws IOException {
    Faults.call("read", path);
    return real.read(bytes, position);
  }

  @Override
  public int write(ByteBuffer bytes) throws IOException {
    return write(bytes, real.position(), real::write);
  }

  @Override
  public int write(ByteBuffer bytes, long position) throws IOException {
    return write(bytes, position, some -> real.write(some, position));
  }

  @Override
  public long write(ByteBuffer[] bytes, int offset, int length) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long position() throws IOException {
    return real.position();
  }

  @Override
  public FileChannel position(long position) throws IOException {
    real.position(position);
    return this;
  }

  @Override
  public long size() throws IOException {
    Faults.call("size", path);
    return real.size();
  }

  @Override
  public FileChannel truncate(long size) throws IOException {
    Faults.call("truncate", path);
    real.truncate(size);
    Faults.changed(new DiskChange.Cut(path, size));
    return this;
  }

  @Override
  public void force(boolean metaData) throws IOException {
    Faults.call("force", path);
    real.force(metaData);
    Faults.changed(new DiskChange.Forced(path));
  }

  @Override
  public long transferTo(long position, long count, WritableByteChannel target) throws IOException {
    Faults.call("transferTo", path);
    return real.transferTo(position, count, target);
  }

  @Override
  public long transferFrom(ReadableByteChannel source, long position, long count)
      throws IOException {
    Faults.call("transferFrom", path);
    return real.transferFrom(source, position, count);
  }

  @Override
  public MappedByteBuffer map(MapMode mode, long position, long size) throws IOException {
    Faults.call("map", path);
    return real.map(mode, position, size);
  }

  @Override
  public FileLock lock(long position, long size, boolean shared) throws IOException {
    Faults.call("lock", path);
    return real.lock(position, size, shared);
  }

  @Override
  public FileLock tryLock(long position, long size, boolean shared) throws IOException {
    Faults.call("tryLock", path);
    return real.tryLock(position, size, shared);
  }

  @Override
  protected void implCloseChannel() throws IOException {
    real.close();
  }
}
