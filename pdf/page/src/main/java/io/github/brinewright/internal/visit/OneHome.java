package io.github.brinewright.internal.visit;

import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.SiteCells;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * The files of a job with one home alone, which stands on the page.
 *
 * @param others the files of the folder
 * @param sites the text of sites.csv in place of theirs
 */
record OneHome(JobFiles others, byte[] sites) implements JobFiles {
  /** The homes where they stand in a spreadsheet. */
  static final String SPREADSHEET = "sites.xlsx";

  static OneHome of(JobFiles others, Map<String, String> cells) {
    return new OneHome(others, SiteCells.csv(cells).getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public String place() {
    return others.place();
  }

  @Override
  public boolean has(String name) {
    return name.equals(SiteCells.FILE) || !name.equals(SPREADSHEET) && others.has(name);
  }

  @Override
  public long size(String name) throws IOException {
    return name.equals(SiteCells.FILE) ? sites.length : others.size(name);
  }

  @Override
  public byte[] read(String name) throws IOException {
    return name.equals(SiteCells.FILE) ? sites.clone() : others.read(name);
  }
}
