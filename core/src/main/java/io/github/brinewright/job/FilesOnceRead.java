package io.github.brinewright.job;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** Files of which each is read once; those of the homes may be left out, too large to keep. */
final class FilesOnceRead implements JobFiles {
  private final JobFiles files;
  private final Map<String, Boolean> there = new ConcurrentHashMap<>();
  private final Map<String, byte[]> contents = new ConcurrentHashMap<>();
  private final boolean keepsHomes;
  private @Nullable Map<String, Map<String, String>> sites;

  FilesOnceRead(JobFiles files, boolean keepsHomes) {
    this.files = files;
    this.keepsHomes = keepsHomes;
  }

  private boolean passesOn(String name) {
    return !keepsHomes && name.equals(SiteCells.FILE);
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
    return content(name).clone();
  }

  private byte[] content(String name) throws IOException {
    if (passesOn(name)) {
      return files.read(name);
    }
    byte[] content = contents.get(name);
    if (content == null) {
      content = files.read(name);
      contents.put(name, content);
    }
    return content;
  }

  @Override
  public InputStream open(String name) throws IOException {
    return passesOn(name) ? files.open(name) : new ByteArrayInputStream(content(name));
  }

  @Override
  public Instant changed(String name) throws IOException {
    return passesOn(name) ? files.changed(name) : Instant.EPOCH;
  }

  /** Whether the homes are kept too. */
  boolean keepsHomes() {
    return keepsHomes;
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
