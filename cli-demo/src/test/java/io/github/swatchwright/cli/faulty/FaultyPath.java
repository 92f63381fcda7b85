package io.github.swatchwright.cli.faulty;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import org.jspecify.annotations.Nullable;

/**
 * A path of the faulty file system.
 *
 * @param system its file system
 * @param real the path that it stands for
 */
record FaultyPath(FaultyFileSystem system, Path real) implements Path {
  private Path of(Path path) {
    return new FaultyPath(system, path);
  }

  private @Nullable Path orNull(@Nullable Path path) {
    return path == null ? null : of(path);
  }

  static Path unwrap(Path path) {
    return path instanceof FaultyPath faulty ? faulty.real : path;
  }

  @Override
  public FileSystem getFileSystem() {
    return system;
  }

  @Override
  public boolean isAbsolute() {
    return real.isAbsolute();
  }

  @Override
  public @Nullable Path getRoot() {
    return orNull(real.getRoot());
  }

  @Override
  public @Nullable Path getFileName() {
    return orNull(real.getFileName());
  }

  @Override
  public @Nullable Path getParent() {
    return orNull(real.getParent());
  }

  @Override
  public int getNameCount() {
    return real.getNameCount();
  }

  @Override
  public Path getName(int index) {
    return of(real.getName(index));
  }

  @Override
  public Path subpath(int from, int to) {
    return of(real.subpath(from, to));
  }

  @Override
  public boolean startsWith(Path other) {
    return real.startsWith(unwrap(other));
  }

  @Override
  public boolean endsWith(Path other) {
    return real.endsWith(unwrap(other));
  }

  @Override
  public Path normalize() {
    return of(real.normalize());
  }

  @Override
  public Path resolve(Path other) {
    return of(real.resolve(unwrap(other)));
  }

  @Override
  public Path relativize(Path other) {
    return of(real.relativize(unwrap(other)));
  }

  @Override
  public URI toUri() {
    return real.toUri();
  }

  @Override
  public Path toAbsolutePath() {
    return of(real.toAbsolutePath());
  }

  @Override
  public Path toRealPath(LinkOption... options) throws IOException {
    Faults.call("toRealPath", real);
    return of(real.toRealPath(options));
  }

  @Override
  public WatchKey register(
      WatchService watcher, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers) {
    throw new UnsupportedOperationException();
  }

  @Override
  public int compareTo(Path other) {
    return real.compareTo(unwrap(other));
  }

  @Override
  public String toString() {
    return real.toString();
  }
}
