package io.github.swatchwright.cli.faulty;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.List;
import java.util.Set;

/** A file system over the usual one. */
final class FaultyFileSystem extends FileSystem {
  private final FileSystemProvider provider;
  private final FileSystem real;

  FaultyFileSystem(FileSystemProvider provider, FileSystem real) {
    this.provider = provider;
    this.real = real;
  }

  @Override
  public FileSystemProvider provider() {
    return provider;
  }

  @Override
  public void close() throws IOException {
    real.close();
  }

  @Override
  public boolean isOpen() {
    return real.isOpen();
  }

  @Override
  public boolean isReadOnly() {
    return real.isReadOnly();
  }

  @Override
  public String getSeparator() {
    return real.getSeparator();
  }

  @Override
  public Iterable<Path> getRootDirectories() {
    return List.of(getPath("/"));
  }

  @Override
  public Iterable<FileStore> getFileStores() {
    return real.getFileStores();
  }

  @Override
  public Set<String> supportedFileAttributeViews() {
    return real.supportedFileAttributeViews();
  }

  @Override
  public Path getPath(String first, String... more) {
    return new FaultyPath(this, real.getPath(first, more));
  }

  @Override
  public PathMatcher getPathMatcher(String pattern) {
    PathMatcher matcher = real.getPathMatcher(pattern);
    return path -> matcher.matches(FaultyPath.unwrap(path));
  }

  @Override
  public UserPrincipalLookupService getUserPrincipalLookupService() {
    return real.getUserPrincipalLookupService();
  }

  @Override
  public WatchService newWatchService() throws IOException {
    return real.newWatchService();
  }
}
