package io.github.swatchwright.cli.faulty;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.Map;
import java.util.Set;

/**
 * The usual file system, whose calls fail as {@link Faults} says. It takes the place of Java's own
 * by {@code -Djava.nio.file.spi.DefaultFileSystemProvider}, so that no code has to know of it.
 */
public final class FaultyProvider extends FileSystemProvider {
  private final FileSystemProvider real;
  private final FaultyFileSystem system;

  /** Over the provider that would be the default. */
  public FaultyProvider(FileSystemProvider real) {
    this.real = real;
    this.system = new FaultyFileSystem(this, real.getFileSystem(URI.create("file:///")));
  }

  private static Path unwrap(Path path) {
    return FaultyPath.unwrap(path);
  }

  @Override
  public String getScheme() {
    return "file";
  }

  @Override
  public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileSystem getFileSystem(URI uri) {
    return system;
  }

  @Override
  public Path getPath(URI uri) {
    return new FaultyPath(system, real.getPath(uri));
  }

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    return newFileChannel(path, options, attributes);
  }

  @Override
  public FileChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    Faults.call("open", path);
    boolean isNew = Files.notExists(unwrap(path), LinkOption.NOFOLLOW_LINKS);
    FileChannel channel = real.newFileChannel(unwrap(path), options, attributes);
    if (isNew) {
      Faults.changed(new DiskChange.Made(path.toString()));
    }
    return new FaultyChannel(path.toString(), channel);
  }

  @Override
  public DirectoryStream<Path> newDirectoryStream(
      Path folder, DirectoryStream.Filter<? super Path> filter) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    Faults.call("createDirectory", folder);
    real.createDirectory(unwrap(folder), attributes);
  }

  @Override
  public void delete(Path path) throws IOException {
    Faults.call("delete", path);
    real.delete(unwrap(path));
    Faults.changed(new DiskChange.Deleted(path.toString()));
  }

  @Override
  public void copy(Path from, Path to, CopyOption... options) throws IOException {
    Faults.call("copy", from);
    real.copy(unwrap(from), unwrap(to), options);
  }

  @Override
  public void move(Path from, Path to, CopyOption... options) throws IOException {
    Faults.call("move", to);
    real.move(unwrap(from), unwrap(to), options);
    Faults.changed(new DiskChange.Moved(from.toString(), to.toString()));
  }

  @Override
  public boolean isSameFile(Path one, Path other) throws IOException {
    Faults.call("isSameFile", one);
    return real.isSameFile(unwrap(one), unwrap(other));
  }

  @Override
  public boolean isHidden(Path path) throws IOException {
    return real.isHidden(unwrap(path));
  }

  @Override
  public FileStore getFileStore(Path path) throws IOException {
    Faults.call("getFileStore", path);
    return real.getFileStore(unwrap(path));
  }

  @Override
  public void checkAccess(Path path, AccessMode... modes) throws IOException {
    Faults.call("checkAccess", path);
    real.checkAccess(unwrap(path), modes);
  }

  @Override
  public <V extends FileAttributeView> V getFileAttributeView(
      Path path, Class<V> type, LinkOption... options) {
    return real.getFileAttributeView(unwrap(path), type, options);
  }

  @Override
  public <A extends BasicFileAttributes> A readAttributes(
      Path path, Class<A> type, LinkOption... options) throws IOException {
    Faults.call("readAttributes", path);
    return real.readAttributes(unwrap(path), type, options);
  }

  @Override
  public Map<String, Object> readAttributes(Path path, String names, LinkOption... options)
      throws IOException {
    Faults.call("readAttributes", path);
    return real.readAttributes(unwrap(path), names, options);
  }

  @Override
  public void setAttribute(Path path, String name, Object value, LinkOption... options)
      throws IOException {
    Faults.call("setAttribute", path);
    real.setAttribute(unwrap(path), name, value, options);
  }

  @Override
  public Path readSymbolicLink(Path link) throws IOException {
    Faults.call("readSymbolicLink", link);
    return new FaultyPath(system, real.readSymbolicLink(unwrap(link)));
  }
}
