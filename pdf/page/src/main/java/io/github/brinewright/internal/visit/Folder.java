package io.github.brinewright.internal.visit;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.SiteCells;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * A job folder as it is at one moment: all that a page shows is of one state of it.
 *
 * @param path of it
 * @param files as they were when they were first read
 * @param shared what its homes share
 * @param homes the filled cells of every row by id
 */
public record Folder(
    Path path, JobFiles files, JobReading shared, Map<String, Map<String, String>> homes) {
  private static final Map<String, String> NOTHING = Map.of();

  /**
   * Reads a folder; sites.csv need not be there.
   *
   * @throws IOException when sites.csv cannot be read
   */
  public static Folder read(Path path) throws IOException {
    JobFiles files = JobFiles.in(path).asFirstRead();
    JobReading shared = JobFolder.readWithoutHomes(files);
    JobFiles tables = shared.job().map(Job::files).orElse(files);
    boolean any = tables.has(SiteCells.FILE);
    return new Folder(path, files, shared, any ? SiteCells.all(tables) : Map.of());
  }

  /** What the homes share; empty where a file of it has errors. */
  public Optional<Job> job() {
    return shared.job();
  }

  /** The id of a home by its name in links; empty where there is none. */
  public Optional<String> named(String name) {
    return homes.keySet().stream().filter(id -> nameOf(id).equals(name)).findFirst();
  }

  /** The name of a home in links. */
  public static String nameOf(String siteId) {
    return Digest.nameOf(siteId);
  }

  /** The cells of a home; none of one that is new. */
  public Map<String, String> stored(Optional<String> siteId) {
    return siteId.map(id -> homes.getOrDefault(id, NOTHING)).orElse(NOTHING);
  }

  /** The bytes of sites.csv; none where it is not there. */
  byte[] sites() throws IOException {
    return files.has(SiteCells.FILE) ? files.read(SiteCells.FILE) : new byte[0];
  }

  /** The state of sites.csv. */
  public String version() throws IOException {
    return Digest.of(sites());
  }
}
