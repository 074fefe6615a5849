package io.github.brinewright.job;

import java.io.IOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** Files of which each is read once. */
final class FilesOnceRead implements JobFiles {
  private final JobFiles files;
  private final Map<String, Boolean> there = new ConcurrentHashMap<>();
  private final Map<String, byte[]> contents = new ConcurrentHashMap<>();
  private @Nullable Map<String, Map<String, String>> sites;

  FilesOnceRead(JobFiles files) {
    this.files = files;
  }

  @Override
  public String place() {
    return files.place();
  }

  @Override
  public boolean has(String name) {
    return there.computeIfAbsent(name, files::has);
  }

  @Override
  public long size(String name) throws IOException {
    byte[] content = contents.get(name);
    return content == null ? files.size(name) : content.length;
  }

  @Override
  public byte[] read(String name) throws IOException {
    byte[] content = contents.get(name);
    if (content == null) {
      content = files.read(name);
      contents.put(name, content);
    }
    return content.clone();
  }

  /** The filled cells of every home, by its id. */
  synchronized Map<String, Map<String, String>> sites() throws IOException {
    if (sites == null) {
      sites = SiteCells.all(this);
    }
    return sites;
  }

  @Override
  public JobFiles asFirstRead() {
    return this;
  }
}
